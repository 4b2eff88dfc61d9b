// SPDX-License-Identifier: MIT
#include "core/store/unithistory.h"

#include "core/review/month.h"
#include "tests/support/builders.h"

#include <algorithm>
#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

const ReviewSpan october = ReviewSpan::ofMonth(2026y / October);

/** A store with rounds around October 2026. */
struct Ward
{
    Ward()
        : clock(sys_days(2026y / 9 / 1) + 3h)
        , store(aStore(temp.file("ward.cradlepost"), clock))
        , list(must(store->checklist("shift-readiness", 1)))
    {
    }
    RecordId save(const RoundRecord& round)
    {
        clock.set(round.finished + 2s);
        return must(store->saveRound("sorrel-hill", round, "M. R."));
    }
    UnitHistory history(Instant now) const { return must(unitHistory(*store, "sorrel-hill", october, now)); }

    TempDir temp;
    FixedClock clock;
    std::unique_ptr<Store> store;
    Checklist list;
};

}

TEST_CASE("a history holds shift rounds of the look-back and the span, with their readings")
{
    Ward ward;
    ward.save(aRound(ward.list).on(2026y / 9 / 30, 1));
    const RoundRecord round
        = aRound(ward.list).on(2026y / 10 / 5, 0).withGap("light").measuring("room-temperature", "26.4");
    const RecordId id = ward.save(round);
    ward.save(aRound(ward.list).on(2026y / 10 / 5, 0).finishedAfter(hours(2)).rechecking(id, {"light"}));
    ward.save(aRound(ward.list).on(2026y / 11 / 1, 0));
    const UnitHistory history = ward.history(sys_days(2026y / 11 / 20));
    CHECK(history.zone.name() == "Asia/Kolkata");
    CHECK(history.from == lookBack(october));
    REQUIRE(history.rounds.size() == 2);
    const RoundFact& fact = history.rounds[1];
    CHECK(fact.slot == slotOf(2026y / 10 / 5, 0));
    CHECK(fact.outcomes == round.outcomes);
    CHECK(fact.met == round.met);
    CHECK(fact.index == round.index);
    CHECK(fact.state == round.state);
    CHECK(toMs(fact.finished) == toMs(round.finished));
    CHECK(fact.recorded - fact.finished == 2s);
    CHECK(fact.actor == "M. R.");
    CHECK_FALSE(fact.fromPaper);
    CHECK(fact.amended == 0);
    const auto position = ward.list.position("room-temperature");
    const auto reading = std::find_if(fact.readings.begin(), fact.readings.end(),
        [&](const ReadingFact& one) { return one.position == position; });
    REQUIRE(reading != fact.readings.end());
    CHECK(reading->value.toString() == "26.4");
    REQUIRE(history.lists.size() == 1);
    CHECK(history.lists[0].checklist->id == "shift-readiness");
}

TEST_CASE("each shift of the pattern is due until now, also one that is on")
{
    const Ward ward;
    const UnitHistory history = ward.history(sys_days(2026y / 10 / 3) + 3h); // 08:30 there
    CHECK(history.due.front().date == lookBack(october));
    CHECK(history.due.back().date == Date(2026y / 10 / 3));
    CHECK(history.due.back().index == 0);
    CHECK(
        history.due.size() == 2U * static_cast<unsigned>(daysBetween(lookBack(october), 2026y / 10 / 3)) + 1);
}

TEST_CASE("gaps come with the span in which they were open")
{
    Ward ward;
    ward.save(aRound(ward.list).on(2026y / 9 / 26, 0).withGap("suction-pressure"));
    ward.save(aRound(ward.list).on(2026y / 9 / 27, 0)); // closed before the span: nothing of it is asked
    ward.save(aRound(ward.list).on(2026y / 9 / 28, 0).withGap("light"));
    ward.save(aRound(ward.list).on(2026y / 10 / 5, 0));
    ward.save(aRound(ward.list).on(2026y / 10 / 6, 0).withGap("wall-clock"));
    const UnitHistory history = ward.history(sys_days(2026y / 11 / 20));
    REQUIRE(history.gaps.size() == 2);
    CHECK(history.gaps[0].item == "light");
    CHECK_FALSE(history.gaps[0].isOpen());
    CHECK(history.gaps[1].item == "wall-clock");
    CHECK(history.gaps[1].isOpen());
}

TEST_CASE("change ideas and spot checks come along")
{
    Ward ward;
    must(ward.store->noteChange("sorrel-hill",
        {.id = {}, .title = "Check the kits at handover", .from = 2026y / 10 / 5, .items = {"delivery-kits"}},
        "M. R."));
    const UnitHistory history = ward.history(sys_days(2026y / 11 / 20));
    REQUIRE(history.changes.size() == 1);
    CHECK(history.changes[0].title == "Check the kits at handover");
    CHECK(history.spotChecks.empty());
}

TEST_CASE("limits are those that the unit had picked on the day of the round")
{
    Ward ward;
    Adoption other = anAdoption();
    other.from = 2026y / 10 / 10;
    other.limits = {{"room-temperature", "who-25-28"}};
    must(ward.store->adopt("sorrel-hill", other, "M. R."));
    ward.save(aRound(ward.list).on(2026y / 10 / 9, 0));
    ward.save(aRound(ward.list).on(2026y / 10 / 10, 0));
    const UnitHistory history = ward.history(sys_days(2026y / 11 / 20));
    REQUIRE(history.lists.size() == 2);
    CHECK(history.rounds[0].list == 0);
    CHECK(history.rounds[1].list == 1);
    CHECK(history.lists[1].limits.at("room-temperature") == "who-25-28");
    CHECK(reviewMonth(history, october));
}

TEST_CASE("a unit that is not known has no history")
{
    const Ward ward;
    CHECK(unitHistory(*ward.store, "nowhere", october, sys_days(2026y / 11 / 20)).error().code
        == ErrorCode::NotFound);
}
