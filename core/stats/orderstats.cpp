// SPDX-License-Identifier: MIT
#include "core/stats/orderstats.h"

#include "core/stats/check.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

namespace cradlepost::stats {

Result<double> median(std::span<const double> values)
{
    CRADLEPOST_TRY(checkFinite(values, "the value"));
    if (values.empty())
        return undefined("no values, so no median");
    std::vector<double> sorted(values.begin(), values.end());
    const auto middle = sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() / 2);
    std::nth_element(sorted.begin(), middle, sorted.end());
    if (sorted.size() % 2 == 1)
        return *middle;
    return std::midpoint(*std::max_element(sorted.begin(), middle), *middle);
}

Result<double> quantile(std::span<const double> values, double p)
{
    CRADLEPOST_TRY(checkFinite(values, "the value"));
    if (!(p >= 0 && p <= 1))
        return wrong("a quantile needs 0 <= p <= 1, not " + shortest(p));
    if (values.empty())
        return undefined("no values, so no quantile");
    std::vector<double> sorted(values.begin(), values.end());
    std::sort(sorted.begin(), sorted.end());
    const double at = static_cast<double>(sorted.size() - 1) * p;
    const auto below = static_cast<std::size_t>(at);
    if (below + 1 >= sorted.size())
        return sorted.back();
    const double share = at - static_cast<double>(below);
    return sorted[below] + share * (sorted[below + 1] - sorted[below]);
}

Result<double> medianDeviation(std::span<const double> values)
{
    const auto centre = median(values);
    if (!centre)
        return centre;
    std::vector<double> distances;
    distances.reserve(values.size());
    for (const double v : values)
        distances.push_back(std::abs(v - *centre));
    return median(distances);
}

}
