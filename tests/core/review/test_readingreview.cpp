// SPDX-License-Identifier: MIT
#include "core/review/instrumentstep.h"
#include "handmade.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("readings by hand: limits in force, XmR chart and bins")
{
    HandMade made;
    int day = 1;
    for (const double value : {26.0, 27.0, 25.5, 28.5, 27.0})
        made.round(october(day++), 0, "mmmm", {.temperature = value});
    const auto reviews = readingReviews(made.selection());
    REQUIRE(reviews.size() == 1);
    const ReadingReview& review = reviews[0];
    CHECK(review.unit == "°C");
    CHECK(review.limitSet == "26-28");
    CHECK(review.outside.tally == stats::Tally{.x = 2, .n = 5});
    CHECK(review.below == 1);
    CHECK(review.above == 1);
    CHECK(review.points[2].beyond);
    CHECK(*review.median == doctest::Approx(27));
    CHECK(review.step == Decimal{.thousandths = 500});
    REQUIRE(review.chart);
    // Mean 26.8; moving ranges 1, 1.5, 3, 1.5: mean 1.75; limits 26.8 +- 3 * 1.75 / 1.128.
    CHECK(review.chart->values.points[0].centre == doctest::Approx(26.8));
    CHECK(review.chart->values.points[0].limits->high == doctest::Approx(26.8 + 3 * 1.75 / 1.128));
    REQUIRE(review.bins.size() == 7); // 25.5 to 28.5 in halves
    CHECK(review.bins[0].low == doctest::Approx(25.5));
    CHECK(review.bins[0].count == 1);
    CHECK(review.bins[3].count == 2);
    CHECK(review.bins[6].count == 1);
}

TEST_CASE("equal readings have no chart limits, and many values still fit a page of bins")
{
    HandMade made;
    made.round(october(1), 0, "mmmm", {.temperature = 27});
    made.round(october(2), 0, "mmmm", {.temperature = 27});
    CHECK(readingReviews(made.selection())[0].why == CannotSay::NoSpread);
    HandMade wide;
    for (int i = 0; i < 31; ++i)
        wide.round(october(1 + i), 0, "mmmm", {.temperature = 20.1 + 0.5 * i});
    const auto bins = readingReviews(wide.selection())[0].bins;
    CHECK(bins.size() <= 25);
    std::int64_t counted = 0;
    for (const ReadingBin& bin : bins)
        counted += bin.count;
    CHECK(counted == 31);
}

TEST_CASE("the step of an instrument is what all readings are multiples of")
{
    const auto stepFor = [](const std::vector<std::int64_t>& values, int decimals) {
        std::vector<RoundReading> readings;
        for (const std::int64_t value : values)
            readings.push_back({.value = {.thousandths = value}});
        return stepOf(readings, decimals).thousandths;
    };
    CHECK(stepFor({26'400, 27'100}, 1) == 100);
    CHECK(stepFor({26'400, 27'200}, 1) == 200);
    CHECK(stepFor({26'500, 27'000}, 1) == 500);
    CHECK(stepFor({-5'000, 10'000}, 0) == 5'000);
    CHECK(stepFor({}, 0) == 1'000);
}
