// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/stats/tally.h"

/** Two independent proportions. No unit. A group with n = 0 makes every result here Undefined. */
namespace cradlepost::stats {

struct Difference
{
    double estimate = 0; ///< first minus second
    Interval interval; ///< within [-1, 1]
};

/**
 * Hybrid score interval: with the score limits (l1, u1) and (l2, u2) of each proportion and d = p1 - p2, from
 * d - sqrt((p1 - l1)^2 + (u2 - p2)^2) to d + sqrt((u1 - p1)^2 + (p2 - l2)^2). Source: method 10 of Newcombe
 * RG (1998) Statistics in Medicine 17:873-890.
 */
Result<Difference> newcombeDifference(Tally first, Tally second, double level = usualLevel);

struct ProportionTest
{
    double z = 0; ///< above 0 when the first proportion is the larger
    double chiSquare = 0; ///< z squared, 1 degree of freedom
    double p = 0; ///< two-sided
};

/**
 * Pooled test without continuity correction: z = (p1 - p2)/sqrt(P(1 - P)(1/n1 + 1/n2)), P the pooled share.
 * Undefined when all or none of both groups are events. Source: Fleiss JL (1981) Statistical Methods for
 * Rates and Proportions, 2nd ed., ch. 2.
 */
Result<ProportionTest> pooledTest(Tally first, Tally second);

/**
 * Exact two-sided p given the margins: the sum of all tables no likelier than the one seen (ties counted to a
 * relative 1e-7). 1 when a margin is empty. Source: Fisher RA (1935, from memory) J Royal Stat Soc 98:39-82.
 */
Result<double> fisherExact(Tally first, Tally second);

}
