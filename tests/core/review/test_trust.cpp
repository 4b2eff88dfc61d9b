// SPDX-License-Identifier: MIT
#include "handmade.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("late records and late amendments are counted, paper apart")
{
    HandMade made;
    made.round(october(1), 0, "mmmm").recorded += std::chrono::hours(13);
    RoundFact& amended = made.round(october(2), 0, "mumm", {.amended = 1});
    amended.amendedAt = amended.finished + std::chrono::hours(48);
    RoundFact& paper = made.round(october(3), 0, "mmmm", {.fromPaper = true});
    paper.recorded += std::chrono::hours(100);
    const Selection selection = made.selection();
    const TrustReview trust = trustReview(selection, doneCalendar(selection));
    CHECK(trust.recordedLate == 1);
    CHECK(trust.amendedLate == 1);
    CHECK(trust.amended == 1);
    CHECK(trust.paper == 1);
    CHECK(trust.itemsLookedAt.tally == stats::Tally{.x = 11, .n = 12});
    CHECK(trust.complete.tally == stats::Tally{.x = 3, .n = 62});
    CHECK(trust.inTime.tally == stats::Tally{.x = 1, .n = 2});
}
