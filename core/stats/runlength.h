// SPDX-License-Identifier: MIT
#pragma once

#include "core/stats/cusum.h"

/**
 * How long a chart runs on average until it signals: the spacing of false alarms while nothing has changed,
 * and the delay after a change. Unit: checks, samples or points, as each function says. Start from 0.
 */
namespace cradlepost::stats {

/**
 * A sum of whole steps: each sample adds `perEvent` x - `perSample`; signal when the sum reaches `threshold`.
 * x is binomial with n checks per sample. All three in the same small unit, so that a slack of 1.5 events is
 * {perEvent = 2, perSample = 3}.
 */
struct LatticeCusum
{
    int n = 1; ///< checks in a sample
    int perEvent = 1;
    int perSample = 1;
    int threshold = 1; ///< at most 2000
};

/**
 * Mean number of samples until the signal when each check is an event with chance p; exact, from the
 * absorbing Markov chain of the sums. Undefined when the sum can never reach the threshold. Source: Brook D,
 * Evans DA (1972, from memory) Biometrika 59:539-549; Reynolds MR, Stoumbos ZG (1999) J Quality Technology
 * 31:87-108.
 */
Result<double> meanRunLength(const LatticeCusum& cusum, double p);

/** A log-likelihood chart for samples of n checks with its run lengths stated. */
struct CusumDesign
{
    ShareChange change; ///< p1 moved so that gamma is 1/m
    int m = 0; ///< gamma = 1/m
    LatticeCusum lattice;
    double threshold = 0; ///< h of shareCusum
    double inControl = 0; ///< mean samples to a false alarm at p0
    double afterChange = 0; ///< mean samples to the signal at p1
};

/**
 * The chart with the smallest threshold whose mean run at p0 is at least `inControl` samples. gamma is moved
 * to the nearest 1/m, m = 2..200, and p1 with it; 0 < p0 < p1 < 1; 1 <= n <= 200. Refused when p1 is so near
 * p0 or the wish so high that no threshold within 2000 steps will do.
 */
Result<CusumDesign> designShareCusum(ShareChange change, int n, double inControl);

/**
 * Mean number of points until a two-sided EWMA of independent normal values with steady limits signals, the
 * mean being off by `shift` sigma. Source: the integral equation of Crowder SV (1987, from memory)
 * Technometrics 29:401-407, solved by Gauss-Legendre quadrature with 64 nodes; good to about 1e-6 for 0.05 <=
 * lambda <= 1, which are the bounds here; width in (0, 6].
 */
Result<double> ewmaRunLength(double lambda, double width, double shift = 0);

}
