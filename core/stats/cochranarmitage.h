// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/stats/tally.h"

#include <span>

namespace cradlepost::stats {

struct ScoredTally
{
    Tally tally;
    double score = 0; ///< place of the group on the scale; only differences and order matter
};

struct ShareTrend
{
    double z = 0; ///< above 0: the share rises with the score
    double chiSquare = 0; ///< z squared, 1 degree of freedom
    double p = 0; ///< two-sided
};

/**
 * Trend of shares over scored groups: T = sum s_i(x_i - n_i P), Var = P(1 - P) sum n_i(s_i - s)^2, s weighted
 * by n, z = T/sqrt(Var). Without the factor (N - 1)/N of Mantel's variant.
 *
 * Undefined when all or none are events, or when all observations share one score. Source: Armitage P (1955,
 * from memory) Biometrics 11:375-386; Cochran WG (1954, from memory) Biometrics 10:417-451.
 */
Result<ShareTrend> cochranArmitage(std::span<const ScoredTally> groups);

}
