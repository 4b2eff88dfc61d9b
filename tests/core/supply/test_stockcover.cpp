// SPDX-License-Identifier: MIT
#include "core/supply/stockcover.h"

#include "shelf.h"
#include "tests/core/stats/near.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using stats::isRefused;
using stats::isUndefined;
using stats::LeadTimeModel;
using stats::near;

namespace {

StockItem perBirth(const char* pieces, std::int64_t par = 0, std::int64_t pack = 1)
{
    return {.id = "towels",
        .name = "Towels",
        .levels = {.par = par, .minimum = 0, .emergency = 0},
        .packSize = pack,
        .perBirth = num(pieces)};
}

BirthDemand demand(
    double mean, std::optional<double> size = {}, LeadTimeModel model = LeadTimeModel::RateDrawnOnce)
{
    return {.perShift = {.mean = mean, .size = size}, .model = model};
}

}

TEST_CASE("cover is what is there over what is used")
{
    // Computed; months of stock: The Logistics Handbook, 2nd ed. 2011, sec. 3.2: 270 at 135 a month is 2.0.
    const auto cover = coverOf(270, 135 / 30.5, 3);
    REQUIRE(cover.has_value());
    CHECK(cover->months == near(2));
    CHECK(cover->days == near(61));
    CHECK(cover->shifts == near(183));
}

TEST_CASE("cover has no value without use, and is 0 when all has expired")
{
    CHECK_FALSE(coverOf(270, 0, 3).has_value());
    CHECK_FALSE(coverOf(270, 1, 0).has_value());
    CHECK(coverOf(0, 1, 3)->days == 0);
    CHECK(coverOf(-4, 1, 3)->days == 0);
}

TEST_CASE("pieces serve whole births, and births need whole pieces")
{
    CHECK(birthsServed(7, num("2")) == 3);
    CHECK(birthsServed(8, num("2")) == 4);
    CHECK(birthsServed(6, num("1.2")) == 5);
    CHECK(birthsServed(5, num("1.2")) == 4);
    CHECK(birthsServed(-5, num("1.2")) == 0);
    CHECK(piecesFor(4, num("1.2")) == 5);
    CHECK(piecesFor(5, num("1.2")) == 6);
    CHECK(piecesFor(0, num("1.2")) == 0);
    for (std::int64_t births = 0; births < 500; ++births) {
        REQUIRE(birthsServed(piecesFor(births, num("1.3")), num("1.3")) >= births);
        REQUIRE(birthsServed(piecesFor(births, num("1.3")) - 1, num("1.3")) < births + (births == 0 ? 1 : 0));
    }
}

TEST_CASE("the demand is fitted to the unit's own counts")
{
    // Made counts; computed with R: mean 4.071428571, size 5.670918367.
    const std::vector<std::int64_t> births{2, 5, 3, 0, 7, 4, 1, 9, 3, 2, 6, 4, 3, 8};
    const auto fitted = birthDemand(births);
    REQUIRE(fitted.has_value());
    CHECK(fitted->perShift.mean == near(4.071428571));
    REQUIRE(fitted->perShift.size.has_value());
    CHECK(*fitted->perShift.size == near(5.670918367));
    const std::vector<std::int64_t> even{4, 4, 5, 4};
    CHECK_FALSE(birthDemand(even).value().perShift.size.has_value());
    CHECK(isUndefined(birthDemand(std::vector<std::int64_t>{3})));
    CHECK(isUndefined(birthDemand(std::vector<std::int64_t>{0, 0, 0})));
}

TEST_CASE("the chance that stock lasts until the delivery agrees with R")
{
    // Computed with R, pnbinom(6, size = 1.7, mu = 3.4) and so on; 12 towels are enough for 6 births.
    const auto wide = untilDelivery(12, num("2"), demand(1.7, 1.7), 2);
    REQUIRE(wide.has_value());
    CHECK(wide->enoughFor == 6);
    CHECK(wide->expected == near(3.4));
    CHECK(wide->lasts == near(1 - 0.1472383831));
    CHECK(wide->unmet == near(0.5014737656));
    const auto days = untilDelivery(13, num("2"), demand(1.7, 5, LeadTimeModel::IndependentDays), 2);
    REQUIRE(days.has_value());
    CHECK(days->lasts == near(1 - 0.08515774855));
    CHECK(days->unmet == near(0.167813942));
}

TEST_CASE("stock that no birth uses has no chance to run out by births")
{
    CHECK(isUndefined(untilDelivery(12, num("0"), demand(1.7), 2)));
    CHECK(isRefused(untilDelivery(12, num("1"), demand(1.7), 0)));
    CHECK(untilDelivery(0, num("1"), demand(0), 2).value().lasts == 1);
}

TEST_CASE("the reorder point agrees with R for each service and both models")
{
    // Computed with R, qpois and qnbinom: mean 2.3 an interval, 7 intervals, size 4.
    struct Row
    {
        double service;
        std::int64_t poisson;
        std::int64_t once;
        std::int64_t independent;
    };
    const std::vector<Row> rows{{0.8, 19, 23, 20}, {0.9, 21, 28, 23}, {0.95, 23, 33, 25}, {0.98, 25, 39, 28},
        {0.99, 26, 43, 29}, {0.999, 30, 57, 35}};
    const auto point = [](const BirthDemand& births, double service) {
        return orderAdvice(perBirth("1"), 100, 0, births, 7, service).value().reorderAt;
    };
    for (const Row& row : rows) {
        CAPTURE(row.service);
        CHECK(point(demand(2.3), row.service) == row.poisson);
        CHECK(point(demand(2.3, 4.0), row.service) == row.once);
        CHECK(point(demand(2.3, 4.0, LeadTimeModel::IndependentDays), row.service) == row.independent);
    }
}

TEST_CASE("an order fills up to par in whole packs, and only when it is time")
{
    // Computed from the row above: at 0.95 the point is 23 births, 46 towels, 13.8 above the mean need
    // of 32.2.
    const StockItem towels = perBirth("2", 60, 10);
    const auto advice = [&](std::int64_t usable, std::int64_t onOrder) {
        return orderAdvice(towels, usable, onOrder, demand(2.3), 7, 0.95).value();
    };
    CHECK(advice(46, 0).reorderAt == 46);
    CHECK(advice(46, 0).safety == 14);
    CHECK(advice(47, 0).order == 0);
    CHECK(advice(46, 0).order == 20);
    CHECK(advice(5, 0).order == 60);
    CHECK(advice(5, 41).order == 20);
    CHECK(advice(5, 42).order == 0);
}

TEST_CASE("an order fills up to the reorder point where par is below it")
{
    CHECK(orderAdvice(perBirth("1", 10), 3, 0, demand(2.3), 7, 0.95).value().order == 20);
    CHECK(isUndefined(orderAdvice(perBirth("0"), 3, 0, demand(2.3), 7, 0.95)));
    CHECK(isRefused(orderAdvice(perBirth("1"), -1, 0, demand(2.3), 7, 0.95)));
    CHECK(isRefused(orderAdvice(perBirth("1"), 1, -1, demand(2.3), 7, 0.95)));
    CHECK(isRefused(orderAdvice(perBirth("1"), 1, 0, demand(2.3), 7, 1)));
}

TEST_CASE("forced ordering takes its levels from lead time, review and safety stock")
{
    // Computed by the formulas of The Logistics Handbook, 2nd ed. 2011, sec. 4.6 (from memory): 135 a month,
    // one month each, 270 there: minimum 2 and maximum 3 months, 405 pieces, order 135.
    const auto levels = forcedOrder({.lead = 1, .review = 1, .safety = 1}, 135, 270, 0);
    REQUIRE(levels.has_value());
    CHECK(levels->minimumMonths == near(2));
    CHECK(levels->maximumMonths == near(3));
    CHECK(levels->minimum == 270);
    CHECK(levels->maximum == 405);
    CHECK(levels->order == 135);
    CHECK(forcedOrder({.lead = 1, .review = 1, .safety = 1}, 135, 270, 100).value().order == 35);
    CHECK(forcedOrder({.lead = 1, .review = 1, .safety = 1}, 135, 500, 0).value().order == 0);
    CHECK(forcedOrder({.lead = 0.1, .review = 1, .safety = 0}, 10, 0, 0).value().maximum == 11);
}

TEST_CASE("forced ordering refuses what is no level")
{
    CHECK(isRefused(forcedOrder({.lead = -1, .review = 1, .safety = 1}, 135, 270, 0)));
    CHECK(isRefused(forcedOrder({.lead = 1, .review = 121, .safety = 1}, 135, 270, 0)));
    CHECK(isRefused(forcedOrder({.lead = 1, .review = 1, .safety = stats::none}, 135, 270, 0)));
    CHECK(isRefused(forcedOrder({.lead = 1, .review = 1, .safety = 1}, -1, 270, 0)));
    CHECK(isRefused(forcedOrder({.lead = 1, .review = 1, .safety = 1}, 135, -1, 0)));
    CHECK(isRefused(forcedOrder({.lead = 1, .review = 1, .safety = 1}, 135, 0, -1)));
}
