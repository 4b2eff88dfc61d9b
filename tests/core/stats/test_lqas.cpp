// SPDX-License-Identifier: MIT
#include "core/stats/lqas.h"

#include "tests/core/stats/near.h"
#include "tests/core/stats/random.h"

#include <algorithm>

using namespace cradlepost;
using namespace cradlepost::stats;

TEST_CASE("the risks of a rule meet the published table")
{
    // Table 1 of the review PMC3013262, after Grant EL, Leavenworth RS (1988) Statistical Quality Control: 80
    // % against 50 %, failures allowed. (Its row n = 8 prints a consumer's risk that the exact binomial does
    // not give.)
    const LqasStandard standard{.good = 0.8, .poor = 0.5, .lot = {}};
    const struct
    {
        std::int64_t n, allowed;
        double alpha, beta;
    } printed[] = {{19, 6, 0.07, 0.08}, {19, 5, 0.16, 0.03}, {19, 7, 0.02, 0.18}, {12, 4, 0.07, 0.19},
        {14, 4, 0.13, 0.09}, {28, 9, 0.04, 0.04}};
    for (const auto& row : printed) {
        const auto risks = lqasRisks(standard, row.n, row.n - row.allowed);
        CHECK(isPrinted(risks->goodFailed, row.alpha, 2));
        CHECK(isPrinted(risks->poorPassed, row.beta, 2));
    }
    // R 4.2.2 pbinom.
    const struct
    {
        std::int64_t n, allowed, d;
        double alpha, beta, sum;
    } rows[] = {
        {8, 2, 6, 0.20308224, 0.14453125, 0.34761349},
        {12, 4, 8, 0.07255549952, 0.1938476562, 0.2664031558},
        {14, 4, 10, 0.1298396258, 0.08978271484, 0.2196223407},
        {19, 5, 14, 0.1630623042, 0.03178405762, 0.1948463619},
        {19, 6, 13, 0.0676000659, 0.08353424072, 0.1511343066},
        {19, 7, 12, 0.02327831238, 0.1796417236, 0.202920036},
        {28, 9, 19, 0.03907073197, 0.04357927665, 0.08265000862},
    };
    for (const auto& row : rows) {
        CAPTURE(row.n);
        CHECK(row.d == row.n - row.allowed);
        const auto risks = lqasRisks(standard, row.n, row.d);
        CHECK(risks->goodFailed == near(row.alpha));
        CHECK(risks->poorPassed == near(row.beta));
        CHECK(risks->goodFailed + risks->poorPassed == near(row.sum));
    }
}

TEST_CASE("decision numbers for a sample of 19 are those of the usual table")
{
    // 80 % against 50 % gives 13, the entry that is usually printed; risks by R 4.2.2 pbinom.
    const struct
    {
        double good, poor;
        std::vector<std::int64_t> allowed;
        std::int64_t best;
        double alpha, beta;
    } rows[] = {
        {0.4, 0.1, {5}, 5, 0.06961370808, 0.035194155},
        {0.45, 0.15, {6}, 6, 0.07771406798, 0.05369611219},
        {0.5, 0.2, {7}, 7, 0.08353424072, 0.0676000659},
        {0.55, 0.25, {8}, 8, 0.08712644662, 0.07745718124},
        {0.6, 0.3, {9}, 9, 0.08847406264, 0.08391515838},
        {0.65, 0.35, {10}, 10, 0.08747360037, 0.08747360037},
        {0.7, 0.4, {11}, 11, 0.08391515838, 0.08847406264},
        {0.75, 0.45, {12}, 12, 0.07745718124, 0.08712644662},
        {0.8, 0.5, {13}, 13, 0.0676000659, 0.08353424072},
        {0.85, 0.55, {14}, 14, 0.05369611219, 0.07771406798},
        {0.9, 0.6, {15}, 15, 0.035194155, 0.06961370808},
        {0.95, 0.65, {16, 17}, 16, 0.01323600888, 0.05913979464},
    };
    for (const auto& row : rows) {
        CAPTURE(row.good);
        const LqasStandard standard{.good = row.good, .poor = row.poor, .lot = {}};
        const auto best = bestLqasRule(standard, 19);
        REQUIRE(best);
        CHECK(best->d == row.best);
        CHECK(best->risks.goodFailed == near(row.alpha));
        CHECK(best->risks.poorPassed == near(row.beta));
        std::vector<std::int64_t> within;
        const auto rules = lqasRules(standard, 19);
        for (const auto& rule : *rules) {
            if (rule.risks.goodFailed <= 0.1 && rule.risks.poorPassed <= 0.1)
                within.push_back(rule.d);
        }
        CHECK(within == row.allowed);
    }
}

TEST_CASE("a small lot has smaller risks than an endless one")
{
    // R 4.2.2 phyper and pbinom.
    const struct
    {
        std::int64_t lot, n, d;
        double good, poor;
        std::int64_t rightGood, rightPoor;
        double alpha, beta, alphaEndless, betaEndless;
    } rows[] = {
        {50, 19, 13, 0.8, 0.5, 40, 25, 0.02575823801, 0.0396034453, 0.0676000659, 0.08353424072},
        {100, 19, 13, 0.8, 0.5, 80, 50, 0.04771649278, 0.06236829602, 0.0676000659, 0.08353424072},
        {1000, 19, 13, 0.8, 0.5, 800, 500, 0.06572574066, 0.08150589992, 0.0676000659, 0.08353424072},
        {40, 10, 9, 0.95, 0.7, 38, 28, 0.05769230769, 0.1132598568, 0.0861383559, 0.1493083459},
        {30, 30, 24, 0.8, 0.5, 24, 15, 0, 0, 0.3930300803, 0.0007154531777},
    };
    for (const auto& row : rows) {
        CAPTURE(row.lot);
        const auto finite = lqasRisks({.good = row.good, .poor = row.poor, .lot = row.lot}, row.n, row.d);
        const auto endless = lqasRisks({.good = row.good, .poor = row.poor, .lot = {}}, row.n, row.d);
        CHECK(finite->goodFailed == near(row.alpha));
        CHECK(finite->poorPassed == near(row.beta));
        CHECK(endless->goodFailed == near(row.alphaEndless));
        CHECK(endless->poorPassed == near(row.betaEndless));
    }
}

TEST_CASE("the planner finds the smallest sample within both risks")
{
    // Exhaustive search in R 4.2.2.
    const struct
    {
        double good, poor, alphaMost, betaMost;
        std::int64_t lot, n, d;
        double alpha, beta;
    } rows[] = {
        {0.8, 0.5, 0.1, 0.1, 0, 19, 13, 0.0676000659, 0.08353424072},
        {0.9, 0.6, 0.1, 0.1, 0, 15, 12, 0.05555563001, 0.0905019024},
        {0.95, 0.8, 0.1, 0.1, 0, 32, 29, 0.07380549164, 0.09309309095},
        {0.95, 0.85, 0.05, 0.1, 0, 77, 70, 0.03847724557, 0.09253378151},
        {0.9, 0.75, 0.05, 0.05, 0, 70, 59, 0.04406407551, 0.0439418672},
        {0.8, 0.5, 0.1, 0.1, 50, 13, 9, 0.06702990813, 0.09816310275},
        {0.9, 0.7, 0.1, 0.1, 60, 19, 16, 0.07355006186, 0.08883428009},
        {0.95, 0.8, 0.05, 0.1, 100, 29, 26, 0.0239757665, 0.09926312183},
    };
    for (const auto& row : rows) {
        CAPTURE(row.n);
        LqasStandard standard{.good = row.good, .poor = row.poor, .lot = {}};
        if (row.lot > 0)
            standard.lot = row.lot;
        const auto plan = planLqas(standard, row.alphaMost, row.betaMost);
        REQUIRE(plan);
        CHECK(plan->rule.n == row.n);
        CHECK(plan->rule.d == row.d);
        CHECK(plan->rule.risks.goodFailed == near(row.alpha));
        CHECK(plan->rule.risks.poorPassed == near(row.beta));
        CHECK(plan->safeFrom >= plan->rule.n);
    }
}

TEST_CASE("a larger sample may fail where a smaller one passes, and the plan says from where on it is safe")
{
    const LqasStandard standard{.good = 0.8, .poor = 0.5, .lot = {}};
    const auto plan = planLqas(standard, 0.1, 0.1);
    const auto keeps = [&](std::int64_t n) {
        const auto rules = *lqasRules(standard, n);
        return std::any_of(rules.begin(), rules.end(),
            [](const LqasRule& r) { return r.risks.goodFailed <= 0.1 && r.risks.poorPassed <= 0.1; });
    };
    for (std::int64_t n = 1; n < plan->rule.n; ++n)
        CHECK_FALSE(keeps(n));
    CHECK(keeps(plan->rule.n));
    if (plan->safeFrom > plan->rule.n)
        CHECK_FALSE(keeps(plan->safeFrom - 1));
    for (std::int64_t n = plan->safeFrom; n < plan->safeFrom + 40; ++n)
        CHECK(keeps(n));
}

TEST_CASE("rules at the ends always pass and always fail")
{
    const LqasStandard standard;
    CHECK(lqasRisks(standard, 10, 0)->goodFailed == 0.0);
    CHECK(lqasRisks(standard, 10, 0)->poorPassed == 1.0);
    CHECK(lqasRisks(standard, 10, 11)->goodFailed == 1.0);
    CHECK(lqasRisks(standard, 10, 11)->poorPassed == 0.0);
}

TEST_CASE("sampling that makes no sense is refused")
{
    CHECK(isRefused(lqasRisks({.good = 0.5, .poor = 0.5, .lot = {}}, 10, 5)));
    CHECK(isRefused(lqasRisks({.good = 1.2, .poor = 0.5, .lot = {}}, 10, 5)));
    CHECK(isRefused(lqasRisks({.good = none, .poor = 0.5, .lot = {}}, 10, 5)));
    CHECK(isRefused(lqasRisks({}, 0, 0)));
    CHECK(isRefused(lqasRisks({}, 10, 12)));
    CHECK(isRefused(lqasRisks({}, 10, -1)));
    CHECK(isRefused(lqasRisks({.good = 0.8, .poor = 0.5, .lot = 9}, 10, 5)));
    CHECK(isRefused(lqasRisks({.good = 0.8, .poor = 0.75, .lot = 3}, 2, 1)));
    CHECK(isRefused(lqasRisks({.good = 0.8, .poor = 0.5, .lot = 0}, 1, 1)));
    CHECK(isRefused(lqasRules({}, 10001)));
    CHECK(isRefused(bestLqasRule({}, 0)));
    CHECK(isRefused(planLqas({}, 0, 0.1)));
    CHECK(isRefused(planLqas({}, 0.1, 1)));
    CHECK(isUndefined(planLqas({.good = 0.51, .poor = 0.505, .lot = {}}, 0.01, 0.01)));
}

TEST_CASE("a stricter rule fails more good lots and passes fewer poor ones")
{
    Dice dice(1929);
    for (int i = 0; i < 100; ++i) {
        const double poor = 0.1 + 0.4 * dice.share();
        LqasStandard standard{.good = poor + 0.3, .poor = poor, .lot = {}};
        if (dice.chance(0.5))
            standard.lot = dice.whole(60, 500);
        const auto rules = *lqasRules(standard, dice.whole(2, 50));
        for (std::size_t d = 1; d < rules.size(); ++d) {
            CHECK(rules[d].risks.goodFailed >= rules[d - 1].risks.goodFailed);
            CHECK(rules[d].risks.poorPassed <= rules[d - 1].risks.poorPassed);
        }
    }
}
