// SPDX-License-Identifier: MIT
#include "core/store/migration.h"
#include "core/store/projector.h"
#include "core/store/verification.h"
#include "ward.h"

#include <algorithm>
#include <deque>
#include <random>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

using Chains = std::map<std::string, std::deque<Record>>;

/** Somebody looks at any round again: another letter, another reading, or the same finding for another
 * reason. */
void amendAny(Ward& ward, const std::string& unit, const Checklist& checklist, std::mt19937& random)
{
    const auto rows = must(ward.store->rounds(unit, 0, slotOf(addDays(firstDay, 100), 0)));
    if (rows.empty())
        return;
    const RecordId id = rows[random() % rows.size()].id;
    const RoundRecord first = must(ward.store->firstRecorded(id)).round;
    if (first.kind != RoundKind::Shift || first.version != checklist.version)
        return;
    auto answers = first.answers;
    const std::size_t at = random() % 12;
    answers[at] = random() % 3 == 0
        ? metAnswer(checklist.item(at), first.finished, first.shift.date)
        : Answer(GapFound{random() % 2 == 0 ? GapReason::NotClean : GapReason::Absent});
    const auto corrected = must(withAnswers(checklist, aCalendar().zone(), first, answers));
    (void)ward.store->amendRound(id, corrected, "put right " + std::to_string(random() % 9), "QO");
}

/** Something of the shelves and devices; what is refused, since another came first, is no matter. */
void supply(Ward& ward, const std::string& unit, int what, int step)
{
    const Instant now = ward.clock.now();
    const std::string actor = "AB";
    const std::string device = step % 2 == 0 ? "warmer-1" : "fridge-1";
    switch (what) {
    case 0:
        (void)ward.store->describeStockItem(unit, Ward::anItem(now), actor);
        break;
    case 1:
        (void)ward.store->moveStock(unit,
            {{.item = "oxytocin", .at = now, .quantity = 1 + step, .expiry = addDays(firstDay, step)},
                {.item = "oxytocin", .kind = MovementKind::Issue, .at = now, .quantity = 1}},
            actor);
        break;
    case 2:
        (void)ward.store->noteEquipment(unit,
            {{.device = device,
                .at = now - std::chrono::hours(step),
                .deed = Added{.device = {.id = device,
                                  .kind = step % 2 == 0 ? EquipmentKind::Warmer : EquipmentKind::Fridge,
                                  .label = "Device"}}}},
            actor);
        break;
    case 3:
        (void)ward.store->switchWarmer(unit, {.device = "warmer-1", .at = now, .on = step % 3 == 0}, actor);
        (void)ward.store->noteFridge(
            unit, {.fridge = "fridge-1", .at = now, .celsius = Decimal{1000 * (step % 12)}}, actor);
        break;
    case 4:
        (void)ward.store->noteBirth(
            unit, {.birth = "b" + std::to_string(step), .at = now, .expected = now}, actor);
        break;
    default:
        (void)ward.store->giveHandover(
            unit, {.what = {.shift = "day", .date = firstDay}, .by = actor, .at = now}, actor);
    }
}

/** Three stations work on two units: same shifts, late and amended rounds, clocks set back, rival set-ups. */
Chains aDistrict(Ward& ward, unsigned seed)
{
    std::mt19937 random(seed);
    const auto oneOf = [&](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
    addUnit(*ward.store, aUnit("alder-fen"), aPlainAdoption(12));
    for (int step = 0; step < 90; ++step) {
        ward.store->signWith(aKey(static_cast<unsigned char>(1 + oneOf(3))));
        ward.clock.advance(std::chrono::minutes(oneOf(10) == 0 ? -3000 : oneOf(600)));
        const std::string unit = oneOf(2) == 0 ? ward.unit : "alder-fen";
        const auto open = must(ward.store->openGaps(unit));
        switch (oneOf(15)) {
        case 0:
            must(ward.store->describeUnit(
                {.id = unit, .name = "Name " + std::to_string(step), .zone = "UTC", .level = ""}, "AB"));
            break;
        case 1:
            must(ward.store->setPeople(unit, {{.initials = "P" + std::to_string(step), .role = ""}}, "AB"));
            break;
        case 2:
            must(ward.store->setPattern(
                unit, {.from = firstDay, .pattern = ShiftPattern::threeByEight()}, "AB"));
            break;
        case 3:
            must(ward.store->adopt(unit, aPlainAdoption(12, 1 + oneOf(2)), "AB"));
            break;
        case 4:
            if (!open.empty()) {
                const Gap& gap = open[random() % open.size()];
                must(ward.store->actOnGap(unit,
                    {.item = gap.item,
                        .nth = gap.nth,
                        .owner = "O" + std::to_string(step),
                        .due = std::nullopt,
                        .remark = std::nullopt},
                    "AB"));
            }
            break;
        case 5:
        case 6:
            amendAny(ward, unit, must(ward.store->checklist("plain", 1)), random);
            break;
        case 7: {
            RoundRecord seen = ward.round(oneOf(20), oneOf(2)).withGap("item-2").without("item-3");
            seen.kind = RoundKind::SpotCheck;
            must(ward.store->saveRound(unit, seen, "QO"));
            break;
        }
        case 8:
            must(ward.store->noteChange(unit,
                {.id = "idea-" + std::to_string(oneOf(2)),
                    .title = "Tried at step " + std::to_string(step),
                    .from = firstDay,
                    .until = std::nullopt,
                    .items = {},
                    .hope = ""},
                "QO"));
            break;
        case 9:
        case 10:
        case 11:
            supply(ward, unit, oneOf(6), step);
            break;
        default: {
            // Mostly now, sometimes a paper round of before; the same shift twice is refused and no matter.
            auto round = ward.round(oneOf(20), oneOf(2));
            for (int i = 0; i < 12; ++i)
                if (oneOf(5) == 0)
                    round.withGap("item-" + std::to_string(i));
            (void)ward.store->saveRound(unit, round, "AB");
        }
        }
    }
    Chains chains;
    Database database(ward.address, Database::Access::ReadOnly);
    LedgerTable(database).forEach([&](const Record& record) { chains[record.station].push_back(record); });
    return chains;
}

/** The records in another order; each chain in its own. */
void arrive(Database& database, Chains chains, std::mt19937& random)
{
    LedgerTable ledger(database);
    Projector projector(database, database);
    for (const auto& [station, records] : chains)
        for (unsigned char number = 0; number < 255; ++number)
            if (aKey(number).id() == station)
                ledger.addStation(station, aKey(number).publicKey());
    while (!chains.empty()) {
        auto chain = std::next(chains.begin(), static_cast<std::ptrdiff_t>(random() % chains.size()));
        const Record record = chain->second.front();
        chain->second.pop_front();
        if (chain->second.empty())
            chains.erase(chain);
        ledger.insert(record);
        projector.apply(record, must(parseJson(record.body)));
    }
}

}

TEST_CASE("the projections are the same in whatever order the records of several stations arrive")
{
    for (unsigned seed = 1; seed <= 6; ++seed) {
        CAPTURE(seed);
        Ward ward;
        ward.store->signWith(aKey(1));
        const Chains chains = aDistrict(ward, seed);
        REQUIRE(ward.fault() == "");
        Database first(ward.address, Database::Access::ReadOnly);
        std::mt19937 random(seed);
        for (int i = 0; i < 4; ++i) {
            const auto other = Database::inMemory();
            migrate(*other, schemaSteps());
            other->run("PRAGMA foreign_keys = OFF"); // the station of the ward's own first records
            arrive(*other, chains, random);
            const auto fault = compareProjections(*other, first);
            REQUIRE_MESSAGE(!fault, (fault ? fault->where + ": " + fault->what : std::string()));
        }
    }
}

TEST_CASE("a replay into another database gives the rows that came one by one")
{
    Ward ward;
    const Chains chains = aDistrict(ward, 99);
    REQUIRE(chains.size() > 2);
    Database database(ward.address, Database::Access::ReadOnly);
    const auto replayed = Database::inMemory();
    migrate(*replayed, schemaSteps());
    Projector(database, *replayed).replayAll();
    CHECK_FALSE(compareProjections(database, *replayed).has_value());
}

TEST_CASE("a record of a kind that is not known here stays in the chain and projects nothing")
{
    Ward ward;
    ward.store->signWith(aKey(1));
    const RecordId last = ward.save(ward.round(0));
    ward.store.reset();
    {
        Database database(ward.address, Database::Access::ReadWrite);
        LedgerTable ledger(database);
        Record record{.station = last.station,
            .seq = last.seq + 1,
            .unit = ward.unit,
            .kind = "weather",
            .madeAt = ward.clock.now(),
            .actor = "AB",
            .body = R"({"sky":"clear"})",
            .prev = ledger.tip(last.station).hash};
        seal(record, aKey(1));
        ledger.insert(record);
        Projector(database, database).apply(record, must(parseJson(record.body)));
    }
    ward.reopen();
    CHECK(must(ward.store->verify()).records == 6);
    CHECK(ward.fault() == "");
    must(ward.store->rebuild());
    ward.store->signWith(aKey(1));
    CHECK(ward.save(ward.round(1)).seq == last.seq + 2);
    CHECK(ward.fault() == "");
}

TEST_CASE("rounds that come before their checklist take part in the gaps once it is there")
{
    Ward ward;
    ward.store->signWith(aKey(2));
    must(ward.store->adopt(ward.unit, aPlainAdoption(9, 2), "AB"));
    const Checklist second = must(ward.store->checklist("plain", 2));
    ward.store->signWith(aKey(1));
    must(ward.store->saveRound(
        ward.unit, aRound(second).on(firstDay).withGap("item-5").measuring("item-3", "27"), "AB"));
    const auto gaps = must(ward.store->openGaps(ward.unit));
    REQUIRE(gaps.size() == 1);
    Database first(ward.address, Database::Access::ReadOnly);
    std::deque<Record> records;
    LedgerTable(first).forEach([&](const Record& record) { records.push_back(record); });
    std::stable_sort(records.begin(), records.end(), [](const Record& a, const Record& b) {
        return (a.station == aKey(2).id()) < (b.station == aKey(2).id());
    });
    const auto other = Database::inMemory();
    migrate(*other, schemaSteps());
    LedgerTable ledger(*other);
    Projector projector(*other, *other);
    for (const Record& record : records) {
        ledger.insert(record);
        projector.apply(record, must(parseJson(record.body)));
    }
    const auto fault = compareProjections(*other, first);
    CHECK_MESSAGE(!fault, (fault ? fault->where + ": " + fault->what : std::string()));
}

TEST_CASE("the random districts have amended rounds, spot checks, ideas and actions that wait for their gap")
{
    std::map<std::string, int> counts;
    std::int64_t amended = 0;
    for (unsigned seed = 1; seed <= 6; ++seed) {
        Ward ward;
        ward.store->signWith(aKey(1));
        for (const auto& [station, records] : aDistrict(ward, seed))
            for (const Record& record : records)
                ++counts[record.kind];
        Database database(ward.address, Database::Access::ReadOnly);
        amended += database.integerOf("SELECT count(*) FROM round WHERE amended > 0");
    }
    CHECK(counts["round-amended"] > 20);
    CHECK(counts["observation"] > 10);
    CHECK(counts["note-of-change"] > 10);
    for (const char* kind : {"stock", "equipment", "warmer", "fridge-reading", "birth-expected", "handover"})
        CHECK_MESSAGE(counts[kind] > 3, kind);
    CHECK(amended > 10);
}
