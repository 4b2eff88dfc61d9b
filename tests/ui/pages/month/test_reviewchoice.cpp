// SPDX-License-Identifier: MIT
#include "ui/pages/month/reviewchoice.h"

#include "tests/support/qstringprint.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace std::chrono;

TEST_CASE("what was chosen comes back from the settings as it was")
{
    const ReviewChoice choice{.span = {.from = 2026y / 10 / 5, .to = 2026y / 10 / 19},
        .filter = {.shifts = {"night"}, .sections = {}, .items = {"oxytocin", "vitamin-k"}},
        .against = ReviewSpan{.from = 2026y / 9 / 1, .to = 2026y / 10 / 1}};
    CHECK(toText(choice)
        == QStringLiteral(
            "2026-10-05/2026-10-19;shifts=night;items=oxytocin,vitamin-k;against=2026-09-01/2026-10-01"));
    const auto back = choiceFromText(toText(choice));
    REQUIRE(back);
    CHECK(*back == choice);
}

TEST_CASE("a text that is no choice gives none")
{
    for (const char* text : {"", "2026-10", "2026-10-05", "2026-10-19/2026-10-05", "2026-13-01/2026-14-01",
             "2026-10-01/2026-11-01;colour=red"}) {
        CAPTURE(text);
        CHECK_FALSE(choiceFromText(QString::fromLatin1(text)));
    }
}

TEST_CASE("a month is known as one, and its neighbours are whole months")
{
    const ReviewChoice october{.span = ReviewSpan::ofMonth(2026y / October)};
    CHECK(october.isMonth());
    CHECK(october.monthBeside(-1) == ReviewSpan{.from = 2026y / 9 / 1, .to = 2026y / 10 / 1});
    CHECK(october.monthBeside(3) == ReviewSpan{.from = 2027y / 1 / 1, .to = 2027y / 2 / 1});
    CHECK_FALSE(ReviewChoice{.span = {.from = 2026y / 10 / 2, .to = 2026y / 11 / 1}}.isMonth());
}
