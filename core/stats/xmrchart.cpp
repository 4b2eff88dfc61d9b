// SPDX-License-Identifier: MIT
#include "core/stats/xmrchart.h"

#include "core/stats/check.h"

#include <cmath>
#include <limits>

namespace cradlepost::stats {

namespace {

constexpr double d2 = 1.128;
constexpr double d4 = 3.267;

using Rows = std::span<const std::optional<double>>;

Result<void> setPhase(ChartPhase& phase, Rows rows, const ChartOptions& options)
{
    double sum = 0;
    double ranges = 0;
    std::size_t rangeCount = 0;
    bool anyPoint = false;
    for (auto row = phase.begin; row < phase.end; ++row) {
        if (!rows[row])
            continue;
        anyPoint = true;
        if (!isBaseline(phase, row, options))
            continue;
        sum += *rows[row];
        ++phase.baselinePoints;
        if (row > phase.begin && rows[row - 1] && isBaseline(phase, row - 1, options)) {
            ranges += std::abs(*rows[row] - *rows[row - 1]);
            ++rangeCount;
        }
    }
    if (!anyPoint)
        return {};
    if (phase.baselinePoints == 0 && !options.fixedCentre)
        return undefined("the baseline of the phase from row " + std::to_string(phase.begin + 1)
            + " holds no value, so it has no centre");
    phase.centre
        = options.fixedCentre ? *options.fixedCentre : sum / static_cast<double>(phase.baselinePoints);
    phase.dispersion = rangeCount > 0 ? ranges / static_cast<double>(rangeCount) : 0;
    phase.state = rangeCount == 0 ? LimitsState::TooFewPoints
        : phase.dispersion > 0    ? LimitsState::Set
                                  : LimitsState::NoSpread;
    return {};
}

void addRange(XmrChart& chart, const ChartPhase& phase, Rows rows, std::size_t row)
{
    if (row == phase.begin || !rows[row - 1])
        return;
    MovingRange moving{.row = row, .range = std::abs(*rows[row] - *rows[row - 1]), .upper = {}};
    if (phase.state == LimitsState::Set) {
        moving.upper = d4 * phase.dispersion;
        moving.beyond = moving.range > *moving.upper * (1 + 1e-12);
    }
    chart.ranges.push_back(moving);
}

}

Result<XmrChart> xmrChart(Rows rows, const ChartOptions& options)
{
    constexpr double huge = std::numeric_limits<double>::max();
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (rows[i] && !isSensible(*rows[i]))
            return wrong(
                "row " + std::to_string(i + 1) + ": " + checkFinite(*rows[i], "the value").error().message);
    }
    if (options.fixedCentre)
        CRADLEPOST_TRY(checkFinite(*options.fixedCentre, "the centre"));
    auto phases = planPhases(rows.size(), options);
    if (!phases)
        return tl::unexpected(phases.error());
    XmrChart chart;
    chart.values.phases = std::move(*phases);
    chart.values.points.reserve(rows.size());
    chart.ranges.reserve(rows.size());
    for (std::size_t p = 0; p < chart.values.phases.size(); ++p) {
        auto& phase = chart.values.phases[p];
        CRADLEPOST_TRY(setPhase(phase, rows, options));
        for (auto row = phase.begin; row < phase.end; ++row) {
            if (!rows[row])
                continue;
            auto& point = chart.values.points.emplace_back();
            point.row = row;
            point.phase = p;
            point.value = *rows[row];
            point.centre = phase.centre;
            if (phase.state == LimitsState::Set)
                setLimits(point, phase.dispersion / d2, options.rules.width, -huge, huge);
            addRange(chart, phase, rows, row);
        }
    }
    if (chart.values.points.empty())
        return undefined("no value in any row, so no chart");
    judge(chart.values, options.rules);
    return chart;
}

}
