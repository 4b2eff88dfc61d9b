// SPDX-License-Identifier: MIT
#include "ward.h"

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("a saved round comes back whole, with every kind of answer")
{
    Ward ward(anAdoption());
    const RoundRecord round = ward.round(0).withGap("draught").measuring("room-temperature", "24.5");
    const RecordId id = must(ward.store->saveRound(ward.unit, round, "CD"));
    const SavedRound saved = must(ward.store->round(id));
    CHECK(saved.id == id);
    CHECK(saved.actor == "CD");
    CHECK(saved.round == round);
    ward.reopen();
    CHECK(must(ward.store->round(id)).round == round);
    CHECK(ward.fault() == "");
}

TEST_CASE("the row of a round says what its record says")
{
    Ward ward;
    const RoundRecord round = ward.round(0).withGap("item-2").without("item-4").notApplicable("item-1");
    const RecordId id = ward.save(ward.round(0).withGap("item-2").without("item-4").notApplicable("item-1"));
    const auto rows = must(ward.store->rounds(ward.unit, ward.slot(0), ward.slot(1)));
    REQUIRE(rows.size() == 1);
    CHECK(rows[0].id == id);
    CHECK(rows[0].slot == ward.slot(0));
    CHECK(rows[0].kind == RoundKind::Shift);
    CHECK(rows[0].checklist == "plain");
    CHECK(rows[0].version == 1);
    CHECK(rows[0].outcomes == "mngmummmmmmm");
    CHECK(rows[0].state == Readiness::ReadyWithGaps);
    CHECK(rows[0].met == round.met);
    CHECK(rows[0].applicable == 11);
    CHECK(rows[0].index == round.index);
    CHECK(rows[0].started == round.started);
    CHECK(rows[0].finished == round.finished);
    CHECK(rows[0].actor == "AB");
}

TEST_CASE("rounds come by slot, the end of the range left out, and only those of the unit")
{
    Ward ward;
    addUnit(*ward.store, aUnit("alder-fen"), aPlainAdoption(12));
    for (const int day : {3, 1, 2})
        ward.save(ward.round(day));
    must(ward.store->saveRound("alder-fen", ward.round(1), "AB"));
    const auto rows = must(ward.store->rounds(ward.unit, ward.slot(1), ward.slot(3)));
    REQUIRE(rows.size() == 2);
    CHECK(rows[0].slot == ward.slot(1));
    CHECK(rows[1].slot == ward.slot(2));
    CHECK(must(ward.store->rounds(ward.unit, ward.slot(4), ward.slot(9))).empty());
}

TEST_CASE("a second shift round for the same shift is refused and changes nothing")
{
    Ward ward;
    ward.save(ward.round(0));
    const auto second = ward.store->saveRound(ward.unit, ward.round(0).withGap("item-0"), "CD");
    REQUIRE_FALSE(second.has_value());
    CHECK(second.error().code == ErrorCode::AlreadyExists);
    CHECK(second.error().message.find("2026-11-01/0") != std::string::npos);
    CHECK(must(ward.store->verify()).records == 5);
    CHECK(must(ward.store->openGaps(ward.unit)).empty());
    CHECK_FALSE(ward.store->saveRound(ward.unit, ward.round(0), "CD").has_value());
    CHECK(ward.store->saveRound(ward.unit, ward.round(0, 1), "CD").has_value());
}

TEST_CASE("a shift's round, re-check and checks come whole in the order they were finished")
{
    Ward ward(anAdoption());
    must(ward.store->adopt(ward.unit, anAdoption(RoundKind::PreBirth), "AB"));
    const auto preBirth = must(ward.store->checklistFor(ward.unit, RoundKind::PreBirth, firstDay)).checklist;
    const RecordId round
        = ward.save(ward.round(0).withGap("draught").finishedAfter(std::chrono::minutes(40)));
    const RecordId recheck
        = ward.save(ward.round(0).rechecking(round, {"draught"}).finishedAfter(std::chrono::hours(3)));
    const RecordId check = must(ward.store->saveRound(
        ward.unit, aRound(preBirth).on(firstDay).finishedAfter(std::chrono::hours(2)), "AB")); // entered late
    ward.save(ward.round(0, 1));
    const auto saved = must(ward.store->roundsOfShift(ward.unit, ward.slot(0)));
    REQUIRE(saved.size() == 3);
    CHECK(saved[0].id == round);
    CHECK(saved[1].id == check);
    CHECK(saved[1].round.kind == RoundKind::PreBirth);
    CHECK(saved[2].id == recheck);
    CHECK(saved[2].round.over == round);
    CHECK(ward.fault() == "");
}

TEST_CASE("a re-check comes after its round also when the clock was set back in between")
{
    Ward ward;
    const RecordId round = ward.save(ward.round(0).withGap("item-0").finishedAfter(std::chrono::hours(3)));
    const RecordId recheck
        = ward.save(ward.round(0).rechecking(round, {"item-0"}).finishedAfter(std::chrono::hours(1)));
    const auto saved = must(ward.store->roundsOfShift(ward.unit, ward.slot(0)));
    REQUIRE(saved.size() == 2);
    CHECK(saved[1].id == recheck);
    CHECK(must(ward.store->openGaps(ward.unit)).empty());
    const auto verified = must(ward.store->verify());
    CHECK_FALSE(verified.fault.has_value());
    CHECK(verified.clockSetBack == 1);
    CHECK(verified.firstSetBack == "record " + recheck.station + "/" + std::to_string(recheck.seq));
}

TEST_CASE("a re-check of a round that is not there, or of another shift, is refused")
{
    Ward ward;
    const RecordId round = ward.save(ward.round(0));
    const RecordId unknown{.station = round.station, .seq = round.seq + 7};
    CHECK(ward.store->saveRound(ward.unit, ward.round(0).rechecking(unknown, {"item-0"}), "AB").error().code
        == ErrorCode::NotFound);
    CHECK(ward.store->saveRound(ward.unit, ward.round(1).rechecking(round, {"item-0"}), "AB").error().code
        == ErrorCode::NotFound);
}

TEST_CASE("a round of an unknown unit, checklist or version is refused")
{
    Ward ward;
    RoundRecord round = ward.round(0);
    CHECK(ward.store->saveRound("nowhere", round, "AB").error().code == ErrorCode::NotFound);
    round.version = 2;
    CHECK(ward.store->saveRound(ward.unit, round, "AB").error().code == ErrorCode::NotFound);
    round.version = 1;
    round.checklist = "other";
    CHECK(ward.store->saveRound(ward.unit, round, "AB").error().code == ErrorCode::NotFound);
}

TEST_CASE("a round that does not fit its checklist or itself is refused")
{
    Ward ward;
    const RoundRecord sound = ward.round(0).withGap("item-2");
    const auto refused = [&](const std::function<void(RoundRecord&)>& change) {
        RoundRecord round = sound;
        change(round);
        const auto saved = ward.store->saveRound(ward.unit, round, "AB");
        return !saved
            && (saved.error().code == ErrorCode::InvalidArgument
                || saved.error().code == ErrorCode::BadDocument);
    };
    CHECK(refused([](RoundRecord& r) { r.outcomes.pop_back(); }));
    CHECK(refused([](RoundRecord& r) { r.outcomes += 'm'; }));
    CHECK(refused([](RoundRecord& r) { r.outcomes[0] = 'x'; }));
    CHECK(refused([](RoundRecord& r) { r.answers.pop_back(); }));
    CHECK(refused([](RoundRecord& r) { r.seconds.clear(); }));
    CHECK(refused([](RoundRecord& r) { r.gaps.clear(); }));
    CHECK(refused([](RoundRecord& r) { r.kind = RoundKind::PreBirth; }));
    CHECK(refused([](RoundRecord& r) { r.kind = RoundKind::Recheck; }));
    CHECK(refused([](RoundRecord& r) { r.shift.code = "\xFF"; }));
    CHECK(refused([](RoundRecord& r) { r.finished = fromMs(std::int64_t{1} << 60); }));
    CHECK(must(ward.store->verify()).records == 4);
    CHECK(must(ward.store->rounds(ward.unit, ward.slot(0), ward.slot(9))).empty());
}

TEST_CASE("a record that is no round is not handed out as one")
{
    Ward ward;
    const RecordId round = ward.save(ward.round(0));
    CHECK(ward.store->round({.station = round.station, .seq = 1}).error().code == ErrorCode::NotFound);
    CHECK(ward.store->round({.station = round.station, .seq = 99}).error().code == ErrorCode::NotFound);
    CHECK(ward.store->round({.station = "elsewhere", .seq = 1}).error().code == ErrorCode::NotFound);
}

TEST_CASE("readings of an item come in thousandths, not those of items that were not looked at")
{
    Ward ward;
    const RecordId first = ward.save(ward.round(0).measuring("item-3", "26.4"));
    ward.save(ward.round(1).measuring("item-3", "0.5"));
    ward.save(ward.round(2).withGap("item-3"));
    const auto readings = must(ward.store->readings(ward.unit, "item-3", ward.slot(0), ward.slot(9)));
    REQUIRE(readings.size() == 2);
    CHECK(readings[1].thousandths == 500);
    CHECK(readings[0].slot == ward.slot(0));
    CHECK(readings[0].id == first);
    CHECK(readings[0].item == "item-3");
    CHECK(readings[0].thousandths == 26400);
    CHECK(must(ward.store->readings(ward.unit, "item-0", ward.slot(0), ward.slot(9))).empty());
    CHECK(must(ward.store->readings(ward.unit, "item-3", ward.slot(1), ward.slot(1))).empty());
}

TEST_CASE("an item is counted by its id over checklist versions that put it elsewhere")
{
    Ward ward;
    ward.save(ward.round(0).withGap("item-2").notApplicable("item-1"));
    Adoption next = aPlainAdoption(14, 2);
    auto& sections = std::get<Json::Array>(std::get<Json::Object>(next.document.value).back().value.value);
    auto& items = std::get<Json::Array>(std::get<Json::Object>(sections[0].value).back().value.value);
    items.erase(items.begin());
    must(ward.store->adopt(ward.unit, next, "AB"));
    const Checklist later = must(ward.store->checklist("plain", 2));
    ward.save(aRound(later).on(addDays(firstDay, 1)).withGap("item-2").without("item-13"));
    const auto tallies = must(ward.store->itemTallies(ward.unit, ward.slot(0), ward.slot(9)));
    REQUIRE(tallies.size() == 14);
    CHECK(tallies[0].item == "item-1");
    CHECK(tallies[0].met == 1);
    CHECK(tallies[0].doesNotApply == 1);
    CHECK(tallies[1].item == "item-2");
    CHECK(tallies[1].gaps == 2);
    CHECK(tallies[12].item == "item-13");
    CHECK(tallies[12].notChecked == 1);
    CHECK(tallies[13].item == "item-0");
    CHECK(tallies[13].met == 1);
}

TEST_CASE("only shift rounds are counted, re-checks are not")
{
    Ward ward;
    const RecordId round = ward.save(ward.round(0).withGap("item-0"));
    ward.save(ward.round(0).rechecking(round, {"item-0"}).finishedAfter(std::chrono::hours(2)));
    const auto tallies = must(ward.store->itemTallies(ward.unit, ward.slot(0), ward.slot(1)));
    CHECK(tallies[0].gaps == 1);
    CHECK(tallies[0].met == 0);
    CHECK(must(ward.store->itemTallies(ward.unit, ward.slot(1), ward.slot(2))).empty());
}

TEST_CASE("texts in any script come back as they went in")
{
    Ward ward;
    const RecordId id = must(ward.store->saveRound(ward.unit, ward.round(0), "मकर"));
    CHECK(must(ward.store->round(id)).actor == "मकर");
    CHECK(must(ward.store->rounds(ward.unit, ward.slot(0), ward.slot(1)))[0].actor == "मकर");
}
