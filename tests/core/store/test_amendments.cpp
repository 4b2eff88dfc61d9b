// SPDX-License-Identifier: MIT
#include "core/ledger/canonical.h"
#include "core/store/projector.h"
#include "core/store/shiftview.h"
#include "ward.h"

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

/** A round of the ward with one answer more put right. */
RoundRecord corrected(const Ward& ward, const RecordId& id, std::size_t at, Answer answer)
{
    const RoundRecord counted = must(ward.store->round(id)).round;
    auto answers = counted.answers;
    answers[at] = std::move(answer);
    return must(withAnswers(ward.checklist, aCalendar().zone(), counted, std::move(answers)));
}

std::string refusal(const Result<RecordId>& result)
{
    REQUIRE_FALSE(result.has_value());
    return result.error().message;
}

}

TEST_CASE("an amended round counts by what it says now, and the first stays in the ledger")
{
    Ward ward;
    const RecordId id = ward.save(ward.round(0).withGap("item-3"));
    const RoundRecord first = must(ward.store->round(id)).round;
    ward.clock.advance(hours(5));
    const RecordId by = must(ward.store->amendRound(id,
        corrected(ward, id, 3, metAnswer(ward.checklist.item(3), first.finished, firstDay)),
        "it was behind the door", "QO"));

    const SavedRound now = must(ward.store->round(id));
    CHECK(now.actor == "AB");
    CHECK(now.round.outcomes == std::string(12, 'm'));
    REQUIRE(now.amendments.size() == 1);
    CHECK(now.amendments[0]
        == Amendment{.id = by, .at = ward.clock.now(), .actor = "QO", .reason = "it was behind the door"});
    CHECK(must(ward.store->firstRecorded(id)).round == first);
    const auto rows = must(ward.store->rounds(ward.unit, ward.slot(0), ward.slot(1)));
    REQUIRE(rows.size() == 1);
    CHECK(rows[0].outcomes == std::string(12, 'm'));
    CHECK(rows[0].met == 12);
    CHECK(rows[0].amendments == 1);
    CHECK(rows[0].amendedAt == ward.clock.now());
    CHECK(rows[0].recorded == first.finished);
    CHECK(must(ward.store->openGaps(ward.unit)).empty());
    CHECK(ward.fault() == "");
    must(ward.store->rebuild());
    CHECK(must(ward.store->rounds(ward.unit, ward.slot(0), ward.slot(1)))[0].amendments == 1);
}

TEST_CASE("of several amendments the last one made counts, each against the first")
{
    Ward ward;
    const RecordId id = ward.save(ward.round(0));
    must(ward.store->amendRound(id, corrected(ward, id, 0, GapFound{GapReason::Absent}), "first look", "QO"));
    ward.clock.advance(minutes(1));
    must(ward.store->amendRound(
        id, corrected(ward, id, 5, GapFound{GapReason::NotClean}), "second look", "QO"));
    CHECK(must(ward.store->round(id)).round.outcomes == "gmmmmgmmmmmm");
    CHECK(must(ward.store->round(id)).amendments.size() == 2);
    CHECK(must(ward.store->openGaps(ward.unit)).size() == 2);
    CHECK(ward.fault() == "");
}

TEST_CASE("the shift stands as amended")
{
    Ward ward;
    const RecordId id = ward.save(ward.round(0));
    must(ward.store->amendRound(
        id, corrected(ward, id, 4, GapFound{GapReason::Expired}), "read the date wrong", "QO"));
    const auto view = must(shiftView(*ward.store, ward.unit, ward.clock.now()));
    REQUIRE(view.standing.has_value());
    CHECK(view.standing->judgements[4].outcome == Outcome::Gap);
    CHECK(view.gaps.size() == 1);
}

TEST_CASE("a gap that turns out never to have been takes no one's later word with it")
{
    Ward ward;
    const RecordId id = ward.save(ward.round(0).withGap("item-2"));
    must(ward.store->actOnGap(ward.unit, {.item = "item-2", .nth = 1, .owner = "engineer"}, "AB"));
    must(ward.store->amendRound(id,
        corrected(ward, id, 2, metAnswer(ward.checklist.item(2), ward.clock.now(), firstDay)), "it was there",
        "QO"));
    CHECK(must(ward.store->openGaps(ward.unit)).empty());
    CHECK(ward.fault() == "");
    ward.save(ward.round(1).withGap("item-5"));
    CHECK(ward.fault() == "");
    ward.save(ward.round(2).withGap("item-2"));
    CHECK(ward.fault() == "");
    ward.save(ward.round(3).withGap("item-2"));
    CHECK(ward.fault() == "");
}

TEST_CASE("what an amendment may not do is refused, and nothing is written")
{
    Ward ward;
    const RecordId id = ward.save(ward.round(0));
    const RoundRecord right = corrected(ward, id, 0, GapFound{GapReason::Absent});
    const auto amend = [&](const RecordId& of, const RoundRecord& round, const std::string& reason) {
        return refusal(ward.store->amendRound(of, round, reason, "QO"));
    };
    const auto records = must(ward.store->verify()).records;
    CHECK(amend(id, right, "ab").find("3 to 200") != std::string::npos);
    CHECK(amend(id, must(ward.store->round(id)).round, "no change").find("nothing is different")
        != std::string::npos);
    CHECK(amend({.station = id.station, .seq = 99}, right, "of nothing").find("not in the ledger")
        != std::string::npos);
    CHECK(amend({.station = id.station, .seq = 1}, right, "of a unit").find("is no round")
        != std::string::npos);
    RoundRecord odd = right;
    odd.outcomes[3] = 'g';
    CHECK(amend(id, odd, "does not fit itself").find("do not fit each other") != std::string::npos);
    CHECK(must(ward.store->verify()).records == records);
    const RecordId by = must(ward.store->amendRound(id, right, "as it was", "QO"));
    CHECK(amend(by, right, "of an amendment").find("is no round") != std::string::npos);
}

TEST_CASE("an amendment that does not fit its round stays in the chain and counts for nothing")
{
    Ward ward;
    ward.store->signWith(aKey(1));
    const RecordId id = ward.save(ward.round(0));
    RoundRecord other = must(ward.store->round(id)).round;
    other.shift = aCalendar().shift(addDays(firstDay, 3), 0);
    ward.store.reset();
    {
        Database database(ward.address, Database::Access::ReadWrite);
        LedgerTable ledger(database);
        const Json body = toBody(RoundAmendment{.amends = id, .reason = "another day", .round = other});
        Record record{.station = id.station,
            .seq = id.seq + 1,
            .unit = ward.unit,
            .kind = "round-amended",
            .madeAt = ward.clock.now(),
            .actor = "QO",
            .body = canonicalText(body),
            .prev = ledger.tip(id.station).hash};
        seal(record, aKey(1));
        ledger.insert(record);
        Projector(database, database).apply(record, body);
    }
    ward.reopen();
    CHECK(ward.fault() == "");
    CHECK(must(ward.store->round(id)).amendments.empty());
    CHECK(must(ward.store->rounds(ward.unit, ward.slot(0), ward.slot(9))).size() == 1);
}

TEST_CASE("many rounds of the past are saved together, all or none")
{
    Ward ward;
    ward.save(ward.round(10).withGap("item-1"));
    std::vector<WalkedRound> backlog;
    for (int day = 0; day < 6; ++day) {
        RoundRecord round = ward.round(day).withGap("item-" + std::to_string(day % 2 + 1));
        round.fromPaper = true;
        backlog.push_back({.round = round, .actor = "CD"});
    }
    auto twice = backlog;
    twice.push_back(backlog.front());
    CHECK(ward.store->saveRounds(ward.unit, twice).error().code == ErrorCode::AlreadyExists);
    CHECK(must(ward.store->rounds(ward.unit, ward.slot(0), ward.slot(10))).empty());
    CHECK(must(ward.store->saveRounds(ward.unit, backlog)).size() == 6);
    CHECK(ward.fault() == "");
    const auto rows = must(ward.store->rounds(ward.unit, ward.slot(0), ward.slot(10)));
    REQUIRE(rows.size() == 6);
    CHECK(rows[0].fromPaper);
    CHECK(rows[0].actor == "CD");
    CHECK(must(ward.store->gapsOf(ward.unit, "item-1")).size() == 4);
    ward.save(ward.round(11).withGap("item-1"));
    CHECK(ward.fault() == "");
}
