// SPDX-License-Identifier: MIT
#include "app/compute/method.h"
#include "core/stats/pchart.h"
#include "core/stats/runchart.h"
#include "core/stats/uchart.h"
#include "core/stats/xmrchart.h"

namespace cradlepost::compute {

namespace {

using namespace stats;

const std::vector<std::string> ruleWords{"beyond-limit", "two-of-three", "four-of-five", "run-on-one-side",
    "trend", "alternating", "hugging", "mixture"};

std::vector<OptionSpec> chartOptions()
{
    return {{.name = "phases",
                .kind = OptionKind::Rows,
                .meaning = "rows from which on limits are set anew",
                .fallback = "",
                .choices = {}},
        wholeOption("baseline", "rows of each phase that set its limits; 0: all", "0", 0, 1e6),
        {.name = "exclude",
            .kind = OptionKind::Rows,
            .meaning = "rows that are judged but set no limits",
            .fallback = "",
            .choices = {}},
        numberOption("centre", "a centre given from outside", "", -1e150, 1e150),
        {.name = "rules",
            .kind = OptionKind::Words,
            .meaning = "rules for signals: beyond-limit, two-of-three, four-of-five, run-on-one-side, trend, "
                       "alternating, "
                       "hugging, mixture",
            .fallback = "beyond-limit,two-of-three,four-of-five,run-on-one-side,trend",
            .choices = {}},
        wholeOption("run-length", "points of a run on one side", "8", 2, 1000),
        wholeOption("trend-length", "points of a trend", "6", 3, 1000),
        numberOption("width", "of the limits, in sigma", "3", 0.1, 10)};
}

std::vector<FieldSpec> chartFields(const std::string& dispersion)
{
    return {{"phases[].from_row, phases[].to_row", "first and last row of the phase"},
        {"phases[].centre", "centre line"}, {"phases[].baseline_points", "points that set the limits"},
        {"phases[].dispersion", dispersion}, {"phases[].limits", "set, no-spread, too-few-points or no-data"},
        {"points[].row", "row; rows without data have none"}, {"points[].value", "as plotted"},
        {"points[].centre", "centre line"}, {"points[].sigma", "of this point; 0 without limits"},
        {"points[].low, points[].high", "limits, cut to the scale; null without limits"},
        {"points[].low_cut, points[].high_cut",
            "true where the limit fell off the scale: no signal on that side"},
        {"points[].z", "(value - centre)/sigma; null without limits"},
        {"signals[].rule", "which rule; a point exactly on a line is not beyond it"},
        {"signals[].row, signals[].from_row", "row that completes the pattern and row where it begins"},
        {"signals[].side", "1 above or rising, -1 below or falling, 0 neither"}};
}

Result<ChartOptions> readChartOptions(const Options& options, std::size_t rows)
{
    ChartOptions chart;
    const auto fromZero = [&](const char* name, std::vector<std::size_t>& to) -> Result<void> {
        for (const auto row : options.rows(name)) {
            if (row > rows)
                return fail(ErrorCode::BadDocument,
                    "line 1: --" + std::string(name) + " names row " + std::to_string(row)
                        + ", the table has " + std::to_string(rows));
            to.push_back(row - 1);
        }
        return {};
    };
    if (auto done = fromZero("phases", chart.phaseStarts); !done)
        return tl::unexpected(done.error());
    if (auto done = fromZero("exclude", chart.excluded); !done)
        return tl::unexpected(done.error());
    chart.baselineRows = static_cast<std::size_t>(options.whole("baseline"));
    chart.fixedCentre = options.maybe("centre");
    chart.rules.runLength = static_cast<int>(options.whole("run-length"));
    chart.rules.trendLength = static_cast<int>(options.whole("trend-length"));
    chart.rules.width = options.number("width");
    bool* const switches[] = {&chart.rules.beyondLimit, &chart.rules.twoOfThree, &chart.rules.fourOfFive,
        &chart.rules.runOnOneSide, &chart.rules.trend, &chart.rules.alternating, &chart.rules.hugging,
        &chart.rules.mixture};
    for (bool* const one : switches)
        *one = false;
    for (const auto& word : options.words("rules")) {
        std::size_t at = 0;
        while (at < ruleWords.size() && ruleWords[at] != word)
            ++at;
        if (at == ruleWords.size())
            return fail(ErrorCode::NotFound, "--rules knows no rule '" + word + "'");
        *switches[at] = true;
    }
    return chart;
}

Json::Array phasesOf(const ControlChart& chart)
{
    Json::Array phases;
    for (const auto& p : chart.phases)
        phases.emplace_back(Json::Object{{"from_row", rowNumber(p.begin)}, {"to_row", whole(p.end)},
            {"centre", p.centre}, {"baseline_points", whole(p.baselinePoints)}, {"dispersion", p.dispersion},
            {"limits", limitsStateName(p.state)}});
    return phases;
}

Json::Array pointsOf(const ControlChart& chart)
{
    Json::Array points;
    for (const auto& p : chart.points)
        points.emplace_back(Json::Object{{"row", rowNumber(p.row)}, {"value", p.value}, {"centre", p.centre},
            {"sigma", p.sigma}, {"low", p.limits ? Json(p.limits->low) : Json()},
            {"high", p.limits ? Json(p.limits->high) : Json()}, {"low_cut", p.lowerCut},
            {"high_cut", p.upperCut}, {"z", maybe(p.z)}});
    return points;
}

Json::Array signalsOf(const ControlChart& chart)
{
    Json::Array signals;
    for (const auto& s : chart.signals)
        signals.emplace_back(Json::Object{{"rule", ruleName(s.rule)}, {"row", rowNumber(s.at)},
            {"from_row", rowNumber(s.from)}, {"side", s.side}});
    return signals;
}

Result<Report> reportOf(const Result<ControlChart>& chart)
{
    if (!chart)
        return tl::unexpected(chart.error());
    return Report{
        {{"phases", phasesOf(*chart)}, {"points", pointsOf(*chart)}, {"signals", signalsOf(*chart)}}};
}

template <class Draw> Result<Report> shareChart(const Table& table, const Options& options, Draw draw)
{
    const auto rows = table.tallies();
    if (!rows)
        return tl::unexpected(rows.error());
    const auto chartOptions = readChartOptions(options, table.size());
    if (!chartOptions)
        return tl::unexpected(chartOptions.error());
    return reportOf(draw(*rows, *chartOptions));
}

Result<Report> runP(const Table& table, const Options& options) { return shareChart(table, options, pChart); }
Result<Report> runPPrime(const Table& table, const Options& options)
{
    return shareChart(table, options, pPrimeChart);
}

Result<Report> runU(const Table& table, const Options& options)
{
    const auto chartOptions = readChartOptions(options, table.size());
    if (!chartOptions)
        return tl::unexpected(chartOptions.error());
    const auto events = table.counts("events");
    const auto exposure = table.numbers("exposure");
    std::vector<EventCount> rows;
    for (std::size_t i = 0; i < events.size(); ++i)
        rows.push_back({events[i], exposure[i]});
    return reportOf(uChart(rows, *chartOptions));
}

Result<Report> runXmr(const Table& table, const Options& options)
{
    const auto chartOptions = readChartOptions(options, table.size());
    if (!chartOptions)
        return tl::unexpected(chartOptions.error());
    const auto chart = xmrChart(table.gapped("value"), *chartOptions);
    if (!chart)
        return tl::unexpected(chart.error());
    Json::Array ranges;
    for (const auto& r : chart->ranges)
        ranges.emplace_back(Json::Object{
            {"row", rowNumber(r.row)}, {"range", r.range}, {"high", maybe(r.upper)}, {"beyond", r.beyond}});
    auto report = reportOf(chart->values);
    report->body.push_back({"ranges", std::move(ranges)});
    return report;
}

Result<Report> runRun(const Table& table, const Options& options)
{
    const auto chart = runChart(table.numbers("value"), options.maybe("centre"));
    if (!chart)
        return tl::unexpected(chart.error());
    const char* const verdict = chart->verdict == RunVerdict::TooFew ? "too-few"
        : chart->verdict == RunVerdict::Shift                        ? "shift"
                                                                     : "no-shift";
    return Report{{{"centre", chart->centre}, {"total", chart->total}, {"useful", chart->useful},
        {"longest_run", chart->longestRun}, {"longest_run_limit", chart->longestRunLimit},
        {"crossings", chart->crossings}, {"crossings_limit", chart->crossingsLimit},
        {"run_too_long", chart->runTooLong}, {"crossings_too_few", chart->crossingsTooFew},
        {"verdict", verdict}}};
}

}

std::vector<Method> chartMethods()
{
    const std::vector<ColumnSpec> shares{{"x", ColumnKind::Count, "number of events in the period"},
        {"n", ColumnKind::Count, "number of items in the period; 0: no point"}};
    const std::string example = "x,n\n3,14\n1,9\n0,11\n2,20\n9,16\n1,8\n0,0\n2,12\n4,18\n1,6\n";
    auto xmrFields = chartFields("mean moving range");
    xmrFields.push_back({"ranges[].row, ranges[].range", "later row of two neighbours and their distance"});
    xmrFields.push_back(
        {"ranges[].high, ranges[].beyond", "upper limit of the ranges and whether it is passed"});
    return {
        {.name = "p-chart",
            .summary = "Control chart of shares with varying n",
            .columns = shares,
            .options = chartOptions(),
            .fields = chartFields("1"),
            .example = example,
            .run = runP},
        {.name = "p-prime",
            .summary = "Control chart of shares with limits stretched by the spread between points (Laney)",
            .columns = shares,
            .options = chartOptions(),
            .fields = chartFields("sigma z, by which limits are stretched"),
            .example = example,
            .run = runPPrime},
        {.name = "u-chart",
            .summary = "Control chart of events per exposure",
            .columns = {{"events", ColumnKind::Count, "number of events in the period"},
                {"exposure", ColumnKind::NotNegative, "bed-days, hours or items; 0: no point"}},
            .options = chartOptions(),
            .fields = chartFields("1"),
            .example = "events,exposure\n14,10\n12,8\n20,13\n11,10\n7,9.5\n",
            .run = runU},
        {.name = "xmr",
            .summary = "Control chart of single values and their moving ranges",
            .columns
            = {{.name = "value", .kind = ColumnKind::Number, .meaning = "one value a period", .gaps = true}},
            .options = chartOptions(),
            .fields = std::move(xmrFields),
            .example = "value\n49.6\n47.6\n49.9\n51.3\n47.8\n51.2\n52.6\n52.4\n53.6\n52.1\n",
            .run = runXmr},
        {.name = "run-chart",
            .summary = "Runs and crossings about the median",
            .columns = {{"value", ColumnKind::Number, "one value a period"}},
            .options = {numberOption(
                "centre", "a centre frozen from a baseline, instead of the median", "", -1e150, 1e150)},
            .fields = {{"centre", "median or given centre"},
                {"total, useful", "values, and those not exactly on the centre"},
                {"longest_run, longest_run_limit", "a run longer than the limit is a signal"},
                {"crossings, crossings_limit", "fewer crossings than the limit are a signal"},
                {"run_too_long, crossings_too_few", "the two signals"},
                {"verdict", "shift, no-shift, or too-few below 10 useful values"}},
            .example = "value\n90\n92\n90\n88\n85\n90\n91\n93\n94\n95\n90\n96\n93\n92\n91\n90\n94\n",
            .run = runRun},
    };
}

}
