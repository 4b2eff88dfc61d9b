// SPDX-License-Identifier: MIT
#include "app/compute/method.h"
#include "core/stats/cusum.h"
#include "core/stats/ewma.h"
#include "core/stats/runlength.h"

namespace cradlepost::compute {

namespace {

using namespace stats;

Json::Array averages(const std::vector<EwmaPoint>& points)
{
    Json::Array list;
    for (const auto& p : points)
        list.emplace_back(Json::Object{{"row", rowNumber(p.row)}, {"average", p.average}, {"sd", p.sd},
            {"low", p.limits.low}, {"high", p.limits.high}, {"beyond", p.beyond}});
    return list;
}

Result<Report> runEwma(const Table& table, const Options& options)
{
    const EwmaOptions ewmaOptions{.target = options.number("target"),
        .sigma = options.number("sigma"),
        .lambda = options.number("lambda"),
        .width = options.number("width"),
        .limits = options.word("limits") == "steady" ? EwmaLimits::Steady : EwmaLimits::Exact};
    const auto points = ewma(table.numbers("value"), ewmaOptions);
    if (!points)
        return tl::unexpected(points.error());
    const auto run = ewmaRunLength(ewmaOptions.lambda, ewmaOptions.width);
    return Report{{{"points", averages(*points)}, {"in_control_run", run ? Json(*run) : Json()}}};
}

Result<Report> runShareEwma(const Table& table, const Options& options)
{
    const auto rows = table.tallies();
    if (!rows)
        return tl::unexpected(rows.error());
    const double lambda = options.number("lambda");
    const double width = options.number("width");
    const auto points = binomialEwma(*rows, options.number("p0"), lambda, width);
    if (!points)
        return tl::unexpected(points.error());
    const auto run = ewmaRunLength(lambda, width);
    return Report{{{"points", averages(*points)}, {"in_control_run", run ? Json(*run) : Json()}}};
}

Result<Report> runCusum(const Table& table, const Options& options)
{
    const auto points = tabularCusum(table.numbers("value"), options.number("target"),
        options.number("slack"), options.number("threshold"));
    if (!points)
        return tl::unexpected(points.error());
    Json::Array list;
    for (const auto& p : *points)
        list.emplace_back(
            Json::Object{{"row", rowNumber(p.row)}, {"high", p.high}, {"low", p.low}, {"signal", p.signal}});
    return Report{{{"points", std::move(list)}}};
}

Result<Report> runShareCusum(const Table& table, const Options& options)
{
    const auto rows = table.tallies();
    if (!rows)
        return tl::unexpected(rows.error());
    const ShareChange change{.p0 = options.number("p0"), .p1 = options.number("p1")};
    const auto weights = cusumWeights(change);
    const auto points = shareCusum(*rows, change, options.number("threshold"),
        options.word("after-signal") == "reset" ? AfterSignal::Reset : AfterSignal::Hold);
    if (!points)
        return tl::unexpected(points.error());
    Json::Array list;
    for (const auto& p : *points)
        list.emplace_back(Json::Object{
            {"row", rowNumber(p.row)}, {"weight", p.weight}, {"sum", p.sum}, {"signal", p.signal}});
    return Report{{{"gamma", weights->gamma}, {"points", std::move(list)}}};
}

Result<Report> runDesign(const Table& table, const Options&)
{
    const auto p0 = table.numbers("p0");
    const auto p1 = table.numbers("p1");
    const auto n = table.counts("n");
    const auto run = table.numbers("run");
    Json::Array rows;
    for (std::size_t i = 0; i < p0.size(); ++i) {
        if (n[i] > 200)
            return table.fault(i, "n", "a sample has 1 to 200 checks");
        const auto d = designShareCusum({.p0 = p0[i], .p1 = p1[i]}, static_cast<int>(n[i]), run[i]);
        if (!d)
            return table.fault(i, "p0", d.error().message);
        rows.emplace_back(Json::Object{{"row", rowNumber(i)}, {"p0", p0[i]}, {"p1", d->change.p1},
            {"m", d->m}, {"threshold", d->threshold}, {"in_control_run", d->inControl},
            {"run_after_change", d->afterChange}});
    }
    return Report{{{"rows", std::move(rows)}}};
}

}

std::vector<Method> changeMethods()
{
    const std::vector<ColumnSpec> shares{{"x", ColumnKind::Count, "number of events"},
        {"n", ColumnKind::Count, "number of checks; 0 changes nothing"}};
    const std::vector<FieldSpec> averageFields{{"points[].row", "row"},
        {"points[].average, points[].sd", "average and its spread"},
        {"points[].low, points[].high", "limits"}, {"points[].beyond", "strictly outside of them"},
        {"in_control_run",
            "mean points to a false alarm for normal values and steady limits; null for lambda below 0.05"}};
    const std::string example = "x,n\n1,12\n2,15\n0,8\n3,14\n4,16\n2,10\n5,18\n4,12\n6,17\n";
    return {
        {.name = "ewma",
            .summary = "Weighted moving average of single values (EWMA)",
            .columns = {{"value", ColumnKind::Number, "one value a period"}},
            .options = {numberOption("target", "where the average starts", "0", -1e150, 1e150),
                numberOption("sigma", "spread of one value", "1", 1e-150, 1e150),
                numberOption("lambda", "weight of the newest value", "0.2", 1e-6, 1),
                numberOption("width", "of the limits, in sigma", "3", 0.1, 6),
                choiceOption("limits", "narrow at the start, or as wide as they get", {"exact", "steady"})},
            .fields = averageFields,
            .example = "value\n0.4\n-0.9\n1.3\n0.2\n1.9\n1.4\n2.2\n",
            .run = runEwma},
        {.name = "share-ewma",
            .summary = "Weighted moving average of shares with varying n",
            .columns = shares,
            .options = {numberOption("p0", "target share", "0.1", 0, 1, true),
                numberOption("lambda", "weight of the newest share", "0.2", 1e-6, 1),
                numberOption("width", "of the limits, in sigma", "2.7", 0.1, 6)},
            .fields = averageFields,
            .example = example,
            .run = runShareEwma},
        {.name = "cusum",
            .summary = "Tabular sums of departures from a target (CUSUM)",
            .columns = {{"value", ColumnKind::Number, "one value a period"}},
            .options = {numberOption("target", "where no change would keep the values", "0", -1e150, 1e150),
                numberOption("slack", "departures up to this add nothing", "0.5", 0, 1e150),
                numberOption("threshold", "a sum above this is a signal", "5", 1e-150, 1e150)},
            .fields = {{"points[].row", "row"}, {"points[].high, points[].low", "upper and lower sum"},
                {"points[].signal", "one of them strictly above the threshold"}},
            .example = "value\n0.4\n-0.9\n1.3\n0.2\n1.9\n1.4\n2.2\n",
            .run = runCusum},
        {.name = "share-cusum",
            .summary = "Log-likelihood sums for a change of a share from p0 to p1",
            .columns = shares,
            .options = {numberOption("p0", "share without change", "0.1", 0, 1, true),
                numberOption("p1", "share to look for", "0.2", 0, 1, true),
                numberOption("threshold", "a sum of at least this is a signal", "3", 1e-6, 1e6),
                choiceOption("after-signal", "the sum runs on, or starts again", {"hold", "reset"})},
            .fields = {{"gamma", "share at which the sum neither rises nor falls"}, {"points[].row", "row"},
                {"points[].weight, points[].sum", "weight of this row and sum so far"},
                {"points[].signal", "sum at or above the threshold"}},
            .example = example,
            .run = runShareCusum},
        {.name = "cusum-design",
            .summary = "Threshold of share-cusum for a wished spacing of false alarms",
            .columns = {{"p0", ColumnKind::Inside, "share without change"},
                {"p1", ColumnKind::Inside, "share to look for"},
                {"n", ColumnKind::Count, "checks in a sample, 1 to 200"},
                {"run", ColumnKind::Positive, "wished mean number of samples to a false alarm"}},
            .options = {},
            .fields = {{"rows[].row", "row"}, {"rows[].p0, rows[].p1", "p1 moved so that gamma is 1/m"},
                {"rows[].m", "gamma = 1/m"}, {"rows[].threshold", "for --threshold of share-cusum"},
                {"rows[].in_control_run", "mean samples to a false alarm, exact"},
                {"rows[].run_after_change", "mean samples to the signal at p1, exact"}},
            .example = "p0,p1,n,run\n0.05,0.15,20,200\n",
            .run = runDesign},
    };
}

}
