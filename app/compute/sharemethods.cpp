// SPDX-License-Identifier: MIT
#include "app/compute/method.h"
#include "core/stats/proportion.h"
#include "core/stats/rate.h"
#include "core/stats/twoproportions.h"

namespace cradlepost::compute {

namespace {

using namespace stats;

const std::vector<ColumnSpec> shareColumns{
    {"x", ColumnKind::Count, "number of events"}, {"n", ColumnKind::Count, "number of observations"}};

const std::vector<FieldSpec> intervalFields{{"level", "level of the intervals"},
    {"rows[].row", "row of the table"}, {"rows[].x, rows[].n", "as given"},
    {"rows[].share", "x/n; null when n is 0"},
    {"rows[].low, rows[].high", "ends of the interval; null when n is 0"}};

template <class Interval>
Result<Report> intervals(const Table& table, const Options& options, Interval interval)
{
    const auto tallies = table.tallies();
    if (!tallies)
        return tl::unexpected(tallies.error());
    const double level = options.number("level");
    Json::Array rows;
    for (std::size_t i = 0; i < tallies->size(); ++i) {
        const auto& t = (*tallies)[i];
        Json share;
        Json low;
        Json high;
        if (t.n > 0) {
            const auto ends = interval(t, level);
            if (!ends)
                return tl::unexpected(ends.error());
            share = static_cast<double>(t.x) / static_cast<double>(t.n);
            low = ends->low;
            high = ends->high;
        }
        rows.emplace_back(Json::Object{
            {"row", rowNumber(i)}, {"x", t.x}, {"n", t.n}, {"share", share}, {"low", low}, {"high", high}});
    }
    return Report{{{"level", level}, {"rows", std::move(rows)}}};
}

Result<Report> runWilson(const Table& table, const Options& options)
{
    return intervals(table, options, wilson);
}

Result<Report> runExact(const Table& table, const Options& options)
{
    return intervals(table, options, clopperPearson);
}

Result<Report> runDifference(const Table& table, const Options& options)
{
    const auto first = table.tallies("x1", "n1");
    const auto second = table.tallies("x2", "n2");
    if (!first || !second)
        return tl::unexpected(first ? second.error() : first.error());
    const double level = options.number("level");
    Json::Array rows;
    for (std::size_t i = 0; i < first->size(); ++i) {
        const auto difference = newcombeDifference((*first)[i], (*second)[i], level);
        const auto pooled = pooledTest((*first)[i], (*second)[i]);
        const auto exact = fisherExact((*first)[i], (*second)[i]);
        if (!difference && difference.error().code != ErrorCode::Undefined)
            return tl::unexpected(difference.error());
        rows.emplace_back(Json::Object{{"row", rowNumber(i)},
            {"difference", difference ? Json(difference->estimate) : Json()},
            {"low", difference ? Json(difference->interval.low) : Json()},
            {"high", difference ? Json(difference->interval.high) : Json()},
            {"z", pooled ? Json(pooled->z) : Json()}, {"p", pooled ? Json(pooled->p) : Json()},
            {"p_exact", exact ? Json(*exact) : Json()}});
    }
    return Report{{{"level", level}, {"rows", std::move(rows)}}};
}

Result<Report> runPoisson(const Table& table, const Options& options)
{
    const auto events = table.counts("events");
    auto exposure = table.numbers("exposure");
    if (exposure.empty())
        exposure.assign(events.size(), 1.0);
    const double level = options.number("level");
    Json::Array rows;
    for (std::size_t i = 0; i < events.size(); ++i) {
        const auto rate = exactRate(events[i], exposure[i], level);
        if (!rate)
            return table.fault(i, "events", rate.error().message);
        rows.emplace_back(Json::Object{{"row", rowNumber(i)}, {"events", events[i]}, {"rate", rate->estimate},
            {"low", rate->interval.low}, {"high", rate->interval.high}});
    }
    return Report{{{"level", level}, {"rows", std::move(rows)}}};
}

}

std::vector<Method> shareMethods()
{
    const std::string example = "x,n\n81,263\n15,148\n0,20\n1,29\n";
    return {
        {.name = "wilson",
            .summary = "Score interval of a proportion (Wilson)",
            .columns = shareColumns,
            .options = {levelOption()},
            .fields = intervalFields,
            .example = example,
            .run = runWilson},
        {.name = "clopper-pearson",
            .summary = "Exact interval of a proportion (Clopper-Pearson)",
            .columns = shareColumns,
            .options = {levelOption()},
            .fields = intervalFields,
            .example = example,
            .run = runExact},
        {.name = "difference",
            .summary = "Difference of two proportions with its interval (Newcombe) and tests",
            .columns = {{"x1", ColumnKind::Count, "events of the first group"},
                {"n1", ColumnKind::Count, "observations of the first group"},
                {"x2", ColumnKind::Count, "events of the second group"},
                {"n2", ColumnKind::Count, "observations of the second group"}},
            .options = {levelOption()},
            .fields = {{"level", "level of the intervals"}, {"rows[].row", "row of the table"},
                {"rows[].difference", "first share minus second; null without observations"},
                {"rows[].low, rows[].high", "ends of its interval"},
                {"rows[].z, rows[].p", "pooled test, two-sided; null when all or none are events"},
                {"rows[].p_exact", "Fisher's exact test, two-sided"}},
            .example = "x1,n1,x2,n2\n56,70,48,80\n9,10,3,10\n5,56,0,29\n",
            .run = runDifference},
        {.name = "poisson-interval",
            .summary = "Exact interval of a count or a rate (Garwood)",
            .columns = {{"events", ColumnKind::Count, "number of events"},
                {"exposure", ColumnKind::Positive, "time or items under watch; 1 without this column", true}},
            .options = {levelOption()},
            .fields = {{"level", "level of the intervals"}, {"rows[].row", "row of the table"},
                {"rows[].events", "as given"}, {"rows[].rate", "events per unit of exposure"},
                {"rows[].low, rows[].high", "ends of its interval"}},
            .example = "events,exposure\n0,30\n5,30\n10,28.5\n",
            .run = runPoisson},
    };
}

}
