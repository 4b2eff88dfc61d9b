// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <optional>
#include <span>

/** Births to come against kits on hand. Unit: births or pieces in the stated interval. */
namespace cradlepost::stats {

/**
 * Demand in one interval: Poisson with this mean, or gamma-Poisson (negative binomial) when `size` is given:
 * variance mean + mean^2/size. mean at least 0 and at most 1e9, size from 1e-6 to 1e12.
 */
struct Demand
{
    double mean = 0;
    std::optional<double> size;
};

struct StockOutlook
{
    double exactly = 0; ///< P(N = k)
    double atMost = 0; ///< P(N <= k)
    double stockOut = 0; ///< P(N > k): a birth finds no kit
    double emptyShelf = 0; ///< P(N >= k): nothing is left at the end
    double unmet = 0; ///< mean number of births that find no kit, E[(N - k)+]
};

/**
 * What k pieces in stock face. Both tails are computed directly, so that a tail of 1e-17 does not vanish.
 * Mean 0: no stock-out whatever k. k from 0 to 2^53. Source: Johnson NL, Kemp AW, Kotz S (2005, from memory)
 * Univariate Discrete Distributions, ch. 4 and 5.
 */
Result<StockOutlook> outlook(Demand demand, std::int64_t stock);

/**
 * Smallest stock with P(N <= stock) >= service, the chance of no stock-out in a cycle (not the share of
 * births served). 0 <= service < 1: a service of 1 would need an unbounded stock and is refused.
 */
Result<std::int64_t> stockFor(Demand demand, double service);

/** How the daily rate varies over a lead time: it changes which spread the total has. */
enum class LeadTimeModel {
    RateDrawnOnce, ///< one slow rate for the whole lead time: same size
    IndependentDays, ///< each day draws its own: size times days
};

/** Demand over `days` (above 0, may be fractional) when one day has this demand. */
Result<Demand> overLeadTime(Demand daily, double days, LeadTimeModel model);

struct ReorderPoint
{
    std::int64_t level = 0; ///< order when stock falls to this
    double expected = 0; ///< mean demand over the lead time
    double safety = 0; ///< level - expected; 0 when nothing is expected
};

Result<ReorderPoint> reorderPoint(Demand daily, double days, LeadTimeModel model, double service);

struct DemandFit
{
    double mean = 0;
    double variance = 0; ///< n - 1
    double ratio = 0; ///< variance/mean
    std::optional<double> size; ///< mean^2/(variance - mean); none when the spread is not above Poisson's
    double chiSquare = 0; ///< sum (x - mean)^2/mean, n - 1 degrees of freedom
    int df = 0;
    double p = 0; ///< of the chi-square, upper tail
};

/**
 * Moment fit to counts of equal intervals. Undefined below two counts and when all are 0; negative counts are
 * refused. Source of the index of dispersion test: Fisher RA (1950, from memory) Biometrics 6:17-24.
 */
Result<DemandFit> fitDemand(std::span<const std::int64_t> counts);

}
