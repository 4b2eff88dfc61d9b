// SPDX-License-Identifier: MIT
#include "larkmere.h"

#include "core/review/district.h"
#include "core/review/month.h"
#include "core/store/districthistory.h"
#include "core/store/unithistory.h"

#include <algorithm>
#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::demo;
using namespace std::chrono;

namespace {

DistrictReview reviewOf(Date month)
{
    const auto history = districtHistory(
        Larkmere::whole().store(), ReviewSpan::ofMonth(month.year() / month.month()), writtenAt);
    REQUIRE(history);
    return reviewDistrict(*history);
}

std::string nameOf(const DistrictReview& review, std::size_t unit) { return review.units[unit].id; }

bool tellsOf(const DistrictReview& review, DistrictFindingCode code, const std::string& unit)
{
    return std::any_of(review.findings.begin(), review.findings.end(), [&](const DistrictFinding& finding) {
        return finding.code == code
            && std::any_of(finding.units.begin(), finding.units.end(),
                [&](std::size_t one) { return nameOf(review, one) == unit; });
    });
}

}

TEST_CASE("in October Penny Weir is to be seen first and is clearly lower; a small unit is not told apart")
{
    const DistrictReview review = reviewOf(2026y / 10 / 1);
    CHECK(review.findings.front().code == DistrictFindingCode::SeeFirst);
    CHECK(nameOf(review, review.visits.front().unit) == pennyWeir);
    CHECK(tellsOf(review, DistrictFindingCode::Lower, pennyWeir));
    CHECK(tellsOf(review, DistrictFindingCode::Late, marlGate));
    CHECK_FALSE(tellsOf(review, DistrictFindingCode::Lower, ashLock));
}

TEST_CASE("Ash Lock is too small to say in the months with few rounds, and only in those")
{
    int small = 0;
    for (const unsigned month : {6U, 7U, 8U, 9U}) {
        const DistrictReview review = reviewOf(year_month_day {2026y, std::chrono::month {month}, day {1}});
        const auto unit = std::find_if(review.reporting.begin(), review.reporting.end(),
            [&](const UnitReporting& one) { return nameOf(review, one.unit) == ashLock; });
        const bool few = unit->done.tally.x > 0 && unit->done.tally.x < 20;
        CHECK(tellsOf(review, DistrictFindingCode::TooFew, ashLock) == few);
        small += few ? 1 : 0;
    }
    CHECK(small > 0);
}

TEST_CASE("Ostrey's silent month is named, with a month's days")
{
    const DistrictReview review = reviewOf(Larkmere::whole().stories().silent.from);
    CHECK(tellsOf(review, DistrictFindingCode::Silent, ostrey));
    const auto silent = std::find_if(review.reporting.begin(), review.reporting.end(),
        [&](const UnitReporting& one) { return nameOf(review, one.unit) == ostrey; });
    CHECK(silent->done.tally.x == 0);
    CHECK(silent->longestSilence >= 30);
}

TEST_CASE("Tarn Ferry's copied month raises questions about its entries")
{
    const DistrictReview review = reviewOf(Larkmere::whole().stories().copied.from);
    CHECK(tellsOf(review, DistrictFindingCode::AskEntries, tarnFerry));
    CHECK_FALSE(tellsOf(review, DistrictFindingCode::AskEntries, sorrelHill));
}

TEST_CASE("a unit's figures among the others are those of its own month")
{
    const ReviewSpan october = ReviewSpan::ofMonth(2026y / 10);
    const DistrictReview review = reviewOf(october.from);
    for (const DistrictUnit& unit : review.units) {
        const auto history = unitHistory(Larkmere::whole().store(), unit.id, october, writtenAt);
        REQUIRE(history);
        const auto month = reviewMonth(*history, october);
        REQUIRE(month);
        CHECK(unit.span.noCriticalGap() == month->readiness.noCriticalGap.tally);
        CHECK(unit.span.items == month->readiness.items);
        CHECK(stats::Tally{.x = unit.span.done, .n = unit.span.due} == month->calendar.done.tally);
        CHECK(unit.span.late == month->calendar.late);
        CHECK(unit.open.size() == month->openGaps.gaps.size());
        CHECK(unit.months.back().noCriticalGap == unit.span.noCriticalGap());
    }
}
