// SPDX-License-Identifier: MIT
#include "core/store/arrivals.h"
#include "core/store/database.h"
#include "core/store/packing.h"
#include "core/store/unithistory.h"
#include "ward.h"

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

const ReviewSpan november = ReviewSpan::ofMonth(2026y / November);

std::vector<RoundFact> packedRounds(const Ward& ward)
{
    return must(unitHistory(*ward.store, ward.unit, november, ward.clock.now() + days(60))).rounds;
}

/** All records of one station. */
void bring(const Store& from, Store& to, const StationKey& key)
{
    must(to.takeIn([&](Arrivals& arrivals) -> Result<void> {
        if (auto added = arrivals.addStation(key.id(), key.publicKey()); !added)
            return added;
        return from.records(key.id(), 1, 1000, [&](const Record& record) {
            return arrivals.add({.record = record,
                .body = must(parseJson(record.body)),
                .round = {},
                .packedBody = packed(record.body)});
        });
    }));
}

/** What the packed month says of each shift is what the row of the round says. */
void checkAgainstRows(const Ward& ward)
{
    const auto facts = packedRounds(ward);
    std::map<Slot, RoundRow> rows;
    for (const RoundRow& row : must(ward.store->rounds(ward.unit, ward.slot(0), ward.slot(30)))) {
        if (row.kind != RoundKind::Shift)
            continue;
        const auto [at, isNew] = rows.emplace(row.slot, row);
        if (!isNew && row.recorded < at->second.recorded)
            at->second = row;
    }
    REQUIRE(facts.size() == rows.size());
    for (const RoundFact& fact : facts) {
        const RoundRow& row = rows.at(fact.slot);
        CHECK(fact.outcomes == row.outcomes);
        CHECK(fact.state == row.state);
        CHECK(fact.met == row.met);
        CHECK(fact.index == row.index);
        CHECK(fact.finished == row.finished);
        CHECK(fact.recorded == row.recorded);
        CHECK(fact.amended == row.amendments);
        CHECK(fact.amendedAt == row.amendedAt);
        CHECK(fact.actor == row.actor);
    }
}

}

TEST_CASE("packed months follow each round that is saved, also late ones, and leave out all but shift rounds")
{
    Ward ward;
    for (const int day : {3, 4, 9, 1, 6})
        ward.save(ward.round(day, day % 2).withGap("item-" + std::to_string(day)).measuring("item-3", "26.5"));
    const RecordId id = ward.save(ward.round(7).withGap("item-2"));
    ward.save(ward.round(7).rechecking(id, {"item-2"}).finishedAfter(hours(3)));
    RoundRecord seen = ward.round(7).withGap("item-5");
    seen.kind = RoundKind::SpotCheck;
    must(ward.store->saveRound(ward.unit, seen, "QO"));
    checkAgainstRows(ward);
    CHECK(packedRounds(ward).size() == 6);
    CHECK(ward.fault() == "");
}

TEST_CASE("of two stations' rounds of one shift the packed month keeps the one recorded first, whichever comes first")
{
    for (const bool isLater : {false, true}) {
        CAPTURE(isLater);
        Ward ward;
        ward.store->signWith(aKey(1));
        ward.save(ward.round(2).withGap("item-1"));
        const Instant first = ward.clock.now();
        // The other station's database had not seen the first round.
        Ward other;
        other.store->signWith(aKey(2));
        const RoundRecord second = other.round(2).withGap("item-4");
        other.clock.set(isLater ? first + hours(1) : first - minutes(5));
        must(other.store->saveRound(other.unit, second, "CD"));
        bring(*other.store, *ward.store, aKey(2));
        REQUIRE(packedRounds(ward).size() == 1);
        CHECK(packedRounds(ward).front().actor == (isLater ? "AB" : "CD"));
        checkAgainstRows(ward);
        CHECK(ward.fault() == "");
    }
}

TEST_CASE("an amended round is amended in its packed month too")
{
    Ward ward;
    const RecordId id = ward.save(ward.round(2).withGap("item-1"));
    ward.save(ward.round(3));
    const RoundRecord first = must(ward.store->firstRecorded(id)).round;
    auto answers = first.answers;
    answers[1] = metAnswer(ward.checklist.item(1), first.finished, first.shift.date);
    ward.clock.advance(hours(40));
    must(ward.store->amendRound(
        id, must(withAnswers(ward.checklist, aCalendar().zone(), first, answers)), "seen wrongly", "AB"));
    checkAgainstRows(ward);
    CHECK(packedRounds(ward).front().amended == 1);
    CHECK(packedRounds(ward).front().outcomes[1] == 'm');
    CHECK(ward.fault() == "");
}

TEST_CASE("a backlog entered at once packs as the same rounds do one by one")
{
    Ward ward;
    std::vector<WalkedRound> backlog;
    for (const int day : {12, 2, 25, 7})
        backlog.push_back({.round = ward.round(day).withGap("item-2").done(), .actor = "AB"});
    ward.clock.set(sys_days(addDays(firstDay, 29)));
    must(ward.store->saveRounds(ward.unit, backlog));
    checkAgainstRows(ward);
    CHECK(ward.fault() == "");
}

TEST_CASE("a packed month that cannot be read is told as damage, and a rebuild mends it")
{
    Ward ward;
    ward.save(ward.round(2));
    {
        Database database(ward.address, Database::Access::ReadWrite);
        database.prepare("UPDATE round_month SET rounds = ?")
            .bind(std::span<const unsigned char>(std::vector<unsigned char>{9, 9, 9}))
            .run();
    }
    CHECK(ward.fault().starts_with("round-month " + ward.unit));
    const auto history = unitHistory(*ward.store, ward.unit, november, ward.clock.now());
    REQUIRE_FALSE(history.has_value());
    CHECK(history.error().code == ErrorCode::Damaged);
    must(ward.store->rebuild());
    CHECK(ward.fault() == "");
    checkAgainstRows(ward);
}
