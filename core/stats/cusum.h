// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/stats/tally.h"

#include <span>
#include <vector>

/** Cumulative sums: they add up small departures that single points do not show. */
namespace cradlepost::stats {

struct CusumPoint
{
    std::size_t row = 0;
    double high = 0; ///< upper sum, in the unit of the values
    double low = 0; ///< lower sum
    bool signal = false; ///< one of them strictly above the threshold
};

/**
 * Tabular sums of single values: high = max(0, high + x - target - slack), low = max(0, low + target - slack
 * - x); they run on after a signal. target finite, slack at least 0, threshold above 0, all in the unit of
 * the values. No values is Undefined. Source: NIST/SEMATECH e-Handbook 6.3.2.3.
 */
Result<std::vector<CusumPoint>> tabularCusum(
    std::span<const double> values, double target, double slack, double threshold);

enum class AfterSignal {
    Hold, ///< the sum runs on
    Reset, ///< the sum starts again from 0
};

/** The change to look for: from a share p0 to p1; p1 < p0 looks for improvement. */
struct ShareChange
{
    double p0 = 0;
    double p1 = 0;
};

struct ShareCusumPoint
{
    std::size_t row = 0;
    double weight = 0; ///< log-likelihood ratio of this row
    double sum = 0;
    bool signal = false; ///< sum >= threshold
};

/**
 * Log-likelihood sums for x events in n checks: W = x ln(p1/p0) + (n - x) ln((1 - p1)/(1 - p0)),
 * S = max(0, S + W), signal when S >= h. n = 1 throughout is the Bernoulli chart; a row with n = 0 adds
 * nothing. 0 < p0 < 1, 0 < p1 < 1, p1 != p0, h > 0. No rows is Undefined. Source: Reynolds MR, Stoumbos ZG
 * (1999) J Quality Technology 31:87-108; Steiner SH et al. (2000, from memory) Biostatistics 1:441-452.
 */
Result<std::vector<ShareCusumPoint>> shareCusum(
    std::span<const Tally> rows, ShareChange change, double threshold, AfterSignal after = AfterSignal::Hold);

/** The same weights counted in events: the sum grows by x - gamma n, the threshold is h/r2. */
struct CusumWeights
{
    double onEvent = 0; ///< ln(p1/p0)
    double onPass = 0; ///< ln((1 - p1)/(1 - p0))
    double r1 = 0; ///< -ln((1 - p1)/(1 - p0))
    double r2 = 0; ///< ln(p1(1 - p0)/(p0(1 - p1)))
    double gamma = 0; ///< r1/r2, a share between p0 and p1
};

Result<CusumWeights> cusumWeights(ShareChange change);

}
