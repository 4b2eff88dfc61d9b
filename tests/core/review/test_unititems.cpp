// SPDX-License-Identifier: MIT
#include "tests/core/review/handmadedistrict.h"

#include <doctest/doctest.h>

using namespace cradlepost;

TEST_CASE("the item map holds what is missing anywhere; a unit that did not look is no 0 %")
{
    DistrictHistory history = test::handMadeDistrict({{"Alder", 80, 90}, {"Beck", 80, 90}});
    history.units[0].gaps[1] = {.x = 30, .n = 90}; // lower limit 24 %
    history.units[1].gaps[1] = {.x = 3, .n = 10}; // lower limit 11 %
    history.units[0].gaps[2] = {.x = 0, .n = 90};
    const UnitItems map = unitItems(history, {});
    REQUIRE(map.items.size() == 1);
    CHECK(map.items[0].item == 1);
    CHECK(map.items[0].gaps == stats::Tally{.x = 33, .n = 100});
    CHECK(map.items[0].oftenIn == std::vector<std::size_t>{0});
    CHECK(map.cells[0][1] == stats::Tally{.x = 3, .n = 10});
}
