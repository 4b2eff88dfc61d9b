// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/stats/tally.h"

#include <optional>
#include <span>
#include <vector>

/**
 * Funnel plot for shares of units of different size. No unit. Source: Spiegelhalter DJ (2005) Statistics in
 * Medicine 24:1185-1202.
 */
namespace cradlepost::stats {

/**
 * Exact binomial limit, interpolated: r the smallest whole number with P(R <= r) >= tail, R ~ Bin(n, target),
 * a = (P(R <= r) - tail)/P(R = r), limit (r - a)/n (appendix A.1.1 of the source). Raw: it may lie in
 * (-1/n, 0]; draw it cut to [0, 1]. The curve over n is continuous but not monotone for small n.
 * 0 < target < 1, n >= 1, 0 < tail < 1.
 */
Result<double> funnelLimit(double target, std::int64_t n, double tail);

/** Both limits of a two-sided level, cut to [0, 1]. */
Result<Interval> funnelLimits(double target, std::int64_t n, double level);

/** min(1, 2 min(P(R <= x), P(R >= x))) against the target; n >= 1, 0 < target < 1. */
Result<double> exactTwoSided(Tally tally, double target);

enum class DispersionModel {
    None, ///< limits from chance within units alone
    Multiplicative, ///< target +- z s sqrt(phi), phi from winsorised z
    Additive, ///< target +- z sqrt(s^2 + tau^2)
};

const char* dispersionName(DispersionModel model);

struct FunnelOptions
{
    std::optional<double> target; ///< sum x / sum n when not given
    DispersionModel model = DispersionModel::None; ///< as wished; see Funnel::applied
    double winsorise = 0.1;
};

struct FunnelUnit
{
    std::size_t row = 0;
    double share = 0;
    double s = 0; ///< sqrt(target(1 - target)/n)
    double z = 0;
    double zWinsorised = 0;
    Interval inner; ///< 95 %, by the applied model
    Interval outer; ///< 99.8 %
    double p = 0; ///< exact two-sided, against chance within units alone
    double pAdjusted = 0; ///< Benjamini-Hochberg over the units
    /** -1 below the outer limits, +1 above them, 0 within. Where no model widens them the exact p must be
     * below 0.002 as well: interpolated limits of a small unit can lie inside 0 or 1, and 5 of 5 is no alarm.
     */
    int side = 0;
};

struct Funnel
{
    double target = 0;
    double phi = 0; ///< from z as they are: for the test
    double phiWinsorised = 0; ///< for the limits
    double tau2 = 0; ///< from winsorised phi; 0 for fewer than two units
    double chiSquare = 0; ///< I phi
    int df = 0; ///< I - 1 when the target was estimated, I when it was given
    double pOverdispersion = 1; ///< of chiSquare; 1 when df is 0
    /** What the limits use: None when winsorised phi is at most 1 (or tau^2 is 0), whatever was wished. */
    DispersionModel applied = DispersionModel::None;
    std::vector<FunnelUnit> units; ///< rows with n > 0
};

/** Rows with n = 0 have no unit. Undefined when nothing was observed or the target is 0 or 1. */
Result<Funnel> funnel(std::span<const Tally> rows, const FunnelOptions& options = {});

}
