// SPDX-License-Identifier: MIT
#include "app/compute/method.h"
#include "core/stats/cochranarmitage.h"
#include "core/stats/inequality.h"
#include "core/stats/mannkendall.h"

namespace cradlepost::compute {

namespace {

using namespace stats;

Result<Report> runTrend(const Table& table, const Options& options)
{
    const auto values = table.gapped("value");
    const auto times = table.numbers("time");
    std::vector<TimedValue> series;
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (values[i])
            series.push_back({times.empty() ? static_cast<double>(i + 1) : times[i], *values[i]});
    }
    const double level = options.number("level");
    const auto t = mannKendall(series, level);
    if (!t)
        return tl::unexpected(t.error());
    return Report{{{"level", level}, {"n", t->n}, {"s", t->s}, {"variance", t->variance}, {"z", t->z},
        {"p", t->p}, {"p_normal", t->pNormal}, {"p_exact", maybe(t->pExact)}, {"tau", t->tau},
        {"slope", t->slope}, {"low", t->interval ? Json(t->interval->low) : Json()},
        {"high", t->interval ? Json(t->interval->high) : Json()}}};
}

Result<Report> runShareTrend(const Table& table, const Options&)
{
    const auto rows = table.tallies();
    if (!rows)
        return tl::unexpected(rows.error());
    const auto scores = table.numbers("score");
    std::vector<ScoredTally> groups;
    for (std::size_t i = 0; i < rows->size(); ++i)
        groups.push_back({(*rows)[i], scores.empty() ? static_cast<double>(i + 1) : scores[i]});
    const auto t = cochranArmitage(groups);
    if (!t)
        return tl::unexpected(t.error());
    return Report{{{"z", t->z}, {"chi_square", t->chiSquare}, {"p", t->p}}};
}

Result<Report> runGini(const Table& table, const Options&)
{
    const auto g = gini(table.numbers("value"));
    if (!g)
        return tl::unexpected(g.error());
    return Report{{{"n", whole(table.size())}, {"gini", g->value}, {"gini_unbiased", maybe(g->unbiased)}}};
}

Result<Report> runPareto(const Table& table, const Options& options)
{
    const auto names = table.texts("cause");
    const auto counts = table.numbers("count");
    std::vector<Cause> causes;
    for (std::size_t i = 0; i < names.size(); ++i)
        causes.push_back({names[i], counts[i]});
    const double share = options.number("share");
    const auto ranked = pareto(causes, share);
    if (!ranked)
        return tl::unexpected(ranked.error());
    Json::Array rows;
    for (const auto& r : *ranked)
        rows.emplace_back(Json::Object{{"cause", names[r.row]}, {"row", rowNumber(r.row)}, {"count", r.count},
            {"cumulative", r.cumulative}, {"vital", r.vital}});
    return Report{{{"share", share}, {"causes", std::move(rows)}}};
}

}

std::vector<Method> trendMethods()
{
    return {
        {.name = "trend",
            .summary = "Rising or falling series (Mann-Kendall, Sen's slope)",
            .columns
            = {{.name = "value", .kind = ColumnKind::Number, .meaning = "one value a period", .gaps = true},
                {"time", ColumnKind::Number, "when; 1, 2, 3, ... without this column", true}},
            .options = {levelOption()},
            .fields = {{"level", "level of the interval"},
                {"n, s, variance, z", "values, rises minus falls, its variance, z"},
                {"p", "two-sided; p_exact where there is one, else p_normal"},
                {"p_normal, p_exact", "p_exact only up to 10 values without ties"},
                {"tau", "s over the number of pairs"},
                {"slope", "median of all pair slopes, per unit of time"},
                {"low, high", "its interval; null for few values"}},
            .example = "value\n72\n75\n75\n80\n78\n81\n80\n84\n84\n88\n86\n91\n",
            .run = runTrend},
        {.name = "share-trend",
            .summary = "Shares that rise or fall over scored groups (Cochran-Armitage)",
            .columns = {{"x", ColumnKind::Count, "number of events"},
                {"n", ColumnKind::Count, "number of observations"},
                {"score", ColumnKind::Number, "place on the scale; 1, 2, 3, ... without this column", true}},
            .options = {},
            .fields = {{"z, chi_square, p", "z above 0: the share rises; two-sided p"}},
            .example = "x,n,score\n83,86,1\n90,93,2\n129,136,3\n70,82,4\n",
            .run = runShareTrend},
        {.name = "gini",
            .summary = "How unequally a total is shared out",
            .columns = {{"value", ColumnKind::NotNegative, "share of one holder"}},
            .options = {},
            .fields = {{"n", "holders"},
                {"gini, gini_unbiased", "0 all equal; unbiased: times n/(n - 1), null for one"}},
            .example = "value\n541\n1463\n2445\n3438\n4437\n",
            .run = runGini},
        {.name = "pareto",
            .summary = "The few causes that carry most of the total",
            .columns = {{"cause", ColumnKind::Text, "name"},
                {"count", ColumnKind::NotNegative, "how often, or how much"}},
            .options = {numberOption("share", "share that the vital few carry", "0.8", 1e-9, 1)},
            .fields = {{"share", "as given"}, {"causes[].cause, .row, .count", "from the most frequent down"},
                {"causes[].cumulative", "share of the total up to here"},
                {"causes[].vital", "among the vital few"}},
            .example = "cause,count\nno mask of size 0,31\nsuction fails,22\nwarmer cold,17\nno towels,2\n",
            .run = runPareto},
    };
}

}
