// SPDX-License-Identifier: MIT
#include "core/stats/survival.h"

#include "core/stats/check.h"
#include "core/stats/distributions.h"

#include <algorithm>
#include <cmath>

namespace cradlepost::stats {

namespace {

/** Rounding may leave 0.5000000000000001 where the product is one half. */
constexpr double half = 0.5 + 1e-8;

void readMedian(SurvivalCurve& curve)
{
    for (const auto& step : curve.steps) {
        if (!curve.median && step.survival <= half)
            curve.median = step.time;
        if (!curve.medianLow && step.interval && step.interval->low <= half)
            curve.medianLow = step.time;
        if (!curve.medianHigh && step.interval && step.interval->high <= half)
            curve.medianHigh = step.time;
    }
}

}

Result<SurvivalCurve> kaplanMeier(std::span<const Duration> durations, double level)
{
    CRADLEPOST_TRY(checkLevel(level));
    for (std::size_t i = 0; i < durations.size(); ++i) {
        if (!(durations[i].time >= 0 && durations[i].time <= largestValue))
            return wrong(
                "row " + std::to_string(i + 1) + ": a time cannot be " + shortest(durations[i].time));
    }
    if (durations.empty())
        return undefined("no durations, so no curve");
    std::vector<Duration> sorted(durations.begin(), durations.end());
    std::sort(
        sorted.begin(), sorted.end(), [](const Duration& a, const Duration& b) { return a.time < b.time; });
    const double z = normalWidth(level);
    SurvivalCurve curve;
    curve.n = static_cast<std::int64_t>(sorted.size());
    curve.lastTime = sorted.back().time;
    double survival = 1;
    double hazard = 0; // sum d/(n(n - d))
    for (std::size_t i = 0; i < sorted.size();) {
        const double time = sorted[i].time;
        const auto atRisk = curve.n - static_cast<std::int64_t>(i);
        std::int64_t events = 0;
        for (; i < sorted.size() && sorted[i].time <= time; ++i)
            events += sorted[i].ended ? 1 : 0;
        if (events == 0)
            continue;
        curve.events += events;
        const double n = static_cast<double>(atRisk);
        const double d = static_cast<double>(events);
        SurvivalStep step{.time = time, .atRisk = atRisk, .events = events, .se = {}, .interval = {}};
        survival *= (n - d) / n;
        step.survival = survival;
        if (events < atRisk) {
            hazard += d / (n * (n - d));
            step.se = survival * std::sqrt(hazard);
            const double spread = z * std::sqrt(hazard) / std::abs(std::log(survival));
            step.interval = Interval{
                .low = std::pow(survival, std::exp(spread)), .high = std::pow(survival, std::exp(-spread))};
        }
        curve.steps.push_back(step);
    }
    readMedian(curve);
    return curve;
}

Result<RestrictedMean> restrictedMean(const SurvivalCurve& curve, double horizon)
{
    if (!std::isfinite(horizon) || horizon <= 0)
        return wrong("the horizon must be above 0, not " + shortest(horizon));
    const bool ended = !curve.steps.empty() && curve.steps.back().survival <= 0;
    if (horizon > curve.lastTime && !ended)
        return undefined("the curve is not known beyond " + shortest(curve.lastTime));
    RestrictedMean result;
    double variance = 0;
    double area = 0; // from the step in hand to the horizon, walking backwards
    double to = horizon;
    for (std::size_t k = curve.steps.size(); k-- > 0;) {
        const auto& step = curve.steps[k];
        if (step.time >= horizon)
            continue;
        area += step.survival * (to - step.time);
        to = step.time;
        if (step.events < step.atRisk) {
            const double n = static_cast<double>(step.atRisk);
            const double d = static_cast<double>(step.events);
            variance += area * area * d / (n * (n - d));
        }
    }
    result.mean = area + to;
    result.se = std::sqrt(variance);
    return result;
}

}
