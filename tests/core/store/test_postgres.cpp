// SPDX-License-Identifier: MIT
#include "core/store/migration.h"
#include "core/store/postgresaddress.h"
#include "core/store/postgresconnection.h"
#include "core/store/transaction.h"
#include "ward.h"

#include <filesystem>
#include <fstream>
#include <mutex>
#include <thread>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

Result<void> tried(const std::string& address, const std::string& sql)
{
    return attempt([&] { Database(address, Database::Access::ReadWrite).run(sql); });
}

std::vector<std::string> sqlFilesIn(const std::string& dialect)
{
    std::vector<std::string> names;
    for (const auto& file :
        std::filesystem::directory_iterator(CRADLEPOST_SOURCE_DIR "/resources/sql/" + dialect))
        if (std::isdigit(static_cast<unsigned char>(file.path().filename().string().front())) != 0)
            names.push_back(file.path().filename().string());
    std::sort(names.begin(), names.end());
    return names;
}

std::vector<std::string> columnNames(Database& database, const std::string& table)
{
    Statement rows = database.prepare("SELECT * FROM " + table + " LIMIT 1");
    rows.next();
    std::vector<std::string> names;
    for (int i = 0; i < rows.columns(); ++i)
        names.push_back(rows.columnName(i));
    return names;
}

const std::vector<std::string> tables{"record", "station", "draft", "station_trust", "clock_back", "unit",
    "shift_pattern", "people", "checklist", "adoption", "round", "round_month", "amendment", "gap", "gap_action",
    "gap_progress", "change_idea", "supply_fact"};

}

TEST_CASE("a server has the schema steps, tables and columns of a file")
{
    CHECK(sqlFilesIn("sqlite") == sqlFilesIn("postgresql"));
    const Ward ward;
    Database server(ward.address, Database::Access::ReadOnly);
    const auto file = Database::inMemory();
    migrate(*file, schemaSteps());
    for (const std::string& table : tables)
        CHECK_MESSAGE(columnNames(server, table) == columnNames(*file, table), table);
}

TEST_CASE("on a server a week of work verifies and is the same after a rebuild")
{
    Ward ward;
    for (int day = 0; day < 7; ++day) {
        const RecordId id
            = ward.save(ward.round(day).withGap("item-" + std::to_string(day)).withGap("item-9"));
        ward.save(ward.round(day).rechecking(id, {"item-9"}).finishedAfter(std::chrono::hours(3)));
    }
    ward.stockUp();
    CHECK(ward.fault() == "");
    const auto gaps = must(ward.store->gapsOf(ward.unit, "item-9"));
    must(ward.store->rebuild());
    CHECK(ward.fault() == "");
    CHECK(must(ward.store->gapsOf(ward.unit, "item-9")) == gaps);
}

TEST_CASE("a value changed behind the program's back on a server is found and named")
{
    Ward ward;
    ward.save(ward.round(0).withGap("item-1"));
    REQUIRE(ward.fault() == "");
    sharedServer().run("UPDATE gap SET owner = 'ZZ'");
    CHECK(ward.fault().starts_with("gap sorrel-hill "));
    must(ward.store->rebuild());
    CHECK(ward.fault() == "");
    sharedServer().run("ALTER TABLE record DISABLE TRIGGER record_keeps_rows");
    CHECK(ward.fault() == "schema: record_keeps_rows is not as this program made it");
    sharedServer().run("UPDATE record SET actor = 'ZZ' WHERE seq = 2");
    CHECK(ward.fault().starts_with("record "));
    CHECK(ward.fault().find("/2: ") != std::string::npos);
}

TEST_CASE("on a server nobody changes or deletes a record, the owner neither")
{
    Ward ward;
    ward.save(ward.round(0));
    for (const char* sql : {"DELETE FROM record", "UPDATE record SET actor = 'ZZ'", "TRUNCATE record CASCADE",
             "DELETE FROM station", "UPDATE station SET station = 'x'",
             "INSERT INTO record SELECT * FROM record ON CONFLICT (station, seq) DO UPDATE SET actor = "
             "'ZZ'"}) {
        const auto done = tried(ward.address, sql);
        REQUIRE_MESSAGE(!done.has_value(), sql);
        CHECK_MESSAGE(done.error().message.find("append-only") != std::string::npos, done.error().message);
    }
    CHECK(ward.fault() == "");
}

TEST_CASE("a station's role appends and reads, and may not change or delete; a reviewer's role only reads")
{
    Ward ward;
    ward.save(ward.round(0));
    std::ifstream file(CRADLEPOST_SOURCE_DIR "/resources/sql/postgresql/roles.sql");
    sharedServer().run(std::string(std::istreambuf_iterator<char>(file), {}));
    sharedServer().run("DROP ROLE IF EXISTS ward_pc; DROP ROLE IF EXISTS quality; "
                       "CREATE ROLE ward_pc LOGIN IN ROLE cradlepost_station; "
                       "CREATE ROLE quality LOGIN IN ROLE cradlepost_reviewer");
    const std::string station = sharedServer().lastPlace("ward_pc");
    const auto store = must(Store::open(station, ward.clock));
    store->signWith(aKey(3));
    const auto round = ward.round(1).withGap("item-1").done();
    const RecordId id = must(store->saveRound(ward.unit, round, "AB"));
    must(store->saveDraft(ward.round(2).draft()));
    must(store->dropDraft(ward.unit, RoundKind::Shift));
    must(store->saveRound(ward.unit, ward.round(2), "AB")); // closes the gap
    must(store->adopt(ward.unit, aPlainAdoption(12, 2), "AB"));
    CHECK(must(store->round(id)).round == round);
    for (const std::string& table : {std::string("record"), std::string("station")}) {
        for (const std::string& sql :
            {"DELETE FROM " + table, "UPDATE " + table + " SET station = 'x'", "TRUNCATE " + table,
                "ALTER TABLE " + table + " DISABLE TRIGGER ALL", "DROP TABLE " + table}) {
            const auto done = tried(station, sql);
            REQUIRE_MESSAGE(!done.has_value(), sql);
            CHECK_MESSAGE(done.error().code == ErrorCode::ReadOnly, done.error().message);
        }
    }
    CHECK_FALSE(tried(station, "DELETE FROM round").has_value());
    CHECK(store->rebuild().error().code == ErrorCode::ReadOnly);
    const std::string reviewer = sharedServer().lastPlace("quality");
    const auto reader = must(Store::open(reviewer, ward.clock, OpenMode::ReadOnly));
    CHECK(must(reader->rounds(ward.unit, ward.slot(0), ward.slot(9))).size() == 3);
    CHECK(textOf(reader->verify()) == "");
    CHECK(tried(reviewer, "INSERT INTO unit SELECT * FROM unit").error().code == ErrorCode::ReadOnly);
    CHECK(tried(reviewer, "DELETE FROM draft").error().code == ErrorCode::ReadOnly);
}

TEST_CASE("a password in the address is in no message and no name")
{
    const std::string secret = "s3cr%20et!word";
    const std::string plain = "s3cr et!word";
    const std::string addresses[] = {"postgresql://who:" + secret + "@127.0.0.1:1/ward",
        "postgresql://127.0.0.1:1/ward?user=who&password=" + secret,
        "postgresql://who:" + secret + "@nowhere.invalid/ward?sslmode=" + secret,
        "postgresql://who:" + secret + "@[broken", "postgresql://who:" + secret + "@h/d?nonsense=" + secret};
    FixedClock clock(fromMs(0));
    for (const std::string& address : addresses) {
        CAPTURE(address);
        for (const OpenMode mode : {OpenMode::ReadWrite, OpenMode::ReadOnly}) {
            const auto opened = Store::open(address, clock, mode);
            REQUIRE_FALSE(opened.has_value());
            for (const std::string& said :
                {opened.error().message, opened.error().hint, shownAddress(address)}) {
                CHECK_MESSAGE(said.find("s3cr") == std::string::npos, said);
                CHECK_MESSAGE(said.find("et!word") == std::string::npos, said);
            }
        }
    }
    CHECK(shownAddress(addresses[0]) == "postgresql://who@127.0.0.1:1/ward");
    CHECK(passwordIn(addresses[0]) == plain);
}

TEST_CASE("who may not log in and what is not there is told from a server that does not answer")
{
    const std::string server = sharedServer().address();
    const auto messageOf = [](const std::string& address) {
        const auto opened = attempt([&] { Database(address, Database::Access::ReadOnly); });
        return opened ? std::string() : opened.error().message;
    };
    std::string other = server;
    other.replace(other.find("/postgres?"), 9, "/elsewhere");
    CHECK(messageOf(other).find("has no such database") != std::string::npos);
    CHECK(
        messageOf(sharedServer().address("stranger")).find("does not let this user in") != std::string::npos);
    CHECK(messageOf("postgresql://127.0.0.1:1/ward").find("does not answer") != std::string::npos);
}

TEST_CASE("a database on a server that other programs use is refused; backup and restore name its own tools")
{
    FixedClock clock(fromMs(0));
    const std::string place = sharedServer().freshPlace();
    sharedServer().run("CREATE TABLE theirs (a BIGINT)");
    CHECK(Store::open(place, clock).error().code == ErrorCode::NotADatabase);
    Ward ward;
    CHECK(ward.store->backup(ward.dir.file("copy.db")).error().hint.find("pg_dump") != std::string::npos);
    CHECK(Store::restore(ward.dir.file("copy.db"), ward.address, clock).error().hint.find("pg_restore")
        != std::string::npos);
}

TEST_CASE("two programs that open an empty place at once make one schema")
{
    const std::string place = sharedServer().freshPlace();
    FixedClock clock(fromMs(0));
    std::string faults;
    std::vector<std::thread> programs;
    std::mutex guard;
    for (int i = 0; i < 4; ++i)
        programs.emplace_back([&] {
            const auto opened = Store::open(place, clock);
            const std::lock_guard lock(guard);
            faults += opened ? "" : opened.error().message;
        });
    for (std::thread& program : programs)
        program.join();
    CHECK(faults == "");
}

TEST_CASE("what a transaction sends without waiting fails at the latest with its end, and takes all back")
{

    Database database(sharedServer().freshPlace(), Database::Access::ReadWrite);
    database.runScript("CREATE TABLE t (i BIGINT PRIMARY KEY)");
    const auto failed = attempt([&] {
        Transaction transaction(database);
        database.prepare("INSERT INTO t VALUES (?)").bind(1).run();
        database.prepare("INSERT INTO t VALUES (?)").bind(1).run();
        database.prepare("INSERT INTO t VALUES (?)").bind(2).run();
        transaction.commit();
    });
    REQUIRE_FALSE(failed.has_value());
    CHECK(failed.error().message.find("23505") != std::string::npos);
    CHECK(database.integerOf("SELECT count(*) FROM t") == 0);
    {
        Transaction transaction(database);
        for (int i = 0; i < 3000; ++i)
            database.prepare("INSERT INTO t VALUES (?)").bind(i).run();
        transaction.commit();
    }
    const Snapshot snapshot(database);
    Statement rows = database.scan("SELECT i FROM t WHERE i >= ? ORDER BY i");
    rows.bind(5);
    std::int64_t expected = 5;
    while (rows.next())
        REQUIRE(rows.integer(0) == expected++);
    CHECK(expected == 3000);
}

TEST_CASE("a server that was stopped is told plainly, and the work goes on once it is there again")
{
    Ward ward;
    ward.save(ward.round(0));
    const Draft draft = ward.round(1).draft();
    must(ward.store->saveDraft(draft));
    sharedServer().stop();
    const auto refused = ward.store->saveRound(ward.unit, ward.round(1), "AB");
    REQUIRE_FALSE(refused.has_value());
    CHECK(refused.error().message.find("does not answer") != std::string::npos);
    CHECK_FALSE(refused.error().hint.empty());
    CHECK_FALSE(ward.store->units().has_value());
    sharedServer().start();
    CHECK(must(ward.store->drafts(ward.unit)).size() == 1);
    CHECK(must(ward.store->drafts(ward.unit)).front() == draft);
    ward.save(ward.round(1));
    CHECK(must(ward.store->drafts(ward.unit)).empty());
    CHECK(ward.fault() == "");
}

TEST_CASE("a draft that goes on while the server is away is kept on this computer and comes back with it")
{
    Ward ward;
    must(ward.store->saveDraft(ward.round(0).without("item-2").draft()));
    const Draft further = ward.round(0).withGap("item-2").draft();
    ward.clock.advance(std::chrono::minutes(1));
    sharedServer().stop();
    const auto kept = ward.store->saveDraft(further);
    REQUIRE_FALSE(kept.has_value());
    CHECK(kept.error().hint.starts_with("What was entered is kept on this computer."));
    ward.store.reset(); // the program ends, or the power fails
    CHECK_FALSE(Store::open(ward.address, ward.clock).has_value());
    sharedServer().start();
    ward.reopen();
    const auto drafts = must(ward.store->drafts(ward.unit));
    REQUIRE(drafts.size() == 1);
    CHECK(drafts.front() == further);
    ward.reopen();
    CHECK(must(ward.store->drafts(ward.unit)) == drafts);
    ward.save(ward.round(0).withGap("item-2"));
    CHECK(must(ward.store->drafts(ward.unit)).empty());
    CHECK(ward.fault() == "");
}

TEST_CASE("whoever listens is told when a record was written, and listens on after the server was away")
{
    Ward ward;
    PostgresConnection listener(ward.address, true);
    listener.listen("cradlepost");
    CHECK(listener.takeNotifications() == 0);
    ward.save(ward.round(0));
    const auto heard = [&] {
        for (int turn = 0; turn < 500; ++turn) {
            if (listener.takeNotifications() > 0)
                return true;
            std::this_thread::sleep_for(std::chrono::milliseconds(10));
        }
        return false;
    };
    CHECK(heard());
    sharedServer().stop();
    sharedServer().start();
    CHECK_FALSE(attempt([&] { listener.runScript("SELECT 1"); }).has_value());
    listener.runScript("SELECT 1");
    ward.save(ward.round(1));
    CHECK(heard());
}
