// SPDX-License-Identifier: MIT
#include "core/stats/pchart.h"

#include "core/stats/check.h"

#include <cmath>

namespace cradlepost::stats {

namespace {

constexpr double d2 = 1.128;

double share(Tally t) { return static_cast<double>(t.x) / static_cast<double>(t.n); }

double sigmaOf(double centre, std::int64_t n)
{
    return std::sqrt(centre * (1 - centre) / static_cast<double>(n));
}

Result<void> setCentre(ChartPhase& phase, std::span<const Tally> rows, const ChartOptions& options)
{
    Tally sum;
    bool anyPoint = false;
    for (auto row = phase.begin; row < phase.end; ++row) {
        if (rows[row].n == 0)
            continue;
        anyPoint = true;
        if (!isBaseline(phase, row, options))
            continue;
        sum.x += rows[row].x;
        sum.n += rows[row].n;
        ++phase.baselinePoints;
    }
    if (!anyPoint)
        return {};
    if (sum.n == 0 && !options.fixedCentre)
        return undefined("the baseline of the phase from row " + std::to_string(phase.begin + 1)
            + " holds no observation, so it has no centre");
    phase.centre = options.fixedCentre ? *options.fixedCentre : share(sum);
    phase.state = phase.centre > 0 && phase.centre < 1 ? LimitsState::Set : LimitsState::NoSpread;
    return {};
}

/** Laney's sigma z over the baseline of a phase. */
void setDispersion(ChartPhase& phase, std::span<const Tally> rows, const ChartOptions& options)
{
    double sum = 0;
    double before = 0;
    std::size_t seen = 0;
    for (auto row = phase.begin; row < phase.end; ++row) {
        if (rows[row].n == 0 || !isBaseline(phase, row, options))
            continue;
        const double z = (share(rows[row]) - phase.centre) / sigmaOf(phase.centre, rows[row].n);
        if (seen > 0)
            sum += std::abs(z - before);
        before = z;
        ++seen;
    }
    if (seen < 2) {
        phase.state = LimitsState::TooFewPoints;
        return;
    }
    phase.dispersion = sum / static_cast<double>(seen - 1) / d2;
    // Equal shares give equal z up to rounding.
    if (phase.dispersion < 1e-12)
        phase.state = LimitsState::NoSpread;
}

Result<ControlChart> chartOf(std::span<const Tally> rows, const ChartOptions& options, bool prime)
{
    CRADLEPOST_TRY(checkTallies(rows));
    if (options.fixedCentre && !(*options.fixedCentre >= 0 && *options.fixedCentre <= 1))
        return wrong("the centre of a share lies in 0..1, not " + shortest(*options.fixedCentre));
    auto phases = planPhases(rows.size(), options);
    if (!phases)
        return tl::unexpected(phases.error());
    ControlChart chart{.points = {}, .phases = std::move(*phases), .signals = {}};
    chart.points.reserve(rows.size());
    for (std::size_t p = 0; p < chart.phases.size(); ++p) {
        auto& phase = chart.phases[p];
        CRADLEPOST_TRY(setCentre(phase, rows, options));
        if (prime && phase.state == LimitsState::Set)
            setDispersion(phase, rows, options);
        const bool limited = phase.state == LimitsState::Set || phase.state == LimitsState::TooFewPoints;
        for (auto row = phase.begin; row < phase.end; ++row) {
            if (rows[row].n == 0)
                continue;
            auto& point = chart.points.emplace_back();
            point.row = row;
            point.phase = p;
            point.value = share(rows[row]);
            point.centre = phase.centre;
            if (limited)
                setLimits(
                    point, sigmaOf(phase.centre, rows[row].n) * phase.dispersion, options.rules.width, 0, 1);
        }
    }
    if (chart.points.empty())
        return undefined("nothing observed in any row, so no chart");
    judge(chart, options.rules);
    return chart;
}

}

Result<ControlChart> pChart(std::span<const Tally> rows, const ChartOptions& options)
{
    return chartOf(rows, options, false);
}

Result<ControlChart> pPrimeChart(std::span<const Tally> rows, const ChartOptions& options)
{
    return chartOf(rows, options, true);
}

}
