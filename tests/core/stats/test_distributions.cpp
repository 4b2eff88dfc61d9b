// SPDX-License-Identifier: MIT
#include "core/stats/distributions.h"

#include "core/stats/linear.h"
#include "tests/core/stats/near.h"
#include "tests/core/stats/random.h"

#include <cmath>

using namespace cradlepost::stats;

TEST_CASE("normal quantiles and tails have their known digits")
{
    // Abramowitz M, Stegun IA (1964) Handbook of Mathematical Functions, tables 26.1 and 26.5.
    CHECK(normalWidth(0.95) == near(1.959963984540054, 1e-14));
    CHECK(normalWidth(0.99) == near(2.575829303548901, 1e-14));
    CHECK(normalWidth(0.9) == near(1.644853626951472, 1e-14));
    CHECK(normalWidth(0.998) == near(3.090232306167813, 1e-14));
    CHECK(normalTwoSided(3) == near(0.002699796063, 1e-9));
    CHECK(normalCdf(-1.5) == near(normalUpper(1.5), 1e-15));
    CHECK(normalUpper(20) == near(2.753624118606233e-89, 1e-12));
}

TEST_CASE("a quantile of counts undoes the distribution")
{
    Dice dice(5);
    for (int i = 0; i < 2000; ++i) {
        const Binomial b{.n = dice.whole(1, 300), .p = 0.02 + 0.96 * dice.share()};
        const auto k = dice.whole(0, b.n);
        if (const double reached = b.atMost(k); reached > 1e-12 && reached < 1 - 1e-9)
            CHECK(b.quantile(reached) == k);
        const Poisson p{.mean = 0.1 + 200 * dice.share()};
        const auto q = p.quantile(dice.share());
        CHECK(q >= 0);
        CHECK(p.atMost(q) + p.moreThan(q) == near(1, 1e-12));
        const double service = dice.share() * 0.998 + 0.001;
        const NegativeBinomial nb{.mean = 0.1 + 50 * dice.share(), .size = 0.2 + 20 * dice.share()};
        const auto stock = nb.quantile(service);
        CHECK(nb.atMost(stock) >= service * (1 - 1e-12));
        CHECK((stock == 0 || nb.atMost(stock - 1) < service));
    }
}

TEST_CASE("a crossing found step by step is the quantile with its tail")
{
    Dice dice(2005);
    for (int i = 0; i < 2000; ++i) {
        const Binomial b{.n = dice.whole(1, 900), .p = 0.001 + 0.998 * dice.share()};
        const double tail = 0.0005 + 0.4 * dice.share();
        const double z = normalQuantile(tail);
        const auto low = b.crossing(tail, z, false);
        CHECK(low.k == b.quantile(tail));
        CHECK(low.excess == near(b.atMost(low.k) - tail, 1e-11));
        CHECK(low.pmf == near(b.pmf(low.k), 1e-12));
        const auto high = b.crossing(tail, -z, true);
        CHECK(high.k == b.quantile(1 - tail));
        CHECK(b.moreThan(high.k) <= tail * (1 + 1e-12));
        CHECK(high.pmf == near(b.pmf(high.k), 1e-12));
    }
}

TEST_CASE("degenerate distributions stay whole")
{
    const Binomial none0{.n = 0, .p = 0.3};
    CHECK(none0.pmf(0) == near(1));
    CHECK(none0.atMost(0) == 1);
    CHECK(none0.quantile(0.5) == 0);
    const Binomial never{.n = 5, .p = 0};
    CHECK(never.pmf(0) == 1);
    CHECK(never.pmf(1) == 0);
    CHECK(never.moreThan(0) == 0);
    CHECK(never.quantile(1) == 0);
    const Binomial always{.n = 5, .p = 1};
    CHECK(always.pmf(5) == 1);
    CHECK(always.atMost(4) == 0);
    CHECK(always.moreThan(4) == 1);
    CHECK(always.quantile(0.5) == 5);
    CHECK(always.pmf(-1) == 0);
    CHECK(always.atMost(-1) == 0);
    CHECK(always.moreThan(-1) == 1);
    const NegativeBinomial nothing{.mean = 0, .size = 2};
    CHECK(nothing.pmf(0) == 1);
    CHECK(nothing.pmf(3) == 0);
    CHECK(nothing.atMost(0) == 1);
    CHECK(nothing.moreThan(-1) == 1);
    CHECK(nothing.moreThan(0) == 0);
    const Hypergeometric all{.lot = 30, .right = 24, .sample = 30};
    CHECK(all.pmf(24) == 1);
    CHECK(all.atMost(23) == 0);
    CHECK(all.moreThan(24) == 0);
    CHECK(all.pmf(25) == 0);
}

TEST_CASE("chances of a distribution sum to one")
{
    const Hypergeometric h{.lot = 50, .right = 21, .sample = 12};
    double sum = 0;
    for (auto k = h.least(); k <= h.most(); ++k) {
        sum += h.pmf(k);
        CHECK(h.atMost(k) == near(sum, 1e-12));
        CHECK(h.atMost(k) + h.moreThan(k) == near(1, 1e-13));
    }
    CHECK(sum == near(1, 1e-13));
}

TEST_CASE("linear equations are solved and a singular system is seen")
{
    Matrix a(2);
    a.at(0, 1) = 2;
    a.at(1, 0) = 4;
    const auto x = solve(a, {6, 8});
    REQUIRE(x);
    CHECK((*x)[0] == near(2));
    CHECK((*x)[1] == near(3));
    Matrix flat(2);
    flat.at(0, 0) = flat.at(0, 1) = flat.at(1, 0) = flat.at(1, 1) = 1;
    CHECK_FALSE(solve(flat, {1, 2}));
}
