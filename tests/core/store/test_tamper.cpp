// SPDX-License-Identifier: MIT
#include "core/store/database.h"
#include "core/store/projector.h"
#include "tamper.h"
#include "ward.h"

#include <filesystem>

using namespace cradlepost;
using namespace cradlepost::test;
namespace fs = std::filesystem;

namespace {

/** A fortnight in which every table gets rows. */
void liveAFortnight(Ward& ward)
{
    std::mt19937 random(7);
    for (int day = 0; day < 14; ++day) {
        auto round = ward.round(day);
        for (int i = 0; i < 12; ++i)
            if (random() % 6 == 0)
                round.withGap("item-" + std::to_string(i));
        const RecordId id = ward.save(round);
        ward.save(ward.round(day).rechecking(id, {"item-0", "item-5"}).finishedAfter(std::chrono::hours(3)));
    }
    const auto open = must(ward.store->openGaps(ward.unit));
    for (const Gap& gap : open)
        must(ward.store->actOnGap(ward.unit,
            {.item = gap.item, .nth = gap.nth, .owner = "CD", .due = std::nullopt, .remark = "ordered"},
            "AB"));
    const RecordId last = must(ward.store->rounds(ward.unit, ward.slot(13), ward.slot(14))).front().id;
    const RoundRecord first = must(ward.store->firstRecorded(last)).round;
    auto answers = first.answers;
    answers[1] = GapFound{GapReason::NotClean};
    must(ward.store->amendRound(
        last, must(withAnswers(ward.checklist, aCalendar().zone(), first, answers)), "wrong shelf", "QO"));
    RoundRecord seen = ward.round(13).withGap("item-7");
    seen.kind = RoundKind::SpotCheck;
    must(ward.store->saveRound(ward.unit, seen, "QO"));
    must(ward.store->noteChange(ward.unit,
        {.id = "", .title = "Check at handover", .from = firstDay, .until = {}, .items = {"item-1"}, .hope = ""},
        "QO"));
    ward.stockUp();
    ward.clock.advance(-std::chrono::hours(5));
    must(ward.store->setPeople(ward.unit, {{.initials = "EF", .role = "midwife"}}, "AB"));
    must(ward.store->saveDraft(ward.round(20).draft()));
}

/** The name of a row begins with that of its table, and a record is only ever named as record or station. */
bool names(const Fault& fault, std::string table)
{
    std::replace(table.begin(), table.end(), '_', '-');
    if (table == "record" || table == "station")
        return fault.where.starts_with("record ") || fault.where.starts_with("station ");
    return fault.where.starts_with(table + ' ');
}

}

TEST_CASE("one value changed in any column of any table is found and its row is named")
{
    Ward ward;
    liveAFortnight(ward);
    REQUIRE(ward.fault() == "");
    ward.store.reset();
    std::vector<std::string> tables{"record", "station"};
    for (const ProjectionTable& table : projectionTables())
        tables.emplace_back(table.name);
    std::mt19937 random(11);
    int changes = 0;
    for (const std::string& table : tables) {
        for (const std::string& column : columnsOf(ward.dir.file("ward.db"), table)) {
            for (int row = 0; row < 3; ++row) {
                fs::copy_file(
                    ward.dir.file("ward.db"), ward.dir.file("hurt.db"), fs::copy_options::overwrite_existing);
                const std::string what = changeValue(ward.dir.file("hurt.db"), table, column, random);
                CAPTURE(table);
                CAPTURE(column);
                CAPTURE(what);
                const auto store
                    = must(Store::open(ward.dir.file("hurt.db"), ward.clock, OpenMode::ReadOnly));
                const auto verified = store->verify();
                REQUIRE_MESSAGE(verified.has_value(), verified.error().message);
                REQUIRE(verified->fault.has_value());
                CHECK_MESSAGE(names(*verified->fault, table), verified->fault->where);
                ++changes;
            }
        }
    }
    CHECK(changes > 200);
    CHECK(textOf(must(Store::open(ward.dir.file("ward.db"), ward.clock))->verify()) == "");
}

TEST_CASE("a changed draft is found")
{
    Ward ward;
    must(ward.store->saveDraft(ward.round(0).draft()));
    ward.store.reset();
    {
        Database database(ward.dir.file("ward.db"), Database::Access::ReadWrite);
        database.run("UPDATE draft SET body = substr(body, 2)");
    }
    ward.reopen();
    CHECK(ward.fault().starts_with("draft sorrel-hill/shift: "));
}

TEST_CASE("rows that are missing, doubled or of nobody's making are found")
{
    const std::pair<const char*, const char*> changes[] = {
        {"DELETE FROM round WHERE slot = (SELECT max(slot) FROM round)", "round sorrel-hill 2026-11-14/0"},
        {"DELETE FROM gap WHERE nth = 1 AND item = (SELECT min(item) FROM gap)", "gap sorrel-hill "},
        {"DELETE FROM people", "people sorrel-hill"},
        {"INSERT INTO unit SELECT 'other', name, zone, level, at, station, seq FROM unit", "unit other"},
        {"INSERT INTO clock_back VALUES ('nobody', 1, 5)", "clock-back nobody 1"},
        {"INSERT INTO station VALUES ('nobody', zeroblob(32))", "station nobody"},
        {"DROP TRIGGER record_keeps_rows", "schema"},
    };
    Ward ward;
    liveAFortnight(ward);
    ward.store.reset();
    for (const auto& [sql, where] : changes) {
        CAPTURE(sql);
        fs::copy_file(
            ward.dir.file("ward.db"), ward.dir.file("hurt.db"), fs::copy_options::overwrite_existing);
        {
            Database database(ward.dir.file("hurt.db"), Database::Access::ReadWrite);
            database.run(sql);
        }
        const auto store = must(Store::open(ward.dir.file("hurt.db"), ward.clock));
        CHECK_MESSAGE(textOf(store->verify()).starts_with(where), textOf(store->verify()));
    }
}

TEST_CASE("records taken out of a chain or put in another order are found")
{
    const std::pair<const char*, const char*> changes[] = {
        {"DELETE FROM record WHERE seq = 9", "/10: record 9 is missing before it"},
        {"DELETE FROM record WHERE seq = 1", "/2: record 1 is missing before it"},
        {"UPDATE record SET seq = 1000 WHERE seq = 9; UPDATE record SET seq = 9 WHERE seq = 10; "
         "UPDATE record SET seq = 10 WHERE seq = 1000",
            "/9: it does not follow the record before it (prev)"},
        {"UPDATE record SET seq = seq + 1 WHERE seq = (SELECT max(seq) FROM record)", "is missing before it"},
    };
    Ward ward;
    liveAFortnight(ward);
    ward.store.reset();
    for (const auto& [sql, what] : changes) {
        CAPTURE(sql);
        fs::copy_file(
            ward.dir.file("ward.db"), ward.dir.file("hurt.db"), fs::copy_options::overwrite_existing);
        withoutTriggers(ward.dir.file("hurt.db"), sql);
        const auto store = must(Store::open(ward.dir.file("hurt.db"), ward.clock));
        const std::string fault = textOf(store->verify());
        CHECK_MESSAGE(fault.starts_with("record "), fault);
        CHECK_MESSAGE(fault.find(what) != std::string::npos, fault);
    }
}

TEST_CASE("a projection that went wrong is right again after a rebuild")
{
    Ward ward;
    liveAFortnight(ward);
    ward.store.reset();
    withoutTriggers(ward.dir.file("ward.db"),
        "UPDATE gap SET owner = 'ZZ'; UPDATE round SET outcomes = replace(outcomes, 'g', 'm'); DELETE FROM "
        "adoption");
    ward.reopen();
    CHECK(ward.fault() != "");
    must(ward.store->rebuild());
    CHECK(ward.fault() == "");
}

TEST_CASE("one bit turned at 200 places of the file is found each time and never crashes")
{
    Ward ward;
    liveAFortnight(ward);
    ward.store.reset();
    const std::string path = ward.dir.file("ward.db");
    {
        Database database(path, Database::Access::ReadWrite);
        database.run("PRAGMA wal_checkpoint(TRUNCATE)");
    }
    const auto cells = cellsOf(path);
    REQUIRE(cells.size() > 80);
    std::mt19937 random(13);
    int found = 0;
    for (int i = 0; i < 200; ++i) {
        const Cell& cell = cells[random() % cells.size()];
        const auto at = cell.from + static_cast<std::int64_t>(random() % static_cast<unsigned>(cell.size));
        fs::copy_file(path, ward.dir.file("hurt.db"), fs::copy_options::overwrite_existing);
        turnBit(ward.dir.file("hurt.db"), at, static_cast<int>(random() % 8));
        CAPTURE(cell.table);
        CAPTURE(at - cell.from);
        const auto store = Store::open(ward.dir.file("hurt.db"), ward.clock, OpenMode::ReadOnly);
        if (!store) {
            CHECK(store.error().code == ErrorCode::Damaged);
            ++found;
            continue;
        }
        const auto verified = (*store)->verify();
        const bool named
            = verified ? verified->fault.has_value() : verified.error().code == ErrorCode::Damaged;
        CHECK(named);
        found += named ? 1 : 0;
    }
    CHECK(found == 200);
}
