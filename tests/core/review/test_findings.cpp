// SPDX-License-Identifier: MIT
#include "handmade.h"

#include <algorithm>
#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

const MonthFinding* found(const MonthReview& review, MonthFindingCode code)
{
    const auto at = std::find_if(review.findings.begin(), review.findings.end(),
        [&](const MonthFinding& finding) { return finding.code == code; });
    return at == review.findings.end() ? nullptr : &*at;
}

}

TEST_CASE("nothing done, and too little to say, are answers")
{
    HandMade made;
    CHECK(made.review().findings.front().code == MonthFindingCode::NothingDone);
    for (int day = 1; day <= 9; ++day)
        made.round(october(day), 0, "gmmm");
    const MonthReview review = made.review();
    CHECK(review.findings.front().code == MonthFindingCode::TooLittle);
    CHECK(review.findings.front().ready.tally == stats::Tally{.x = 0, .n = 9});
    CHECK(found(review, MonthFindingCode::LostMost) == nullptr);
    CHECK(found(review, MonthFindingCode::Incomplete) != nullptr);
}

TEST_CASE("the first sentence says how ready the room was, then what was lost most")
{
    HandMade made;
    for (int day = 1; day <= 31; ++day) {
        made.round(october(day), 0, day % 2 == 0 ? "gmmm" : "mmmm");
        made.round(october(day), 1, "mmmm");
    }
    const MonthReview review = made.review();
    CHECK(review.findings[0].code == MonthFindingCode::HowReady);
    CHECK(review.findings[0].ready.tally == stats::Tally{.x = 47, .n = 62});
    CHECK(review.findings[0].done.tally == stats::Tally{.x = 62, .n = 62});
    CHECK(review.findings[1].code == MonthFindingCode::LostMost);
    CHECK(review.findings[1].items == std::vector<std::string>{"clean"});
    CHECK(*review.findings[1].value == doctest::Approx(1));
    CHECK(found(review, MonthFindingCode::Incomplete) == nullptr);
    // No look-back: no limits, so nothing is said of change, not even that there was none.
    CHECK(found(review, MonthFindingCode::NoChange) == nullptr);
    REQUIRE(found(review, MonthFindingCode::ShiftDiffers) != nullptr);
    CHECK(found(review, MonthFindingCode::ShiftDiffers)->group == "day");
}

TEST_CASE("late rounds are a question, an open critical gap a fact")
{
    HandMade made;
    for (int day = 1; day <= 31; ++day)
        made.round(october(day), 0, "mmmm", {.after = day <= 20 ? 500 : 30});
    made.gap("clean", Severity::Critical, 700, std::nullopt);
    const MonthReview review = made.review();
    REQUIRE(found(review, MonthFindingCode::AskLate) != nullptr);
    CHECK(found(review, MonthFindingCode::AskLate)->isQuestion);
    CHECK(found(review, MonthFindingCode::AskLate)->share.tally == stats::Tally{.x = 20, .n = 31});
    REQUIRE(found(review, MonthFindingCode::CriticalOpen) != nullptr);
    CHECK(*found(review, MonthFindingCode::CriticalOpen)->hours == doctest::Approx(44));
}
