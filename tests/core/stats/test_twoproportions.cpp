// SPDX-License-Identifier: MIT
#include "core/stats/twoproportions.h"

#include "tests/core/stats/near.h"
#include "tests/core/stats/random.h"

#include <cmath>

using namespace cradlepost;
using namespace cradlepost::stats;

TEST_CASE("the difference of two proportions meets the published table")
{
    // Newcombe RG (1998) Statistics in Medicine 17:873-890, Table II, method 10; four decimals as printed.
    const struct
    {
        Tally first, second;
        double low, high;
    } rows[] = {{{56, 70}, {48, 80}, 0.0524, 0.3339}, {{9, 10}, {3, 10}, 0.1705, 0.8090},
        {{6, 7}, {2, 7}, 0.0582, 0.8062}, {{5, 56}, {0, 29}, -0.0381, 0.1926},
        {{0, 10}, {0, 20}, -0.1611, 0.2775}, {{0, 10}, {0, 10}, -0.2775, 0.2775},
        {{10, 10}, {0, 20}, 0.6791, 1.0000}, {{10, 10}, {0, 10}, 0.6075, 1.0000}};
    for (const auto& row : rows) {
        CAPTURE(row.first.x);
        const auto d = newcombeDifference(row.first, row.second);
        REQUIRE(d);
        CHECK(isPrinted(d->interval.low, row.low, 4));
        CHECK(isPrinted(d->interval.high, row.high, 4));
    }
}

TEST_CASE("the difference of two proportions equals the reference")
{
    // Formula of method 10; equal to statsmodels 0.13.5 confint_proportions_2indep(method = "newcomb").
    const struct
    {
        std::int64_t x1, n1, x2, n2;
        double d, low, high;
    } rows[] = {
        {56, 70, 48, 80, 0.2, 0.0524314724, 0.333872654},
        {9, 10, 3, 10, 0.6, 0.1705227239, 0.8090179735},
        {6, 7, 2, 7, 0.5714285714, 0.05822792748, 0.8062496375},
        {5, 56, 0, 29, 0.08928571429, -0.0381371479, 0.1925600139},
        {0, 10, 0, 20, 0, -0.1611251581, 0.2775327999},
        {0, 10, 0, 10, 0, -0.2775327999, 0.2775327999},
        {10, 10, 0, 20, 1, 0.6790860371, 1},
        {10, 10, 0, 10, 1, 0.6075093504, 1},
        {27, 30, 22, 31, 0.1903225806, -0.01250004239, 0.3777066377},
        {1, 1, 0, 1, 1, -0.1221087207, 1},
    };
    for (const auto& row : rows) {
        CAPTURE(row.x1);
        CAPTURE(row.n2);
        const auto d = newcombeDifference({row.x1, row.n1}, {row.x2, row.n2});
        REQUIRE(d);
        CHECK(d->estimate == near(row.d));
        CHECK(d->interval.low == near(row.low));
        CHECK(d->interval.high == near(row.high));
    }
}

TEST_CASE("with no event in either group the difference reaches to the score limits")
{
    const auto d = newcombeDifference({0, 10}, {0, 20});
    // -u2 and +u1; R 4.2.2 prop.test(correct = FALSE) for 0/20 and 0/10.
    CHECK(d->interval.low == near(-0.1611251581));
    CHECK(d->interval.high == near(0.2775327999));
}

TEST_CASE("the pooled test and the exact test equal the reference")
{
    // R 4.2.2: prop.test(c(56, 48), c(70, 80), correct = FALSE) and fisher.test of the same table.
    const auto z = pooledTest({56, 70}, {48, 80});
    REQUIRE(z);
    CHECK(z->chiSquare == near(7.02341137124));
    CHECK(z->p == near(0.0080450813682));
    CHECK(z->z > 0);
    CHECK(*fisherExact({56, 70}, {48, 80}) == near(0.0125211297492));
    // Fisher RA (1935) The Design of Experiments: the lady tasting tea, 3 of 4 right, p = 0.4857 two-sided.
    CHECK(isPrinted(*fisherExact({3, 4}, {1, 4}), 0.4857, 4));
    CHECK(*fisherExact({3, 4}, {1, 4}) == near(34.0 / 70.0));
    CHECK(*fisherExact({4, 4}, {0, 4}) == near(2.0 / 70.0));
    CHECK(*fisherExact({0, 4}, {0, 9}) == 1.0);
}

TEST_CASE("comparing with an empty group or with all events alike says so")
{
    CHECK(isUndefined(newcombeDifference({0, 0}, {1, 2})));
    CHECK(isUndefined(pooledTest({1, 2}, {0, 0})));
    CHECK(isUndefined(fisherExact({0, 0}, {1, 2})));
    CHECK(isUndefined(pooledTest({0, 5}, {0, 7})));
    CHECK(isUndefined(pooledTest({5, 5}, {7, 7})));
    CHECK(isRefused(newcombeDifference({3, 2}, {1, 2})));
    CHECK(isRefused(newcombeDifference({1, 2}, {1, 2}, 1.0)));
}

TEST_CASE("swapping the groups turns the difference around and keeps the tests")
{
    Dice dice(11);
    for (int i = 0; i < 300; ++i) {
        const auto n1 = dice.whole(1, 60);
        const auto n2 = dice.whole(1, 60);
        const Tally a{dice.whole(0, n1), n1};
        const Tally b{dice.whole(0, n2), n2};
        const auto there = *newcombeDifference(a, b);
        const auto back = *newcombeDifference(b, a);
        CHECK(std::abs(there.interval.low + back.interval.high) < 1e-12);
        CHECK(there.interval.low >= -1);
        CHECK(there.interval.high <= 1);
        CHECK(there.interval.low <= there.estimate);
        CHECK(there.interval.high >= there.estimate);
        CHECK(*fisherExact(a, b) == near(*fisherExact(b, a), 1e-10));
        CHECK(*fisherExact(a, b) > 0);
        CHECK(*fisherExact(a, b) <= 1);
    }
}

TEST_CASE("the difference holds its level in simulation")
{
    Dice dice(1998);
    int covered = 0;
    constexpr int rounds = 4000;
    for (int i = 0; i < rounds; ++i) {
        const auto d = *newcombeDifference({dice.events(50, 0.8), 50}, {dice.events(40, 0.6), 40});
        covered += d.interval.low <= 0.2 && 0.2 <= d.interval.high ? 1 : 0;
    }
    CHECK(covered > rounds * 0.935);
    CHECK(covered < rounds * 0.975);
}
