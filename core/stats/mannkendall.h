// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/stats/tally.h"

#include <optional>
#include <span>

namespace cradlepost::stats {

/** One value at one time; times need not be evenly spaced. */
struct TimedValue
{
    double time = 0;
    double value = 0;
};

struct Trend
{
    int n = 0;
    double s = 0; ///< rises minus falls over all pairs
    double variance = 0; ///< of s, corrected for ties
    double z = 0; ///< with continuity correction
    double pNormal = 0; ///< two-sided, from z
    std::optional<double> pExact{}; ///< two-sided, where n <= 10 and nothing is tied
    double p = 0; ///< the exact one where there is one
    double tau = 0; ///< tau a, s over the number of pairs
    double slope = 0; ///< Sen's, value per unit of time
    std::optional<Interval>
        interval{}; ///< of the slope; none when its ranks fall outside the slopes there are
};

/**
 * Monotone trend. S = sum of sign(y_j - y_i) over pairs in order of time, Z = (S -+ 1)/sqrt(Var S). Sen's
 * slope is the median of all pair slopes; its limits are the slopes of rank (N - C)/2 and (N + C)/2 + 1, C =
 * z sqrt(Var S), interpolated between ranks. Pairs with equal times are dropped, and Var S is corrected for
 * ties in both.
 *
 * Undefined below four values and when all values or all times are equal. At most 10000 values. Sources: Mann
 * HB (1945, from memory) Econometrica 13:245-259; Kendall MG (1975, from memory) Rank Correlation Methods;
 * Sen PK (1968, from memory) J Am Stat Assoc 63:1379-1389; Gilbert RO (1987) Statistical Methods for
 * Environmental Pollution Monitoring, ch. 16.
 */
Result<Trend> mannKendall(std::span<const TimedValue> series, double level = usualLevel);

}
