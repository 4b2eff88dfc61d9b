// SPDX-License-Identifier: MIT
#include "core/stats/controlchart.h"

#include "core/stats/check.h"

#include <algorithm>

namespace cradlepost::stats {

namespace {

Result<void> checkRising(const std::vector<std::size_t>& list, std::size_t rows, const char* what)
{
    for (std::size_t i = 0; i < list.size(); ++i) {
        if (list[i] >= rows)
            return wrong(std::string(what) + " names row " + std::to_string(list[i] + 1) + " of "
                + std::to_string(rows));
        if (i > 0 && list[i] <= list[i - 1])
            return wrong(std::string(what) + " must name rows in rising order, each once");
    }
    return {};
}

}

const char* limitsStateName(LimitsState state)
{
    switch (state) {
    case LimitsState::Set:
        return "set";
    case LimitsState::NoSpread:
        return "no-spread";
    case LimitsState::TooFewPoints:
        return "too-few-points";
    case LimitsState::NoData:
        return "no-data";
    }
    return "";
}

Result<std::vector<ChartPhase>> planPhases(std::size_t rows, const ChartOptions& options)
{
    if (rows == 0)
        return undefined("no rows, so no chart");
    CRADLEPOST_TRY(checkRules(options.rules));
    CRADLEPOST_TRY(checkRising(options.phaseStarts, rows, "the list of phases"));
    CRADLEPOST_TRY(checkRising(options.excluded, rows, "the list of excluded rows"));
    std::vector<ChartPhase> phases;
    phases.reserve(options.phaseStarts.size() + 1);
    phases.push_back({.begin = 0, .end = rows});
    for (const auto start : options.phaseStarts) {
        if (start == 0)
            continue;
        phases.back().end = start;
        phases.push_back({.begin = start, .end = rows});
    }
    return phases;
}

bool isBaseline(const ChartPhase& phase, std::size_t row, const ChartOptions& options)
{
    if (row < phase.begin || row >= phase.end)
        return false;
    if (options.baselineRows > 0 && row - phase.begin >= options.baselineRows)
        return false;
    return !std::binary_search(options.excluded.begin(), options.excluded.end(), row);
}

void judge(ControlChart& chart, const RuleSet& rules)
{
    chart.signals.clear();
    std::vector<double> z;
    std::vector<std::size_t> rows;
    z.reserve(chart.points.size());
    rows.reserve(chart.points.size());
    auto point = chart.points.begin();
    for (std::size_t phase = 0; phase < chart.phases.size(); ++phase) {
        z.clear();
        rows.clear();
        for (; point != chart.points.end() && point->phase == phase; ++point) {
            if (!point->z)
                continue;
            z.push_back(*point->z);
            rows.push_back(point->row);
        }
        for (auto& signal : findSignals(z, rules)) {
            signal.at = rows[signal.at];
            signal.from = rows[signal.from];
            chart.signals.push_back(signal);
        }
    }
}

void setLimits(ChartPoint& point, double sigma, double width, double floor, double ceiling)
{
    const double low = point.centre - width * sigma;
    const double high = point.centre + width * sigma;
    point.sigma = sigma;
    point.lowerCut = low < floor;
    point.upperCut = high > ceiling;
    point.limits = Interval{.low = std::max(low, floor), .high = std::min(high, ceiling)};
    point.z = (point.value - point.centre) / sigma;
}

}
