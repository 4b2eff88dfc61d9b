// SPDX-License-Identifier: MIT
#include "core/review/widened.h"

#include "core/stats/distributions.h"

#include <algorithm>
#include <cmath>

namespace cradlepost {

std::optional<stats::Difference> widenedDifference(stats::Tally first, stats::Tally second, double dispersion)
{
    auto difference = stats::newcombeDifference(first, second);
    if (!difference)
        return std::nullopt;
    const double root = std::sqrt(dispersion);
    const double at = difference->estimate;
    difference->interval.low = std::max(-1.0, at - root * (at - difference->interval.low));
    difference->interval.high = std::min(1.0, at + root * (difference->interval.high - at));
    return *difference;
}

std::optional<double> widenedP(stats::Tally first, stats::Tally second, double dispersion)
{
    if (first.n == 0 || second.n == 0)
        return std::nullopt;
    const auto test = stats::pooledTest(first, second);
    return test ? stats::normalTwoSided(test->z / std::sqrt(dispersion)) : 1;
}

}
