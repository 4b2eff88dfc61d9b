// SPDX-License-Identifier: MIT
#include "core/review/span.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace std::chrono;

TEST_CASE("a month is a span without the first day of the next")
{
    CHECK(ReviewSpan::ofMonth(2026y / February) == ReviewSpan{.from = 2026y / 2 / 1, .to = 2026y / 3 / 1});
    CHECK(ReviewSpan::ofMonth(2026y / December).to == Date(2027y / 1 / 1));
    CHECK(ReviewSpan::ofMonth(2028y / February).days() == 29);
}

TEST_CASE("a week begins on its Monday, over the turn of the year too")
{
    CHECK(mondayOf(2026y / 10 / 12) == Date(2026y / 10 / 12)); // a Monday
    CHECK(mondayOf(2026y / 10 / 18) == Date(2026y / 10 / 12)); // the Sunday after it
    CHECK(mondayOf(2027y / 1 / 1) == Date(2026y / 12 / 28)); // week 53 of 2026
}

TEST_CASE("a review looks 26 weeks back from the week of its first day")
{
    CHECK(lookBack(ReviewSpan::ofMonth(2026y / October)) == Date(2026y / 3 / 30));
}

TEST_CASE("a filter takes what it names, and all where it names nothing")
{
    const ReviewFilter filter{.shifts = {"night"}, .sections = {"room"}, .items = {"light", "soap"}};
    CHECK(filter.takesShift("night"));
    CHECK_FALSE(filter.takesShift("day"));
    CHECK(filter.takesItem("room", "light"));
    CHECK_FALSE(filter.takesItem("hands", "soap"));
    CHECK_FALSE(filter.takesItem("room", "table"));
    CHECK(ReviewFilter().takesItem("any", "thing"));
    CHECK(ReviewFilter().takesShift("any"));
}
