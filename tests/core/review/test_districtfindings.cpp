// SPDX-License-Identifier: MIT
#include "tests/core/review/handmadedistrict.h"

#include <algorithm>

#include <doctest/doctest.h>

using namespace cradlepost;
using doctest::Approx;

namespace {

/** Eight units alike but for what a test adds. */
DistrictHistory alike()
{
    return test::handMadeDistrict({{"Alder", 80, 90}, {"Beck", 78, 90}, {"Cairn", 79, 90}, {"Dale", 77, 90},
        {"Elm", 81, 90}, {"Fell", 80, 90}, {"Garth", 77, 90}, {"Holm", 79, 90}});
}

const DistrictFinding* found(const DistrictReview& review, DistrictFindingCode code)
{
    const auto at = std::find_if(review.findings.begin(), review.findings.end(),
        [&](const DistrictFinding& finding) { return finding.code == code; });
    return at == review.findings.end() ? nullptr : &*at;
}

}

TEST_CASE("with nothing amiss nobody is to be seen first")
{
    const DistrictReview review = reviewDistrict(alike());
    CHECK(review.visits.empty());
    CHECK(review.findings.front().code == DistrictFindingCode::NobodyFirst);
    REQUIRE(found(review, DistrictFindingCode::NotToldApart));
    CHECK(found(review, DistrictFindingCode::NotToldApart)->count == 8);
}

TEST_CASE("a unit silent for a month is named with its days, and one below the district is seen first")
{
    DistrictHistory history = alike();
    history.units[3] = test::handMadeDistrict({{"Dale", 30, 90}}).units[0];
    history.units[5].span = {};
    history.units[5].span.due = 93;
    history.units[5].span.longestSilence = 31;
    history.units[5].silentDays = 31.2;
    history.units[3].gaps[1] = {.x = 40, .n = 90};
    const DistrictReview review = reviewDistrict(history);
    REQUIRE(found(review, DistrictFindingCode::Silent));
    CHECK(found(review, DistrictFindingCode::Silent)->units == std::vector<std::size_t>{5});
    CHECK(found(review, DistrictFindingCode::Silent)->count == 31);
    REQUIRE(found(review, DistrictFindingCode::Lower));
    CHECK(found(review, DistrictFindingCode::Lower)->units == std::vector<std::size_t>{3});
    REQUIRE(review.visits.size() == 2);
    CHECK(review.visits[0].unit == 5); // four weeks of silence at three points
    CHECK(review.visits[0].points == Approx(12));
    CHECK(review.visits[1].points == Approx(6 + 3)); // below, and the suction in 40 of 90 rounds
    CHECK(review.visits[1].reasons[1].items == std::vector<std::string>{"suction"});
    // A silent unit has no share: it is no 0 % in the funnel.
    CHECK(std::none_of(review.funnel.units.begin(), review.funnel.units.end(),
        [](const UnitStanding& one) { return one.unit == 5; }));
}

TEST_CASE("an item often missing in two units is a matter of the district")
{
    DistrictHistory history = alike();
    history.units[0].gaps[0] = {.x = 30, .n = 90};
    history.units[6].gaps[0] = {.x = 28, .n = 90};
    history.units[7].gaps[0] = {.x = 5, .n = 90};
    const DistrictReview review = reviewDistrict(history);
    const DistrictFinding* often = found(review, DistrictFindingCode::OftenMissing);
    REQUIRE(often);
    CHECK(often->units == std::vector<std::size_t>{0, 6});
    CHECK(often->share.tally == stats::Tally{.x = 63, .n = 270});
}

TEST_CASE("a district without a round says so and nothing else of readiness")
{
    DistrictHistory history = test::handMadeDistrict({{"Alder", 0, 0}, {"Beck", 0, 0}});
    history.units[0].span.due = 62;
    const DistrictReview review = reviewDistrict(history);
    CHECK(review.findings.front().code == DistrictFindingCode::NothingDone);
    CHECK(review.findings.front().count == 62);
    CHECK_FALSE(found(review, DistrictFindingCode::NotToldApart));
}
