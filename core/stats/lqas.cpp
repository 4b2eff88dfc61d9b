// SPDX-License-Identifier: MIT
#include "core/stats/lqas.h"

#include "core/stats/check.h"
#include "core/stats/distributions.h"

#include <algorithm>
#include <cmath>

namespace cradlepost::stats {

namespace {

constexpr std::int64_t largestSample = 100'000;
constexpr std::int64_t longestSearch = 5000;
constexpr std::int64_t safetySearch = 200;

/** Whole items of a share, halves up; 0.15 * 190 is a half, whatever its double says. */
std::int64_t rightOf(double share, std::int64_t lot)
{
    return std::min(
        lot, static_cast<std::int64_t>(std::floor(share * static_cast<double>(lot) + 0.5 + 1e-9)));
}

Result<void> checkStandard(const LqasStandard& s)
{
    if (!(s.poor >= 0 && s.poor < s.good && s.good <= 1))
        return wrong("the standard needs 0 <= poor < good <= 1, not poor = " + shortest(s.poor)
            + ", good = " + shortest(s.good));
    if (!s.lot)
        return {};
    if (*s.lot < 1 || *s.lot > maxCount)
        return wrong("a lot has at least 1 item, not " + std::to_string(*s.lot));
    if (rightOf(s.good, *s.lot) == rightOf(s.poor, *s.lot))
        return wrong("in a lot of " + std::to_string(*s.lot) + " both shares are the same number of items");
    return {};
}

Result<void> checkSample(const LqasStandard& s, std::int64_t n, std::int64_t most)
{
    CRADLEPOST_TRY(checkStandard(s));
    if (n < 1 || n > most)
        return wrong("a sample has 1 to " + std::to_string(most) + " items, not " + std::to_string(n));
    if (s.lot && n > *s.lot)
        return wrong(
            "a sample of " + std::to_string(n) + " is larger than the lot of " + std::to_string(*s.lot));
    return {};
}

LqasRisks risksOf(const LqasStandard& s, std::int64_t n, std::int64_t d)
{
    if (s.lot) {
        const Hypergeometric good{.lot = *s.lot, .right = rightOf(s.good, *s.lot), .sample = n};
        const Hypergeometric poor{.lot = *s.lot, .right = rightOf(s.poor, *s.lot), .sample = n};
        return {.goodFailed = good.atMost(d - 1), .poorPassed = poor.moreThan(d - 1)};
    }
    return {.goodFailed = Binomial{.n = n, .p = s.good}.atMost(d - 1),
        .poorPassed = Binomial{.n = n, .p = s.poor}.moreThan(d - 1)};
}

/** Smallest d that keeps the second risk, if it keeps the first one too. */
std::optional<LqasRule> ruleWithin(const LqasStandard& s, std::int64_t n, double alpha, double beta)
{
    // Passing a poor lot gets rarer as d rises: bisect.
    std::int64_t low = -1; // not kept
    std::int64_t high = n + 1; // kept
    while (high - low > 1) {
        const auto middle = low + (high - low) / 2;
        (risksOf(s, n, middle).poorPassed <= beta ? high : low) = middle;
    }
    const LqasRule rule{.n = n, .d = high, .risks = risksOf(s, n, high)};
    return rule.risks.goodFailed <= alpha ? std::optional(rule) : std::nullopt;
}

}

Result<LqasRisks> lqasRisks(const LqasStandard& standard, std::int64_t n, std::int64_t d)
{
    CRADLEPOST_TRY(checkSample(standard, n, largestSample));
    if (d < 0 || d > n + 1)
        return wrong("a decision number lies in 0.." + std::to_string(n + 1) + ", not " + std::to_string(d));
    return risksOf(standard, n, d);
}

Result<std::vector<LqasRule>> lqasRules(const LqasStandard& standard, std::int64_t n)
{
    CRADLEPOST_TRY(checkSample(standard, n, 10'000));
    std::vector<LqasRule> rules;
    rules.reserve(static_cast<std::size_t>(n) + 2);
    for (std::int64_t d = 0; d <= n + 1; ++d)
        rules.push_back({.n = n, .d = d, .risks = risksOf(standard, n, d)});
    return rules;
}

Result<LqasRule> bestLqasRule(const LqasStandard& standard, std::int64_t n)
{
    const auto rules = lqasRules(standard, n);
    if (!rules)
        return tl::unexpected(rules.error());
    return *std::min_element(rules->begin(), rules->end(), [](const LqasRule& a, const LqasRule& b) {
        return a.risks.goodFailed + a.risks.poorPassed < b.risks.goodFailed + b.risks.poorPassed;
    });
}

Result<LqasPlan> planLqas(const LqasStandard& standard, double mostGoodFailed, double mostPoorPassed)
{
    CRADLEPOST_TRY(checkStandard(standard));
    CRADLEPOST_TRY(checkInside(mostGoodFailed, "the risk of failing a good lot"));
    CRADLEPOST_TRY(checkInside(mostPoorPassed, "the risk of passing a poor lot"));
    const auto end = std::min(standard.lot.value_or(longestSearch), longestSearch);
    std::optional<LqasPlan> plan;
    auto last = end;
    for (std::int64_t n = 1; n <= last; ++n) {
        const auto rule = ruleWithin(standard, n, mostGoodFailed, mostPoorPassed);
        if (!plan && rule) {
            plan = LqasPlan{.rule = *rule, .safeFrom = n};
            last = std::min(end, n + safetySearch);
        } else if (plan && !rule) {
            plan->safeFrom = n + 1;
        }
    }
    if (!plan)
        return undefined("no sample of up to " + std::to_string(end) + " keeps both risks");
    return *plan;
}

}
