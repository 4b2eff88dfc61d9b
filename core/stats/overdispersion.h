// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/stats/tally.h"

#include <span>
#include <vector>

/** More spread between units than chance within them explains. */
namespace cradlepost::stats {

/**
 * Pulls the z values below the `share` quantile up to it and those above the 1 - share quantile down to it
 * (type 7 quantiles). It pulls in, it does not delete. 0 <= share < 0.5; an empty list is Undefined.
 */
Result<std::vector<double>> winsorised(std::span<const double> z, double share = 0.1);

/** phi = mean of z squared; 1 is what chance gives. Undefined for an empty list. */
Result<double> dispersionFactor(std::span<const double> z);

/**
 * Variance between units on the scale of the estimates, from phi of I units with sampling variances v, w =
 * 1/v: max(0, (I phi - (I - 1))/(sum w - sum w^2 / sum w)). Undefined below two units; v must be above 0.
 * Source: DerSimonian R, Laird N (1986, from memory) Controlled Clinical Trials 7:177-188, as used for
 * funnels by Spiegelhalter DJ (2005) Quality and Safety in Health Care 14:347-351.
 */
Result<double> betweenVariance(double phi, std::span<const double> variances);

struct RandomEffects
{
    double fixedMean = 0;
    double q = 0; ///< heterogeneity, I - 1 degrees of freedom
    double tau2 = 0;
    double mean = 0;
    double se = 0;
    Interval interval; ///< of the mean, mean +- z se
    double i2 = 0; ///< per cent, 0 when Q is at most its degrees of freedom
    double h2 = 0; ///< Q over its degrees of freedom, 1 is what chance gives
};

/** Mean over units with their sampling variances, by DerSimonian-Laird. At least two units, variances above
 * 0. */
Result<RandomEffects> randomEffects(
    std::span<const double> estimates, std::span<const double> variances, double level = usualLevel);

}
