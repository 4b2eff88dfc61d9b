// SPDX-License-Identifier: MIT
#include "handmade.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("the map counts gaps of rounds that looked, week by week")
{
    HandMade made;
    made.round(october(0), 1, "gggg"); // in the first week, but not in the span
    made.round(october(1), 0, "gmmm");
    made.round(october(4), 0, "umnm");
    made.round(october(5), 0, "gmmm");
    const ItemWeeks map = itemWeeks(made.selection());
    REQUIRE(map.weeks.size() == 5);
    CHECK(map.weeks[0] == Date(std::chrono::year(2026) / 9 / 28));
    CHECK(map.cells[0][0] == stats::Tally{.x = 1, .n = 1});
    CHECK(map.cells[2][0] == stats::Tally{.x = 0, .n = 1});
    CHECK(map.cells[0][1] == stats::Tally{.x = 1, .n = 1});
    CHECK(map.cells[0][2] == stats::Tally{});
}
