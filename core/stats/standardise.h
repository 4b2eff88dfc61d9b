// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/stats/tally.h"

#include <span>

/**
 * Standardisation: figures of units with a different mix of strata (shift, kind of round) made comparable. A
 * stratum with a weight but without observation makes the direct figure Undefined: it is not renormalised. A
 * stratum with weight 0 is dropped. Weights are at least 0, one of them above 0.
 */
namespace cradlepost::stats {

struct Standardised
{
    double crude = 0; ///< over the strata that count
    double adjusted = 0;
    double se = 0; ///< of the adjusted figure
    Interval interval;
};

struct ShareStratum
{
    Tally tally;
    double weight = 0; ///< in the standard
};

/**
 * Direct, shares: sum w_k p_k, w_k = W_k / sum W; variance sum w_k^2 p_k(1 - p_k)/n_k; interval adjusted +- z
 * se, cut to [0, 1]. No unit. Source: Fleiss JL (1981) Statistical Methods for Rates and Proportions, ch. 14.
 */
Result<Standardised> directShare(std::span<const ShareStratum> strata, double level = usualLevel);

struct RateStratum
{
    std::int64_t events = 0;
    double exposure = 0;
    double weight = 0; ///< in the standard
};

/**
 * Direct, rates: r = sum w_k d_k/T_k; v = sum (w_k/T_k)^2 d_k; w_m = max w_k/T_k; gamma interval from the a/2
 * quantile of shape r^2/v and scale v/r to the 1 - a/2 quantile of shape (r + w_m)^2/(v + w_m^2) and scale
 * (v + w_m^2)/(r + w_m). No event: lower end 0. Unit: events per unit of exposure. Source: Fay MP, Feuer EJ
 * (1997) Statistics in Medicine 16:791-801.
 */
Result<Standardised> directRate(std::span<const RateStratum> strata, double level = usualLevel);

struct IndirectStratum
{
    double exposure = 0;
    double standardRate = 0; ///< events per unit of exposure in the standard
};

struct Indirect
{
    double expected = 0;
    double ratio = 0; ///< observed / expected
    Interval interval; ///< exact: Garwood's limits of the observed count / expected
};

/**
 * Indirect: expected = sum T_k R_k, ratio = observed/expected. Ratios of different units are not comparable
 * with each other. Expected 0 is Undefined. Source: Breslow NE, Day NE (1987, from memory) Statistical
 * Methods in Cancer Research, vol. II, ch. 2.
 */
Result<Indirect> indirectRatio(
    std::int64_t observed, std::span<const IndirectStratum> strata, double level = usualLevel);

}
