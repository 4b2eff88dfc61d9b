// SPDX-License-Identifier: MIT
#include "core/store/districthistory.h"
#include "core/store/districtshelves.h"
#include "ward.h"

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

/** A second unit beside the ward's own. */
struct Neighbours : Ward
{
    Neighbours() { addUnit(*store, aUnit("ostrey"), aPlainAdoption(12)); }

    [[nodiscard]] Distance way(std::int64_t metres) const
    {
        return {.from = unit, .to = "ostrey", .metres = metres, .at = clock.now()};
    }
    [[nodiscard]] VisitResult visit(std::int64_t notMet) const
    {
        return {.at = clock.now(), .sample = 9, .pass = 8, .looked = 9, .notMet = notMet};
    }
};

}

TEST_CASE("distances are kept in the ledger, outlive a rebuild, and the last one counts")
{
    Neighbours ward;
    must(ward.store->setDistances({ward.way(9000)}, "QO"));
    ward.clock.advance(hours(1));
    must(ward.store->setDistances(
        {{.from = "ostrey", .to = ward.unit, .metres = 9500, .at = ward.clock.now()}}, "QO"));
    CHECK(must(ward.store->distances()).between(ward.unit, "ostrey") == 9500);
    must(ward.store->rebuild());
    CHECK(must(ward.store->distances()).between(ward.unit, "ostrey") == 9500);
    CHECK(ward.fault() == "");
}

TEST_CASE("a way to a unit that is not known is refused, and then none of the others is kept")
{
    Neighbours ward;
    const auto refused = ward.store->setDistances(
        {ward.way(9000), {.from = ward.unit, .to = "nowhere", .metres = 5, .at = ward.clock.now()}}, "QO");
    REQUIRE_FALSE(refused.has_value());
    CHECK(refused.error().code == ErrorCode::NotFound);
    CHECK(must(ward.store->distances()).empty());
}

TEST_CASE("a visit's result is kept, outlives a rebuild, and stands in the unit's history")
{
    Neighbours ward;
    ward.save(ward.round(2));
    must(ward.store->noteVisit("ostrey", ward.visit(3), "DS"));
    ward.clock.advance(days(2));
    must(ward.store->noteVisit("ostrey", ward.visit(1), "DS"));
    must(ward.store->rebuild());
    const auto visits = must(ward.store->visits("ostrey", fromMs(0)));
    REQUIRE(visits.size() == 2);
    CHECK(visits[0].decision() == VisitDecision::NotReached);
    CHECK(visits[1].decision() == VisitDecision::Reached);
    CHECK(must(ward.store->visits("ostrey", ward.clock.now())).size() == 1);
    CHECK(must(ward.store->visits(ward.unit, fromMs(0))).empty());
    CHECK(ward.fault() == "");
    const auto history = must(districtHistory(
        *ward.store, ReviewSpan::ofMonth(2026y / November), ward.clock.now(), EntryQuestions::LeaveOut));
    for (const DistrictUnit& unit : history.units)
        CHECK(unit.visits.size() == (unit.id == "ostrey" ? 2U : 0U));
}

TEST_CASE("a visit that lies ahead or cannot be is refused")
{
    Neighbours ward;
    VisitResult ahead = ward.visit(1);
    ahead.at += hours(3);
    CHECK_FALSE(ward.store->noteVisit("ostrey", ahead, "DS").has_value());
    CHECK_FALSE(ward.store->noteVisit("ostrey", ward.visit(10), "DS").has_value());
    CHECK_FALSE(ward.store->noteVisit("nowhere", ward.visit(1), "DS").has_value());
}

TEST_CASE("the shelves of a district come from the stock books")
{
    Neighbours ward;
    ward.clock.set(sys_days(firstDay) + hours(9));
    ward.stockUp();
    const auto shelves = must(districtShelves(*ward.store, {"ostrey", ward.unit}, ward.clock.now()));
    REQUIRE(shelves.size() == 2);
    CHECK(shelves[0].shelves.empty());
    REQUIRE(shelves[1].shelves.size() == 1);
    CHECK(shelves[1].shelves[0].usable == 54);
    CHECK(shelves[1].shelves[0].daysToDelivery > 0);
    CHECK(must(districtHistory(*ward.store, ReviewSpan::ofMonth(2026y / November), ward.clock.now(),
                   EntryQuestions::LeaveOut))
              .shelves.size()
        == 2);
}
