// SPDX-License-Identifier: MIT
#include "handmade.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("readiness by hand: two measures over the rounds done")
{
    HandMade made;
    made.round(october(1), 0, "mmmm"); // Ready, index 1
    made.round(october(1), 1, "mmmg"); // Ready with gaps, (1 + 1/2)/2
    made.round(october(2), 0, "gmnm"); // Not ready, (1/2 + 1)/2
    made.round(october(2), 1, "mumm"); // Ready with gaps: not checked counts as not met
    const ReadinessReview review = readinessOf(made.selection().rounds(), {});
    CHECK(review.ready.tally == stats::Tally{.x = 1, .n = 4});
    CHECK(review.readyWithGaps.tally == stats::Tally{.x = 2, .n = 4});
    CHECK(review.noCriticalGap.tally == stats::Tally{.x = 3, .n = 4});
    CHECK(review.notReady == 1);
    CHECK(*review.meanIndex == doctest::Approx((1 + 0.75 + 0.75 + 0.75) / 4));
    CHECK(*review.lowestIndex == doctest::Approx(0.75));
    CHECK(review.items == stats::Tally{.x = 4 + 3 + 2 + 3, .n = 4 + 4 + 3 + 4});
    CHECK(review.why == CannotSay::TooFew);
}

TEST_CASE("no round is no data, never 0 %")
{
    const ReadinessReview review = readinessOf(HandMade().selection().rounds(), {});
    CHECK(review.why == CannotSay::NoData);
    CHECK_FALSE(review.meanIndex);
    CHECK_FALSE(review.ready.value());
}
