// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/stats/tally.h"

/**
 * Intervals for one proportion. No unit. With n = 0 there is no estimate and the result is Undefined; x = 0
 * puts the lower end at exactly 0, x = n the upper end at exactly 1. A level outside (0, 1) is refused.
 */
namespace cradlepost::stats {

/**
 * Score interval, without continuity correction: with p = x/n the two roots of |p - P| = z sqrt(P(1 - P)/n).
 * Not symmetric about p. Source: Wilson EB (1927) J Am Stat Assoc 22:209-212; method 3 of Newcombe RG (1998)
 * Statistics in Medicine 17:857-872.
 */
Result<Interval> wilson(Tally tally, double level = usualLevel);

/**
 * "Exact" interval: quantiles of Beta(x, n - x + 1) and Beta(x + 1, n - x). It covers at least the level.
 * Source: Clopper CJ, Pearson ES (1934, from memory) Biometrika 26:404-413; method 5 of Newcombe (1998).
 */
Result<Interval> clopperPearson(Tally tally, double level = usualLevel);

/**
 * One-sided upper limit of the same kind. At 0 of n and 95 % it is 1 - 0.05^(1/n), the "rule of three" (about
 * 3/n); the upper end of the two-sided interval lies higher (about 3.7/n).
 */
Result<double> clopperPearsonUpper(Tally tally, double level = usualLevel);

}
