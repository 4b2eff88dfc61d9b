// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/stats/tally.h"

namespace cradlepost::stats {

/**
 * Exact interval for the mean of a Poisson count x: chi-square quantiles chi2(a/2; 2x)/2 and chi2(1 - a/2;
 * 2x + 2)/2; x = 0 has the lower end 0. Unit: events. Negative counts are refused. Source: Garwood F (1936)
 * Biometrika 28:437-442.
 */
Result<Interval> garwood(std::int64_t count, double level = usualLevel);

struct Rate
{
    double estimate = 0; ///< events per unit of exposure
    Interval interval;
};

/** Count and Garwood interval divided by the exposure, which must be above 0. */
Result<Rate> exactRate(std::int64_t count, double exposure, double level = usualLevel);

}
