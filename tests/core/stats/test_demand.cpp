// SPDX-License-Identifier: MIT
#include "core/stats/demand.h"

#include "tests/core/stats/near.h"
#include "tests/core/stats/random.h"

#include <vector>

using namespace cradlepost;
using namespace cradlepost::stats;

TEST_CASE("the outlook of a stock under Poisson demand equals the reference")
{
    // R 4.2.2 ppois, dpois.
    const struct
    {
        double mean;
        std::int64_t k;
        double exactly, atMost, stockOut, empty, unmet;
    } rows[] = {
        {0.5, 0, 0.6065306597, 0.6065306597, 0.3934693403, 1, 0.5},
        {0.5, 2, 0.07581633246, 0.985612322, 0.01438767797, 0.09020401043, 0.01632664928},
        {2, 3, 0.1804470443, 0.8571234605, 0.1428765395, 0.3233235838, 0.2180175491},
        {3.4, 6, 0.07160440946, 0.9421467793, 0.05785322066, 0.1294576301, 0.09303661845},
        {3.4, 0, 0.03337326996, 0.03337326996, 0.96662673, 1, 3.4},
        {8, 12, 0.04812680428, 0.9362028033, 0.06379719674, 0.111924001, 0.1298256473},
        {16.1, 24, 0.01509990434, 0.9762112046, 0.02378879537, 0.03888869971, 0.05517697645},
        {40, 50, 0.01770701755, 0.9473719509, 0.05262804911, 0.07033506666, 0.182000211},
        {40, 80, 8.675455923e-09, 0.9999999917, 8.279263223e-09, 1.695471915e-08, 1.584770797e-08},
        {250, 300, 0.0002101740447, 0.9990477804, 0.0009522195864, 0.001162393631, 0.004932531846},
        {0, 0, 1, 1, 0, 1, 0},
    };
    for (const auto& row : rows) {
        CAPTURE(row.mean);
        CAPTURE(row.k);
        const auto o = outlook({.mean = row.mean, .size = {}}, row.k);
        REQUIRE(o);
        CHECK(o->exactly == near(row.exactly));
        CHECK(o->atMost == near(row.atMost));
        CHECK(o->stockOut == near(row.stockOut));
        CHECK(o->emptyShelf == near(row.empty));
        CHECK(o->unmet == near(row.unmet));
    }
}

TEST_CASE("far tails of nearly Poisson demand keep their digits")
{
    // Summed term by term with 60 decimal digits.
    const auto o = outlook({.mean = 0.001, .size = 1e5}, 3);
    REQUIRE(o);
    CHECK(o->exactly == near(1.6650507334704197e-10, 1e-12));
    CHECK(o->stockOut == near(4.1635843932721035e-14, 1e-12));
    CHECK(o->unmet == near(4.164417254501198e-14, 1e-12));
}

TEST_CASE("unmet demand stays right for very large and very spread demand")
{
    // Mean of the positive part of a normal difference: sd/sqrt(2 pi) at the mean.
    const auto large = outlook({.mean = 1e9, .size = {}}, 1'000'000'000);
    CHECK(large->unmet == near(0.3989422804 * 31622.7766, 1e-4));
    // An exponential tail of scale mean/size: what is unmet is the chance times the scale, far out.
    const Demand spread{.mean = 5e5, .size = 1.0};
    const auto far = outlook(spread, 10'000'000);
    CHECK(far->unmet == near(far->stockOut * (spread.mean + 1), 1e-6));
}

TEST_CASE("the stock for a service level equals the reference")
{
    // R 4.2.2 qpois.
    const double services[] = {0.80, 0.90, 0.95, 0.98, 0.99, 0.999};
    const struct
    {
        double mean;
        std::int64_t stock[6];
    } rows[] = {
        {0.1, 0, 0, 1, 1, 1, 2},
        {0.5, 1, 1, 2, 2, 3, 4},
        {1, 2, 2, 3, 3, 4, 5},
        {2, 3, 4, 5, 5, 6, 8},
        {3.4, 5, 6, 7, 8, 8, 10},
        {5, 7, 8, 9, 10, 11, 13},
        {8, 10, 12, 13, 14, 15, 18},
        {12, 15, 17, 18, 20, 21, 24},
        {16.1, 19, 21, 23, 25, 26, 30},
        {30, 35, 37, 39, 42, 43, 48},
        {40, 45, 48, 51, 53, 55, 61},
        {100, 108, 113, 117, 121, 124, 132},
    };
    for (const auto& row : rows) {
        for (std::size_t i = 0; i < 6; ++i)
            CHECK(*stockFor({.mean = row.mean, .size = {}}, services[i]) == row.stock[i]);
    }
}

TEST_CASE("over-dispersed demand equals the reference")
{
    // R 4.2.2 dnbinom, pnbinom, qnbinom with size and mu.
    const struct
    {
        double mean, size;
        std::int64_t k;
        double variance, exactly, stockOut, unmet;
        std::int64_t for95, for99;
    } rows[] = {
        {3.4, 1.7, 6, 10.2, 0.05742165984, 0.1472383831, 0.5014737656, 10, 14},
        {3.4, 10, 6, 4.556, 0.07154854562, 0.08515774855, 0.167813942, 7, 9},
        {8, 4, 12, 24, 0.04329435452, 0.1659458336, 0.7216360103, 17, 23},
        {8, 0.5, 12, 136, 0.01888600589, 0.2136709747, 2.922517278, 31, 54},
        {16.1, 8, 24, 48.50125, 0.02420366429, 0.1185207587, 0.6224019862, 29, 36},
        {2, 1000000, 3, 2.000004, 0.1804468639, 0.1428767199, 0.2180180905, 5, 6},
    };
    for (const auto& row : rows) {
        CAPTURE(row.size);
        const Demand demand{.mean = row.mean, .size = row.size};
        const auto o = outlook(demand, row.k);
        REQUIRE(o);
        CHECK(row.mean + row.mean * row.mean / row.size == near(row.variance));
        CHECK(o->exactly == near(row.exactly));
        CHECK(o->stockOut == near(row.stockOut));
        CHECK(o->unmet == near(row.unmet));
        CHECK(*stockFor(demand, 0.95) == row.for95);
        CHECK(*stockFor(demand, 0.99) == row.for99);
    }
}

TEST_CASE("reorder points differ by how the rate varies over the lead time")
{
    // R 4.2.2 qpois and qnbinom: daily mean 2.3, lead time 7 days, daily size 4.
    const struct
    {
        double service;
        std::int64_t poisson, drawnOnce, independent;
    } rows[] = {
        {0.8, 19, 23, 20},
        {0.9, 21, 28, 23},
        {0.95, 23, 33, 25},
        {0.98, 25, 39, 28},
        {0.99, 26, 43, 29},
        {0.999, 30, 57, 35},
    };
    const Demand poisson{.mean = 2.3, .size = {}};
    const Demand spread{.mean = 2.3, .size = 4.0};
    for (const auto& row : rows) {
        CHECK(reorderPoint(poisson, 7, LeadTimeModel::RateDrawnOnce, row.service)->level == row.poisson);
        CHECK(reorderPoint(spread, 7, LeadTimeModel::RateDrawnOnce, row.service)->level == row.drawnOnce);
        CHECK(reorderPoint(spread, 7, LeadTimeModel::IndependentDays, row.service)->level == row.independent);
    }
    const auto point = reorderPoint(poisson, 7, LeadTimeModel::RateDrawnOnce, 0.95);
    CHECK(point->expected == near(16.1));
    CHECK(point->safety == near(23 - 16.1));
    const auto idle = reorderPoint({.mean = 0, .size = {}}, 7, LeadTimeModel::IndependentDays, 0.99);
    CHECK(idle->level == 0);
    CHECK(idle->safety == 0.0);
}

TEST_CASE("a moment fit tells the spread of daily births")
{
    // Made data; formulas of Fisher (1950) and the moments of the negative binomial.
    const std::vector<std::int64_t> births = {2, 5, 3, 0, 7, 4, 1, 9, 3, 2, 6, 4, 3, 8};
    const auto fit = fitDemand(births);
    REQUIRE(fit);
    CHECK(fit->mean == near(4.071428571));
    CHECK(fit->variance == near(6.994505495));
    CHECK(*fit->size == near(5.670918367));
    CHECK(fit->ratio == near(1.717948718));
    CHECK(fit->chiSquare == near(22.33333333));
    CHECK(fit->df == 13);
    CHECK(fit->p == near(0.05040737713));
    CHECK_FALSE(fitDemand(std::vector<std::int64_t>{3, 3, 3})->size);
    CHECK(isUndefined(fitDemand(std::vector<std::int64_t>{3})));
    CHECK(isUndefined(fitDemand(std::vector<std::int64_t>{0, 0})));
    CHECK(isRefused(fitDemand(std::vector<std::int64_t>{-1, 0})));
}

TEST_CASE("demand that cannot be is refused")
{
    const Demand two{.mean = 2, .size = {}};
    CHECK(isRefused(outlook({.mean = -1, .size = {}}, 1)));
    CHECK(isRefused(outlook({.mean = none, .size = {}}, 1)));
    CHECK(isRefused(outlook({.mean = 2, .size = 0.0}, 1)));
    CHECK(isRefused(outlook(two, -1)));
    CHECK(isRefused(stockFor(two, 1)));
    CHECK(isRefused(stockFor(two, -0.1)));
    CHECK(*stockFor(two, 0) == 0);
    CHECK(isRefused(overLeadTime(two, 0, LeadTimeModel::RateDrawnOnce)));
    CHECK(isRefused(overLeadTime({.mean = 1e9, .size = {}}, 2, LeadTimeModel::RateDrawnOnce)));
    CHECK(isRefused(reorderPoint(two, -1, LeadTimeModel::RateDrawnOnce, 0.9)));
    CHECK(isRefused(reorderPoint(two, 1, LeadTimeModel::RateDrawnOnce, 1.0)));
    CHECK(outlook({.mean = 0, .size = 3.0}, 0)->stockOut == 0.0);
    CHECK(outlook({.mean = 0, .size = {}}, 0)->unmet == 0.0);
}

TEST_CASE("more stock never faces more risk, and more spread never less at high service")
{
    Dice dice(1898);
    for (int i = 0; i < 300; ++i) {
        const Demand demand{.mean = dice.share() * 30 + 0.05,
            .size = dice.chance(0.5) ? std::optional(dice.share() * 10 + 0.2) : std::nullopt};
        StockOutlook before = *outlook(demand, 0);
        CHECK(before.unmet == near(demand.mean, 1e-8));
        for (std::int64_t k = 1; k < 40; ++k) {
            const auto now = *outlook(demand, k);
            CHECK(now.stockOut <= before.stockOut);
            CHECK(now.unmet <= before.unmet);
            CHECK(now.unmet >= 0);
            // What one more piece saves is the chance that it is needed.
            CHECK(before.unmet - now.unmet == doctest::Approx(before.stockOut).epsilon(1e-6).scale(1e-9));
            before = now;
        }
        CHECK(*stockFor({.mean = demand.mean, .size = 1.0}, 0.99)
            >= *stockFor({.mean = demand.mean, .size = {}}, 0.99));
    }
}

TEST_CASE("the stated service is what simulation gives")
{
    Dice dice(365);
    int served = 0;
    constexpr int rounds = 20000;
    const auto stock = *stockFor({.mean = 6, .size = {}}, 0.95);
    for (int i = 0; i < rounds; ++i)
        served += dice.events(3000, 0.002) <= stock ? 1 : 0;
    CHECK(static_cast<double>(served) / rounds >= 0.95);
    CHECK(static_cast<double>(served) / rounds
        == doctest::Approx(outlook({.mean = 6, .size = {}}, stock)->atMost).epsilon(0.01));
}

TEST_CASE("a stock as large as can be counted is certain to last, at once")
{
    for (const std::optional<double> size : {std::optional<double>(), std::optional<double>(1.0)}) {
        const auto far = outlook({.mean = 1, .size = size}, std::int64_t{1} << 53);
        REQUIRE(far);
        CHECK(far->stockOut == 0);
        CHECK(far->unmet == 0);
    }
}
