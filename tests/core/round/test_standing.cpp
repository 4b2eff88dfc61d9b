// SPDX-License-Identifier: MIT
#include "core/round/standing.h"

#include "sample.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

constexpr std::size_t warmer = 2;
constexpr std::size_t suction = 4;
const RecordId roundId{"station", 5};

RoundRecord shiftRound(std::vector<Answer> answers, Instant finished = at(24, 7, 20))
{
    const Checklist checklist = sampleChecklist();
    Walk walk = Walk::of(checklist, TimeZone::utc(),
        Walk::begin(checklist, RoundKind::Shift, "unit", "AB", dayShift(), {}, at(24, 7, 5)))
                    .value();
    for (std::size_t i = 0; i < answers.size(); ++i)
        REQUIRE(walk.give(i, answers[i], at(24, 7, 6)).has_value());
    return walk.finish(finished);
}

RoundRecord recheck(std::size_t item, const Answer& answer, Instant when, const RecordId& over = roundId)
{
    const Checklist checklist = sampleChecklist();
    Walk walk = Walk::of(checklist, TimeZone::utc(),
        Walk::beginRecheck(checklist, "unit", "CD", dayShift(), {}, over, allMet(), {item}, when))
                    .value();
    REQUIRE(walk.give(item, answer, when).has_value());
    return walk.finish(when + std::chrono::minutes(1));
}

std::vector<Answer> with(std::size_t item, const Answer& answer)
{
    std::vector<Answer> answers = allMet();
    answers[item] = answer;
    return answers;
}

std::vector<SavedRound> saved(const std::vector<RoundRecord>& rounds)
{
    std::vector<SavedRound> out;
    for (const RoundRecord& round : rounds)
        out.push_back({{"station", roundId.seq + static_cast<std::int64_t>(out.size())}, "AB", round});
    return out;
}

Standing standing(
    const std::vector<RoundRecord>& rounds, Instant now, const std::vector<Sighting>& sightings = {})
{
    const auto standing = standingAt(sampleChecklist(), saved(rounds), TimeZone::utc(), now, sightings);
    REQUIRE(standing.has_value());
    return *standing;
}

using Positions = std::vector<std::size_t>;

}

TEST_CASE("without a round of the shift, or with one of another version, there is no standing")
{
    const Checklist checklist = sampleChecklist();
    CHECK_FALSE(standingAt(checklist, {}, TimeZone::utc(), at(24, 8)).has_value());
    CHECK_FALSE(
        standingAt(checklist, saved({recheck(suction, Confirmed{}, at(24, 8))}), TimeZone::utc(), at(24, 8))
            .has_value());
    RoundRecord other = shiftRound(allMet());
    CHECK(standingAt(checklist, saved({other}), TimeZone::utc(), at(24, 8)).has_value());
    other.version = 4;
    CHECK_FALSE(standingAt(checklist, saved({other}), TimeZone::utc(), at(24, 8)).has_value());
    other = shiftRound(allMet());
    other.checklist = "another";
    CHECK_FALSE(standingAt(checklist, saved({other}), TimeZone::utc(), at(24, 8)).has_value());
}

TEST_CASE("a warmer turns ready by the clock, and is listed until it is seen again")
{
    const RoundRecord round
        = shiftRound(with(warmer, RunningSince{at(24, 7)})); // finished 07:20, warm at 07:30
    CHECK(round.state == Readiness::NotReady);
    CHECK(round.outcomes[warmer] == 'g');
    const Standing before = standing({round}, at(24, 7, 29));
    CHECK(before.verdict.state == Readiness::NotReady);
    CHECK(before.warmByClock.empty());
    REQUIRE(before.verdict.reasons.size() == 1);
    CHECK(before.verdict.reasons[0].readyAt == at(24, 7, 30));
    const Standing after = standing({round}, at(24, 7, 30));
    CHECK(after.verdict.state == Readiness::Ready);
    CHECK(after.warmByClock == Positions{warmer});
    // A re-check of something else, finished later, does not hide that nobody has seen it warm.
    const Standing later = standing({round, recheck(suction, Confirmed{}, at(24, 8))}, at(24, 9));
    CHECK(later.warmByClock == Positions{warmer});
    const Standing seen = standing({round, recheck(warmer, RunningSince{at(24, 7)}, at(24, 8))}, at(24, 9));
    CHECK(seen.warmByClock.empty());
    CHECK(seen.verdict.state == Readiness::Ready);
}

TEST_CASE("a later re-check counts, one of another round does not")
{
    const RoundRecord round = shiftRound(with(suction, GapFound{GapReason::NotWorking}));
    CHECK(standing({round}, at(24, 8)).verdict.state == Readiness::ReadyWithGaps);
    const RoundRecord mended = recheck(suction, Confirmed{}, at(24, 9));
    const Standing after = standing({round, mended}, at(24, 10));
    CHECK(after.verdict.state == Readiness::Ready);
    CHECK(after.answers[suction] == Answer(Confirmed{}));
    CHECK(after.seenAt[suction] == at(24, 9));
    CHECK(after.seenAt[0] == at(24, 7, 6));
    CHECK(after.round == round);
    const RoundRecord again = recheck(suction, GapFound{GapReason::Absent}, at(24, 11));
    CHECK(standing({round, mended, again}, at(24, 12)).verdict.state == Readiness::ReadyWithGaps);
    const RoundRecord foreign = recheck(suction, Confirmed{}, at(24, 9), {"station", 4});
    CHECK(standing({round, foreign}, at(24, 10)).verdict.state == Readiness::ReadyWithGaps);
}

TEST_CASE("a re-check counts also when the clock was set back before it")
{
    const RoundRecord round = shiftRound(with(suction, GapFound{GapReason::NotWorking}));
    const RoundRecord mended = recheck(suction, Confirmed{}, at(24, 6));
    CHECK(standing({round, mended}, at(24, 8)).verdict.state == Readiness::Ready);
}

TEST_CASE("nothing is judged before the last finish, wherever the clock stands")
{
    const RoundRecord round = shiftRound(with(warmer, RunningSince{at(24, 6, 50)})); // 30 min on at 07:20
    CHECK(round.state == Readiness::Ready);
    const Standing back = standing({round}, at(23, 0));
    CHECK(back.verdict.state == Readiness::Ready);
    CHECK(back.warmByClock.empty());
    // The finish of a re-check counts too.
    const RoundRecord warming = shiftRound(with(warmer, RunningSince{at(24, 7)}));
    const Standing later = standing({warming, recheck(suction, Confirmed{}, at(24, 7, 40))}, at(24, 7, 21));
    CHECK(later.judgements[warmer].outcome == Outcome::Met);
}

TEST_CASE("a check before a birth counts as a later look at the same item")
{
    const RoundRecord round = shiftRound(with(suction, GapFound{GapReason::NotWorking}));
    const Standing mended = standing({round}, at(24, 10), {{"suction", Confirmed{}, at(24, 9)}});
    CHECK(mended.verdict.state == Readiness::Ready);
    CHECK(mended.seenAt[suction] == at(24, 9));
    const auto still = [&](const Sighting& sighting) {
        return standing({round}, at(24, 10), {sighting}).verdict.state == Readiness::ReadyWithGaps;
    };
    CHECK(still({"suction", Confirmed{}, at(24, 7)})); // before the round looked
    CHECK(still({"no-such-item", Confirmed{}, at(24, 9)}));
    CHECK(still({"suction", Measured{num("1")}, at(24, 9)})); // not what the item asks
}

TEST_CASE("a warmer that was warm when last seen is not listed as warm by the clock")
{
    const RoundRecord round = shiftRound(with(warmer, GapFound{GapReason::NotWorking}));
    const Sighting warm{"warmer", RunningSince{at(24, 11, 50)}, at(24, 12, 25)};
    CHECK(standing({round}, at(24, 13), {warm}).warmByClock.empty());
    const Sighting warming{"warmer", RunningSince{at(24, 12)}, at(24, 12, 25)};
    CHECK(standing({round}, at(24, 13), {warming}).warmByClock == Positions{warmer});
}

TEST_CASE("what was used is void until it is seen again")
{
    const RoundRecord round = shiftRound(allMet());
    const Sighting used{"bag", NotChecked{}, at(24, 12)};
    const Standing after = standing({round}, at(24, 13), {used});
    CHECK(after.verdict.state == Readiness::NotReady);
    REQUIRE(after.verdict.reasons.size() == 1);
    CHECK(after.verdict.reasons[0].code == ReasonCode::UsedSince);
    CHECK(after.verdict.reasons[0].item == "bag");
    const Sighting tested{"bag", StepsDone{"ppp", "7"}, at(24, 12, 30)};
    CHECK(standing({round}, at(24, 13), {used, tested}).verdict.state == Readiness::Ready);
    CHECK(standing({round}, at(24, 13), {tested, used}).verdict.state == Readiness::Ready);
    const RoundRecord again = recheck(3, StepsDone{"ppp", "7"}, at(24, 12, 40));
    CHECK(standing({round, again}, at(24, 13), {used}).verdict.state == Readiness::Ready);
}

TEST_CASE("a check says what it saw; after use what it left unanswered is void")
{
    const Checklist checklist = sampleChecklist();
    RoundRecord check = shiftRound(with(warmer, NotChecked{}));
    check.kind = RoundKind::PreBirth;
    CHECK(sightingsOf(checklist, check).size() == 9);
    check.kind = RoundKind::AfterUse;
    const std::vector<Sighting> seen = sightingsOf(checklist, check);
    REQUIRE(seen.size() == 10);
    CHECK(seen[warmer].answer == Answer(NotChecked{}));
    CHECK(seen[warmer].at == check.started);
    CHECK(seen[0].item == "temperature");
    CHECK(seen[0].at == at(24, 7, 6));
    Walk walk = Walk::of(checklist, TimeZone::utc(),
        Walk::begin(checklist, RoundKind::AfterUse, "unit", "AB", dayShift(), {}, at(24, 12)))
                    .value();
    REQUIRE(walk.give(0, Measured{num("27")}, at(24, 12, 5)).has_value());
    const std::vector<Sighting> walked = sightingsOf(checklist, walk.draft());
    REQUIRE(walked.size() == 10);
    CHECK(walked[0].at == at(24, 12, 5));
    CHECK(walked[1].at == at(24, 12));
    CHECK_FALSE(isChecked(walked[1].answer));
}
