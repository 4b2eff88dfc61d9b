// SPDX-License-Identifier: MIT
// Indirect standardisation with its exact limits (Breslow and Day) meets published figures in
// tests/core/stats/test_standardise.cpp.
#include "tests/core/review/handmadedistrict.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using doctest::Approx;

TEST_CASE("a unit is compared with the others of its own level only")
{
    const auto history = test::handMadeDistrict({{"Alder", 80, 90, "district"}, {"Beck", 40, 90, "district"},
        {"Cairn", 45, 90, "primary"}, {"Dale", 0, 0, "primary"}});
    const auto levels = unitsInLevels(history, {});
    REQUIRE(levels.size() == 4);
    CHECK(levels[0].others.tally == stats::Tally{.x = 40, .n = 90});
    CHECK(levels[0].band == UnitBand::Higher);
    CHECK(levels[1].band == UnitBand::Lower);
    CHECK(levels[2].why == CannotSay::NotApplicable);
    CHECK(levels[3].why == CannotSay::NoData);
}

TEST_CASE("a unit that reports only its quiet shifts gains nothing by it")
{
    auto history = test::handMadeDistrict({{"Alder", 0, 0}, {"Beck", 0, 0}});
    history.units[0].shifts = {{.shift = "day", .noCriticalGap = {.x = 90, .n = 100}},
        {.shift = "night", .noCriticalGap = {.x = 70, .n = 100}}};
    history.units[1].shifts = {{.shift = "day", .noCriticalGap = {.x = 90, .n = 100}}};
    const auto mixes = unitShiftMixes(history);
    REQUIRE(mixes.size() == 2);
    // Days: 20 gaps in 200; nights: 30 in 100. Beck expects 10 in its 100 days and has 10.
    CHECK(mixes[1].observed == 10);
    CHECK(mixes[1].ratio->expected == Approx(10));
    CHECK(mixes[1].ratio->ratio == Approx(1));
    CHECK(mixes[0].ratio->expected == Approx(40));
}
