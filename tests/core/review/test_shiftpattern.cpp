// SPDX-License-Identifier: MIT
#include "handmade.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("days and nights by hand, with the pooled test between them")
{
    HandMade made;
    for (int day = 1; day <= 20; ++day) {
        made.round(october(day), 0, day % 4 == 0 ? "mmmg" : "mmmm"); // 75 of 80 items
        made.round(october(day), 1, day % 2 == 0 ? "mgmg" : "mgmm"); // 50 of 80
    }
    const ShiftPatternReview review = byShift(made.selection());
    REQUIRE(review.groups.size() == 2);
    CHECK(review.groups[0].items == stats::Tally{.x = 75, .n = 80});
    CHECK(review.groups[1].items == stats::Tally{.x = 50, .n = 80});
    CHECK(review.groups[0].ready.tally == stats::Tally{.x = 15, .n = 20});
    CHECK(review.groups[1].noCriticalGap.tally == stats::Tally{.x = 20, .n = 20});
    CHECK(review.groups[0].due == 31);
    REQUIRE(review.test);
    // Pooled share 125/160: z^2 = (0.9375 - 0.625)^2 / (0.78125 * 0.21875 * 2/80) = 22.857142857.
    CHECK(review.test->chiSquare == doctest::Approx(22.857142857));
    CHECK(review.test->df == 1);
    CHECK(review.test->dispersion == 1); // rounds of a group are more alike than chance
    CHECK(review.test->worst == 1);
    CHECK(review.test->p
        == doctest::Approx(1.745e-6).epsilon(0.001)); // R: pchisq(22.857142857, 1, lower = FALSE)
    CHECK(review.test->worstP == doctest::Approx(2 * review.test->p));
    CHECK(review.test->differs);
}

TEST_CASE("one shift alone, or all the same, cannot be tested")
{
    HandMade made;
    for (int day = 1; day <= 20; ++day)
        made.round(october(day), 0, "mmmm");
    CHECK(byShift(made.selection()).why == CannotSay::TooFew);
    for (int day = 21; day <= 30; ++day)
        made.round(october(day), 1, "mmmm");
    CHECK(byShift(made.selection()).why == CannotSay::NoSpread);
}

TEST_CASE("weekdays are those of the shift's date")
{
    HandMade made;
    for (int day = 1; day <= 28; ++day)
        made.round(october(day), 0, day % 7 == 4 ? "mggg" : day % 2 == 0 ? "mmmg" : "mmmm"); // Sundays
    const ShiftPatternReview review = byWeekday(made.selection());
    REQUIRE(review.groups.size() == 7);
    CHECK(review.groups[6].weekday == 7);
    CHECK(review.groups[6].items == stats::Tally{.x = 4, .n = 16});
    CHECK(review.why == CannotSay::TooFew); // four rounds each
}
