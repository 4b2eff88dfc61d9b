// SPDX-License-Identifier: MIT
#include "tests/core/review/handmadedistrict.h"

#include <doctest/doctest.h>

using namespace cradlepost;

TEST_CASE("a unit is late or incomplete only when its limit says so, and silent units are not called "
          "incomplete too")
{
    DistrictHistory history = test::handMadeDistrict({{"Alder", 80, 90}, {"Beck", 35, 40}, {"Cairn", 9, 10}});
    history.units[0].span.late = 30; // 33 % of 90: lower limit 24 %
    history.units[1].span.due = 90; // 44 % done: upper limit 55 %
    history.units[2].span.due = 90;
    history.units[2].span.longestSilence = 20;
    const auto reporting = unitReporting(history, {});
    CHECK(reporting[0].isLate);
    CHECK_FALSE(reporting[0].isIncomplete);
    CHECK(reporting[1].isIncomplete);
    CHECK_FALSE(reporting[1].isSilent);
    CHECK(reporting[2].isSilent);
    CHECK_FALSE(reporting[2].isIncomplete);
    CHECK(reporting[2].done.tally == stats::Tally{.x = 10, .n = 90});
}
