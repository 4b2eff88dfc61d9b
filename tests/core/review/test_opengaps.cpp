// SPDX-License-Identifier: MIT
#include "handmade.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("open gaps by age at the end of the span")
{
    HandMade made;
    constexpr double end = 31 * 24; // 1 November, 07:00
    made.gap("paper", Severity::Minor, end - 40 * 24, std::nullopt).owner = "engineer";
    made.gap("device", Severity::Major, end - 8 * 24, std::nullopt).nth = 3;
    made.gap("temperature", Severity::Major, end - 24, std::nullopt);
    made.gap("clean", Severity::Critical, end - 2, std::nullopt);
    made.gap("clean", Severity::Critical, 5, 9);
    const OpenGaps open = openGaps(made.selection());
    REQUIRE(open.gaps.size() == 4);
    CHECK(open.gaps[0].item == "paper");
    CHECK(open.gaps[0].hours == doctest::Approx(960));
    CHECK(open.gaps[0].overdue);
    CHECK(open.gaps[1].before == 2);
    CHECK_FALSE(open.gaps[3].overdue);
    CHECK(open.underDay == 1);
    CHECK(open.underWeek == 1);
    CHECK(open.underMonth == 1);
    CHECK(open.older == 1);
    CHECK(open.withoutOwner == 3);
}

TEST_CASE("a filter of items leaves the others' gaps out")
{
    HandMade made;
    made.gap("clean", Severity::Critical, 10, std::nullopt);
    made.gap("paper", Severity::Minor, 10, std::nullopt);
    made.gap("from-another-list", Severity::Minor, 10, std::nullopt);
    CHECK(openGaps(made.selection()).gaps.size() == 3);
    CHECK_FALSE(openGaps(made.selection()).gaps[2].at);
    CHECK(openGaps(made.selection({.shifts = {}, .sections = {}, .items = {"paper"}})).gaps.size() == 1);
}
