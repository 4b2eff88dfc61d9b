// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <optional>
#include <vector>

/**
 * Lot quality assurance sampling: of a sample of n, X are found right; the lot "reaches the standard" if X >=
 * d. d counts what is RIGHT; a handbook that counts failures and accepts up to c of them has c = n - d.
 * Source: Dodge HF, Romig HG (1929, from memory) Bell System Technical J 8:613-631; Valadez JJ (1991)
 * Assessing Child Survival Programs in Developing Countries.
 */
namespace cradlepost::stats {

/** The two shares that must be told apart: 0 <= poor < good <= 1. */
struct LqasStandard
{
    double good = 0.8; ///< upper threshold
    double poor = 0.5; ///< lower threshold
    /** Items in the lot; without it the lot is taken as endless. Shares are rounded to whole items, halves
     * up. */
    std::optional<std::int64_t> lot;
};

struct LqasRisks
{
    double goodFailed = 0; ///< alpha: a good lot does not reach d, P(X <= d - 1 | good)
    double poorPassed = 0; ///< beta: a poor lot reaches d, P(X >= d | poor)
};

/**
 * Both risks of a rule: binomial for an endless lot, hypergeometric for a finite one. d = 0 always passes, d
 * = n + 1 always fails. 1 <= n <= 100000 (and at most the lot), 0 <= d <= n + 1. Refused when both shares
 * round to the same number of items of a finite lot.
 */
Result<LqasRisks> lqasRisks(const LqasStandard& standard, std::int64_t n, std::int64_t d);

struct LqasRule
{
    std::int64_t n = 0;
    std::int64_t d = 0;
    LqasRisks risks;
};

/** All d = 0..n + 1 with their risks. n at most 10000. */
Result<std::vector<LqasRule>> lqasRules(const LqasStandard& standard, std::int64_t n);

/** The d with the smallest sum of both risks; the smaller d on a tie. */
Result<LqasRule> bestLqasRule(const LqasStandard& standard, std::int64_t n);

struct LqasPlan
{
    LqasRule rule; ///< smallest n, and for it the smallest d, within both risks
    /** First n from which on every larger n (to the end of the search or of the lot) has a rule as well. */
    std::int64_t safeFrom = 0;
};

/**
 * Smallest sample that keeps both risks: exhaustive search over n, since a larger n may fail where a smaller
 * one passes. Searches to the lot, or to 5000 for an endless one (safeFrom: to 200 past the plan). Undefined
 * when nothing in reach will do. Limits on the risks strictly between 0 and 1.
 */
Result<LqasPlan> planLqas(const LqasStandard& standard, double mostGoodFailed, double mostPoorPassed);

}
