// SPDX-License-Identifier: MIT
#include "core/stats/ewma.h"

#include "core/stats/check.h"

#include <algorithm>
#include <cmath>

namespace cradlepost::stats {

namespace {

Result<void> checkWeights(double lambda, double width)
{
    if (!(lambda > 0 && lambda <= 1))
        return wrong("lambda lies in (0, 1], not " + shortest(lambda));
    if (!(width > 0) || !std::isfinite(width))
        return wrong("the width of the limits must be above 0, not " + shortest(width));
    return {};
}

bool outside(double value, const Interval& limits, double sd)
{
    const double slack = 1e-9 * sd;
    return value > limits.high + slack || value < limits.low - slack;
}

}

Result<std::vector<EwmaPoint>> ewma(std::span<const double> values, const EwmaOptions& options)
{
    CRADLEPOST_TRY(checkWeights(options.lambda, options.width));
    CRADLEPOST_TRY(checkFinite(values, "the value"));
    CRADLEPOST_TRY(checkFinite(options.target, "the target"));
    if (!(options.sigma > 0 && options.sigma <= largestValue))
        return wrong("sigma must be above 0, not " + shortest(options.sigma));
    if (values.empty())
        return undefined("no values, so no average");
    const double keep = 1 - options.lambda;
    std::vector<EwmaPoint> points;
    points.reserve(values.size());
    double average = options.target;
    double past = 1; // (1 - lambda)^(2i)
    for (std::size_t i = 0; i < values.size(); ++i) {
        average = options.lambda * values[i] + keep * average;
        past *= keep * keep;
        const double growth = options.limits == EwmaLimits::Steady ? 1 : 1 - past;
        const double sd = options.sigma * std::sqrt(options.lambda / (2 - options.lambda) * growth);
        const Interval limits{
            .low = options.target - options.width * sd, .high = options.target + options.width * sd};
        points.push_back({.row = i,
            .average = average,
            .sd = sd,
            .limits = limits,
            .beyond = outside(average, limits, sd)});
    }
    return points;
}

Result<std::vector<EwmaPoint>> binomialEwma(
    std::span<const Tally> rows, double p0, double lambda, double width)
{
    CRADLEPOST_TRY(checkWeights(lambda, width));
    CRADLEPOST_TRY(checkTallies(rows));
    CRADLEPOST_TRY(checkInside(p0, "the target share"));
    std::vector<EwmaPoint> points;
    points.reserve(rows.size());
    double average = p0;
    double variance = 0;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (rows[i].n > 0) {
            const double n = static_cast<double>(rows[i].n);
            average = lambda * (static_cast<double>(rows[i].x) / n) + (1 - lambda) * average;
            variance = lambda * lambda * p0 * (1 - p0) / n + (1 - lambda) * (1 - lambda) * variance;
        }
        if (variance <= 0)
            continue;
        const double sd = std::sqrt(variance);
        const Interval limits{.low = std::max(0.0, p0 - width * sd), .high = std::min(1.0, p0 + width * sd)};
        points.push_back({.row = i,
            .average = average,
            .sd = sd,
            .limits = limits,
            .beyond = rows[i].n > 0 && outside(average, limits, sd)});
    }
    if (points.empty())
        return undefined("nothing observed in any row, so no average");
    return points;
}

}
