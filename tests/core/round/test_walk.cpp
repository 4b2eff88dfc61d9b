// SPDX-License-Identifier: MIT
#include "core/round/walk.h"

#include "core/checklist/reader.h"
#include "sample.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

Walk freshWalk()
{
    const Checklist checklist = sampleChecklist();
    return Walk::of(checklist, TimeZone::utc(),
        Walk::begin(checklist, RoundKind::Shift, "unit", "AB", dayShift(), {{"temperature", "preterm"}},
            at(24, 7, 5)))
        .value();
}

Walk recheckOf(const std::vector<Answer>& answers, std::vector<std::size_t> asked)
{
    const Checklist checklist = sampleChecklist();
    return Walk::of(checklist, TimeZone::utc(),
        Walk::beginRecheck(
            checklist, "unit", "CD", dayShift(), {}, {"station", 12}, answers, std::move(asked), at(24, 9)))
        .value();
}

void giveAll(Walk& walk, const std::vector<Answer>& answers)
{
    for (std::size_t i = 0; i < answers.size(); ++i)
        REQUIRE(walk.give(i, answers[i], at(24, 7, 6, static_cast<int>(i))).has_value());
}

using Positions = std::vector<std::size_t>;

}

TEST_CASE("a fresh walk asks everything and knows nothing")
{
    const Walk walk = freshWalk();
    CHECK(walk.open() == Positions{0, 1, 2, 3, 4, 5, 6, 7, 8, 9});
    CHECK(walk.verdict(at(24, 8)).state == Readiness::NotReady);
    CHECK(walk.draft().version == 3);
    CHECK(walk.draft().answers == std::vector<Answer>(10));
    CHECK_FALSE(walk.draft().over.has_value());
}

TEST_CASE("an answer is kept with its moment, and taking it back leaves no trace")
{
    Walk walk = freshWalk();
    const Draft before = walk.draft();
    REQUIRE(walk.give(1, Confirmed{}, at(24, 7, 6)).has_value());
    CHECK(walk.answer(1) == Answer(Confirmed{}));
    CHECK(walk.draft().answeredAt[1] == at(24, 7, 6));
    CHECK(walk.open() == Positions{0, 2, 3, 4, 5, 6, 7, 8, 9});
    REQUIRE(walk.give(1, GapFound{GapReason::Absent}, at(24, 7, 9)).has_value());
    CHECK(walk.draft().answeredAt[1] == at(24, 7, 9));
    REQUIRE(walk.give(1, NotChecked{}, at(24, 7, 10)).has_value());
    CHECK(walk.draft() == before);
}

TEST_CASE("a refused answer leaves the draft as it was")
{
    Walk walk = freshWalk();
    giveAll(walk, allMet());
    const Draft before = walk.draft();
    CHECK_FALSE(walk.give(0, Measured{num("264")}, at(24, 8)).has_value());
    CHECK_FALSE(walk.give(0, Confirmed{}, at(24, 8)).has_value());
    CHECK_FALSE(walk.give(0, DoesNotApply{}, at(24, 8)).has_value());
    CHECK_FALSE(walk.give(3, StepsDone{"pp", ""}, at(24, 8)).has_value());
    CHECK_FALSE(walk.give(10, Confirmed{}, at(24, 8)).has_value());
    CHECK(walk.draft() == before);
}

TEST_CASE("a function test begun and not ended stays open")
{
    Walk walk = freshWalk();
    giveAll(walk, allMet());
    CHECK(walk.open().empty());
    REQUIRE(walk.give(3, StepsDone{"pp-", "7"}, at(24, 8)).has_value());
    CHECK(walk.open() == Positions{3});
    REQUIRE(walk.give(3, StepsDone{"pf-", "7"}, at(24, 8)).has_value());
    CHECK(walk.open().empty());
}

TEST_CASE("finishing with open items records them as not checked")
{
    Walk walk = freshWalk();
    giveAll(walk, allMet());
    REQUIRE(walk.give(9, NotChecked{}, at(24, 8)).has_value());
    REQUIRE(walk.give(3, StepsDone{"p--", "7"}, at(24, 8)).has_value());
    REQUIRE(walk.give(0, Measured{num("27")}, at(24, 8)).has_value()); // the preterm set starts at 27.5
    const RoundRecord record = walk.finish(at(24, 8));
    CHECK(record.outcomes == "gmmummmmmu");
    REQUIRE(record.gaps.size() == 1);
    CHECK(record.gaps[0].code == ReasonCode::TooLow);
    CHECK(record.gaps[0].limit == "27.5");
    CHECK(record.limits == ChosenLimits{{"temperature", "preterm"}});
    CHECK(record.state == Readiness::NotReady);
    CHECK(record.met == 7);
    CHECK(record.applicable == 10);
    // room 1/2, corner 2/3, stock 4/5
    CHECK(record.index == 6556);
    CHECK_FALSE(record.seconds[9].has_value());
}

TEST_CASE("a record names the limit set in force where the site picked none")
{
    const Checklist checklist = sampleChecklist();
    const Walk walk = Walk::of(checklist, TimeZone::utc(),
        Walk::begin(checklist, RoundKind::Shift, "u", "AB", dayShift(), {}, at(24, 7)))
                          .value();
    CHECK(walk.finish(at(24, 8)).limits == ChosenLimits{{"temperature", "term"}});
}

TEST_CASE("each answer keeps its second, also when the clock is set back")
{
    Walk walk = freshWalk(); // begun at 07:05
    REQUIRE(walk.give(0, Measured{num("28")}, at(24, 7, 5) + std::chrono::milliseconds(999)).has_value());
    REQUIRE(walk.give(1, Confirmed{}, at(24, 7, 6)).has_value());
    REQUIRE(walk.give(4, Confirmed{}, at(24, 7, 4, 30)).has_value());
    REQUIRE(walk.give(9, Confirmed{}, fromMs(-9007199254740991)).has_value());
    REQUIRE(walk.give(2, RunningSince{at(24, 7)}, at(24, 7, 5) - std::chrono::milliseconds(1)).has_value());
    const RoundRecord record = walk.finish(at(24, 6));
    CHECK(record.seconds[0] == 0);
    CHECK(record.seconds[1] == 60);
    CHECK(record.seconds[4] == -30);
    CHECK(record.seconds[2] == -1);
    CHECK(record.seconds[9] == INT32_MIN);
    CHECK_FALSE(record.seconds[3].has_value());
    CHECK(record.outcomes[2] == 'g'); // finished before it was switched on: nothing has run
}

TEST_CASE("a re-check is laid over the round: what it did not look at stays as it was")
{
    std::vector<Answer> answers = allMet();
    answers[0] = Measured{num("20")};
    answers[4] = GapFound{GapReason::NotWorking};
    Walk walk = recheckOf(answers, {4, 0}); // in any order
    CHECK(walk.isAsked(0));
    CHECK(walk.isAsked(4));
    CHECK_FALSE(walk.isAsked(1));
    CHECK(walk.open() == Positions{0, 4});
    CHECK_FALSE(walk.give(1, Confirmed{}, at(24, 9)).has_value());
    CHECK(walk.verdict(at(24, 9)).state == Readiness::NotReady);
    REQUIRE(walk.give(0, Measured{num("27")}, at(24, 9, 1)).has_value());
    CHECK(walk.verdict(at(24, 9)).state == Readiness::ReadyWithGaps);
    const RoundRecord record = walk.finish(at(24, 9, 5));
    CHECK(record.kind == RoundKind::Recheck);
    CHECK(record.outcomes == "muuuuuuuuu");
    CHECK(record.gaps.empty());
    CHECK(record.state == Readiness::ReadyWithGaps);
    CHECK(record.met == 9);
    CHECK(record.applicable == 10);
    CHECK(record.over == RecordId{"station", 12});
    REQUIRE(walk.give(0, NotChecked{}, at(24, 9, 6)).has_value());
    CHECK(walk.verdict(at(24, 9)).state == Readiness::NotReady);
    CHECK(walk.finish(at(24, 9, 7)).outcomes == "uuuuuuuuuu");
}

TEST_CASE("an item named twice is asked once")
{
    CHECK(recheckOf(allMet(), {4, 0, 4}).open() == Positions{0, 4});
}

TEST_CASE("stock must be usable on the day the shift ends, in the zone of the unit")
{
    Shift night = dayShift();
    night.begins = at(24, 19);
    night.ends = at(25, 7);
    CHECK(lastDayOf(night, TimeZone::utc()) == date("2026-11-25"));
    CHECK(lastDayOf(dayShift(), TimeZone::utc()) == date("2026-11-24"));
    Shift evening = dayShift();
    evening.begins = at(24, 16);
    evening.ends = at(25, 0); // exclusive: nobody works on the 25th
    CHECK(lastDayOf(evening, TimeZone::utc()) == date("2026-11-24"));
    const auto kolkata = TimeZone::named("Asia/Kolkata"); // 5 h 30 min ahead: ends at 00:30 there
    REQUIRE(kolkata.has_value());
    CHECK(lastDayOf(dayShift(), *kolkata) == date("2026-11-25"));
    const Checklist checklist = sampleChecklist();
    const Draft draft = Walk::begin(checklist, RoundKind::Shift, "u", "AB", dayShift(), {}, at(24, 7));
    Walk walk = Walk::of(checklist, *kolkata, draft).value();
    REQUIRE(walk.give(5, Counted{{{10, date("2026-11-24"), ""}}}, at(24, 7)).has_value());
    CHECK(walk.judged(5, at(24, 8)).outcome == Outcome::Gap);
}

TEST_CASE("the shift checklist that comes with the program can be walked with nothing and with gaps")
{
    const auto checklist = builtInChecklist(RoundKind::Shift);
    REQUIRE(checklist.has_value());
    Walk walk = Walk::of(*checklist, TimeZone::utc(),
        Walk::begin(*checklist, RoundKind::Shift, "unit", "AB", dayShift(), {}, at(24, 7)))
                    .value();
    const std::size_t n = checklist->itemCount();
    CHECK(walk.open().size() == n);
    CHECK(walk.finish(at(24, 8)).outcomes == std::string(n, 'u'));
    for (std::size_t i = 0; i < n; ++i)
        REQUIRE(walk.give(i, GapFound{GapReason::Absent}, at(24, 7, 30)).has_value());
    const RoundRecord record = walk.finish(at(24, 8));
    CHECK(record.outcomes == std::string(n, 'g'));
    CHECK(record.state == Readiness::NotReady);
    const auto back = roundFromBody(toBody(record));
    REQUIRE(back.has_value());
    CHECK(*back == record);
}

TEST_CASE("a draft that is not one of the checklist is not taken up")
{
    const Checklist checklist = sampleChecklist();
    const Draft sound
        = Walk::beginRecheck(checklist, "u", "AB", dayShift(), {}, {"s", 1}, allMet(), {0, 9}, at(24, 7));
    REQUIRE(Walk::of(checklist, TimeZone::utc(), sound).has_value());
    std::vector<Draft> odd(8, sound);
    odd[0].answers.pop_back();
    odd[1].answers.emplace_back();
    odd[2].answeredAt.pop_back();
    odd[3].answeredAt.emplace_back();
    odd[4].before.pop_back();
    odd[5].asked.push_back(10);
    odd[6].version = 2;
    odd[7].checklist = "another";
    for (const Draft& draft : odd) {
        const auto walk = Walk::of(checklist, TimeZone::utc(), draft);
        REQUIRE_FALSE(walk.has_value());
        CHECK(walk.error().code == ErrorCode::BadDocument);
        CHECK(walk.error().message.find(checklist.id) != std::string::npos);
        CHECK_FALSE(walk.error().hint.empty());
    }
}
