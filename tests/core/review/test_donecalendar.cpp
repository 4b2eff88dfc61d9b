// SPDX-License-Identifier: MIT
#include "handmade.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("the calendar tells in time, late, paper and missing apart")
{
    HandMade made;
    made.round(october(1), 0, "mmmm", {.after = 359});
    made.round(october(1), 1, "mmmm", {.after = 360, .actor = "CD"}); // half of twelve hours: late
    made.round(october(2), 0, "gmmm", {.after = 700, .fromPaper = true, .amended = 2});
    const DoneCalendar calendar = doneCalendar(made.selection());
    REQUIRE(calendar.cells.size() == 62);
    CHECK(calendar.cells[0].state == DoneState::InTime);
    CHECK(calendar.cells[1].state == DoneState::Late);
    CHECK(calendar.cells[2].state == DoneState::Paper);
    CHECK(calendar.cells[2].readiness == Readiness::NotReady);
    CHECK(calendar.cells[2].amended == 2);
    CHECK(calendar.cells[3].state == DoneState::Missing);
    CHECK_FALSE(calendar.cells[3].readiness);
    CHECK(calendar.done.tally == stats::Tally{.x = 3, .n = 62});
    CHECK(calendar.inTime.tally == stats::Tally{.x = 1, .n = 2});
    CHECK(calendar.missing == 59);
    CHECK(calendar.amended == 1);
    CHECK(calendar.hands == 2);
}

TEST_CASE("a shift that is on is not missing yet")
{
    HandMade made;
    made.history.now = made.history.due.back().begins + std::chrono::hours(1);
    const DoneCalendar calendar = doneCalendar(made.selection());
    CHECK(calendar.cells.back().state == DoneState::Running);
    CHECK(calendar.missing == 61);
    CHECK(calendar.done.tally == stats::Tally{.x = 0, .n = 61});
}

TEST_CASE("a round recorded long after it was finished is late")
{
    HandMade made;
    made.round(october(1), 0, "mmmm").recorded += std::chrono::hours(7);
    CHECK(doneCalendar(made.selection()).late == 1);
}
