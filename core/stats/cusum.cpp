// SPDX-License-Identifier: MIT
#include "core/stats/cusum.h"

#include "core/stats/check.h"

#include <algorithm>
#include <cmath>

namespace cradlepost::stats {

Result<std::vector<CusumPoint>> tabularCusum(
    std::span<const double> values, double target, double slack, double threshold)
{
    CRADLEPOST_TRY(checkFinite(values, "the value"));
    CRADLEPOST_TRY(checkFinite(target, "the target"));
    if (!(slack >= 0 && slack <= largestValue))
        return wrong("a slack is at least 0, not " + shortest(slack));
    if (!std::isfinite(threshold) || threshold <= 0)
        return wrong("the threshold must be above 0, not " + shortest(threshold));
    if (values.empty())
        return undefined("no values, so no sums");
    std::vector<CusumPoint> points;
    points.reserve(values.size());
    double high = 0;
    double low = 0;
    for (std::size_t i = 0; i < values.size(); ++i) {
        high = std::max(0.0, high + values[i] - target - slack);
        low = std::max(0.0, low + target - slack - values[i]);
        points.push_back({.row = i, .high = high, .low = low, .signal = high > threshold || low > threshold});
    }
    return points;
}

Result<CusumWeights> cusumWeights(ShareChange change)
{
    CRADLEPOST_TRY(checkInside(change.p0, "p0"));
    CRADLEPOST_TRY(checkInside(change.p1, "p1"));
    const double onEvent = std::log(change.p1 / change.p0);
    const double onPass = std::log1p(-change.p1) - std::log1p(-change.p0);
    if (onEvent == 0 || onPass == 0)
        return wrong("p1 must differ from p0, both are " + shortest(change.p0));
    CusumWeights w{.onEvent = onEvent, .onPass = onPass, .r1 = -onPass, .r2 = onEvent - onPass};
    w.gamma = w.r1 / w.r2;
    return w;
}

Result<std::vector<ShareCusumPoint>> shareCusum(
    std::span<const Tally> rows, ShareChange change, double threshold, AfterSignal after)
{
    CRADLEPOST_TRY(checkTallies(rows));
    const auto weights = cusumWeights(change);
    if (!weights)
        return tl::unexpected(weights.error());
    if (!std::isfinite(threshold) || threshold <= 0)
        return wrong("the threshold must be above 0, not " + shortest(threshold));
    if (rows.empty())
        return undefined("no rows, so no sum");
    std::vector<ShareCusumPoint> points;
    points.reserve(rows.size());
    double sum = 0;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const double weight = static_cast<double>(rows[i].x) * weights->onEvent
            + static_cast<double>(rows[i].n - rows[i].x) * weights->onPass;
        sum = std::max(0.0, sum + weight);
        const bool signal = sum >= threshold;
        points.push_back({.row = i, .weight = weight, .sum = sum, .signal = signal});
        if (signal && after == AfterSignal::Reset)
            sum = 0;
    }
    return points;
}

}
