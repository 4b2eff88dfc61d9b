// SPDX-License-Identifier: MIT
#include "handmade.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("gaps that opened in the span count, open ones are censored at its end")
{
    HandMade made;
    made.gap("clean", Severity::Critical, -30, 5); // carried in
    made.gap("clean", Severity::Critical, 10, 14);
    made.gap("paper", Severity::Minor, 20, 40);
    made.gap("device", Severity::Major, 24, 100).closedAsNotApplicable = true;
    made.gap("temperature", Severity::Major, 31 * 24 - 6, std::nullopt);
    const RestoreReview review = restoreReview(made.selection());
    CHECK(review.carriedIn == 1);
    CHECK(review.all.durations.size() == 4);
    CHECK(review.all.mended == 2);
    CHECK(review.all.open == 1);
    CHECK(review.bySeverity[0].durations[0].time == doctest::Approx(4));
    CHECK(review.bySeverity[1].durations[0].ended == false);
    CHECK(review.bySeverity[1].durations[1].time == doctest::Approx(6));
    // At 4 h one of four: 3/4; at 6 h one is censored; at 20 h one of two: 3/8.
    REQUIRE(review.all.curve);
    CHECK(review.all.curve->steps[1].survival == doctest::Approx(0.375));
    CHECK(*review.all.curve->median == doctest::Approx(20));
    CHECK_FALSE(review.why);
}

TEST_CASE("a published survival example comes out of gaps: remission under two treatments")
{
    // Freireich EJ et al. (1963) Blood 21:699-716, data set gehan of the R package MASS; weeks taken as
    // hours. Log-rank chi-square 16.79; medians 23 (13 to not reached) and 8 (4 to 11), R survival, log-log
    // limits.
    const std::vector<std::pair<int, bool>> treated{{6, true}, {6, true}, {6, true}, {6, false}, {7, true},
        {9, false}, {10, true}, {10, false}, {11, false}, {13, true}, {16, true}, {17, false}, {19, false},
        {20, false}, {22, true}, {23, true}, {25, false}, {32, false}, {32, false}, {34, false}, {35, false}};
    HandMade made;
    for (const auto& [hours, ended] : treated)
        made.gap("clean", Severity::Critical, 0, hours).closedAsNotApplicable = !ended;
    for (const int hours : {1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23})
        made.gap("device", Severity::Major, 0, hours);
    const RestoreReview review = restoreReview(made.selection());
    const auto& critical = review.bySeverity[0].curve;
    REQUIRE(critical);
    CHECK(*critical->median == doctest::Approx(23));
    CHECK(*critical->medianLow == doctest::Approx(13));
    CHECK_FALSE(critical->medianHigh);
    CHECK(critical->steps[6].survival == doctest::Approx(0.4481792717));
    CHECK(*review.bySeverity[1].curve->median == doctest::Approx(8));
    CHECK(*review.bySeverity[1].curve->medianHigh == doctest::Approx(11));
    REQUIRE(review.test);
    CHECK(review.test->chiSquare == doctest::Approx(16.79294099));
    CHECK(review.test->df == 1);
}

TEST_CASE("no gap and none mended are said as such")
{
    CHECK(restoreReview(HandMade().selection()).why == CannotSay::NoData);
    HandMade made;
    made.gap("clean", Severity::Critical, 10, std::nullopt);
    CHECK(restoreReview(made.selection()).why == CannotSay::TooFew);
}
