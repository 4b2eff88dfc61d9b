// SPDX-License-Identifier: MIT
#include "core/stats/uchart.h"

#include "core/stats/check.h"

#include <cmath>
#include <limits>

namespace cradlepost::stats {

namespace {

Result<void> checkRows(std::span<const EventCount> rows)
{
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const auto& row = rows[i];
        const auto at = "row " + std::to_string(i + 1) + ": ";
        if (row.events < 0 || row.events > maxCount)
            return wrong(at + "a count of events cannot be " + std::to_string(row.events));
        if (!isExposure(row.exposure))
            return wrong(at + "an exposure cannot be " + shortest(row.exposure));
        if (row.exposure <= 0 && row.events > 0)
            return wrong(at + "events without exposure");
    }
    return {};
}

Result<void> setCentre(ChartPhase& phase, std::span<const EventCount> rows, const ChartOptions& options)
{
    double events = 0;
    double exposure = 0;
    bool anyPoint = false;
    for (auto row = phase.begin; row < phase.end; ++row) {
        if (rows[row].exposure <= 0)
            continue;
        anyPoint = true;
        if (!isBaseline(phase, row, options))
            continue;
        events += static_cast<double>(rows[row].events);
        exposure += rows[row].exposure;
        ++phase.baselinePoints;
    }
    if (!anyPoint)
        return {};
    if (phase.baselinePoints == 0 && !options.fixedCentre)
        return undefined("the baseline of the phase from row " + std::to_string(phase.begin + 1)
            + " holds no exposure, so it has no centre");
    phase.centre = options.fixedCentre ? *options.fixedCentre : events / exposure;
    phase.state = phase.centre > 0 ? LimitsState::Set : LimitsState::NoSpread;
    return {};
}

}

Result<ControlChart> uChart(std::span<const EventCount> rows, const ChartOptions& options)
{
    CRADLEPOST_TRY(checkRows(rows));
    if (options.fixedCentre && !(*options.fixedCentre >= 0 && *options.fixedCentre <= largestExposure))
        return wrong("the centre of a rate is at least 0, not " + shortest(*options.fixedCentre));
    auto phases = planPhases(rows.size(), options);
    if (!phases)
        return tl::unexpected(phases.error());
    ControlChart chart{.points = {}, .phases = std::move(*phases), .signals = {}};
    chart.points.reserve(rows.size());
    for (std::size_t p = 0; p < chart.phases.size(); ++p) {
        auto& phase = chart.phases[p];
        CRADLEPOST_TRY(setCentre(phase, rows, options));
        for (auto row = phase.begin; row < phase.end; ++row) {
            if (rows[row].exposure <= 0)
                continue;
            auto& point = chart.points.emplace_back();
            point.row = row;
            point.phase = p;
            point.value = static_cast<double>(rows[row].events) / rows[row].exposure;
            point.centre = phase.centre;
            if (phase.state == LimitsState::Set)
                setLimits(point, std::sqrt(phase.centre / rows[row].exposure), options.rules.width, 0,
                    std::numeric_limits<double>::max());
        }
    }
    if (chart.points.empty())
        return undefined("no exposure in any row, so no chart");
    judge(chart, options.rules);
    return chart;
}

}
