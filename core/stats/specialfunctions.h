// SPDX-License-Identifier: MIT
#pragma once

/**
 * Incomplete beta and gamma functions with their derivatives and inverses, over Boost.Math; the only place
 * that includes it. Nothing here throws: the callers have checked, and what runs out of exponent on the way
 * is done again in long double.
 */
namespace cradlepost::stats {

double lowerBeta(double a, double b, double x);
double upperBeta(double a, double b, double x);
double betaDensity(double a, double b, double x);
double lowerGamma(double shape, double x);
double upperGamma(double shape, double x);
double gammaDensity(double shape, double x);

double lowerBetaInverse(double a, double b, double p);
double upperBetaInverse(double a, double b, double p);
double lowerGammaInverse(double shape, double p);
double upperGammaInverse(double shape, double p);
double normalInverse(double p);

}
