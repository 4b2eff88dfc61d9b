// SPDX-License-Identifier: MIT
#include "core/store/failure.h"
#include "core/store/migration.h"
#include "ward.h"

#include <filesystem>

using namespace cradlepost;
using namespace cradlepost::test;
namespace fs = std::filesystem;

namespace {

std::vector<SchemaStep> stepsAnd(const std::string& script)
{
    auto steps = schemaSteps();
    steps.push_back({.number = steps.back().number + 1, .script = script});
    return steps;
}

const std::string good
    = "CREATE TABLE extra (a INTEGER); INSERT INTO extra VALUES (7);"
      "CREATE TRIGGER extra_stays BEFORE DELETE ON extra BEGIN SELECT RAISE(ABORT, 'no; never'); END;";

Error errorOf(const std::function<void()>& run)
{
    const auto result = attempt(run);
    REQUIRE_FALSE(result.has_value());
    return result.error();
}

}

TEST_CASE("the steps of the program are numbered from 1 without holes")
{
    const auto steps = schemaSteps();
    REQUIRE(steps.size() == static_cast<std::size_t>(newestSchema()));
    for (std::size_t i = 0; i < steps.size(); ++i)
        CHECK(steps[i].number == static_cast<int>(i) + 1);
}

TEST_CASE("migration, fresh: an empty file takes all steps and no copy is kept")
{
    const TempDir dir;
    Database database(dir.file("a.db"), Database::Access::ReadWrite);
    CHECK(migrate(database, stepsAnd(good)) == MigrationOutcome::Fresh);
    CHECK(schemaVersion(database) == newestSchema() + 1);
    CHECK(database.integerOf("SELECT a FROM extra") == 7);
    CHECK_FALSE(fs::exists(dir.file("a.db.before-1")));
}

TEST_CASE("migration, current: nothing is done")
{
    const TempDir dir;
    Database database(dir.file("a.db"), Database::Access::ReadWrite);
    migrate(database, schemaSteps());
    CHECK(migrate(database, schemaSteps()) == MigrationOutcome::Current);
}

TEST_CASE("migration, older: missing steps are done and the file before stands beside it")
{
    Ward ward;
    const RecordId id = ward.save(ward.round(0));
    ward.store.reset();
    const std::string copy = ward.dir.file("ward.db.before-" + std::to_string(newestSchema() + 1));
    {
        Database database(ward.dir.file("ward.db"), Database::Access::ReadWrite);
        CHECK(migrate(database, stepsAnd(good)) == MigrationOutcome::Older);
        CHECK(database.integerOf("SELECT a FROM extra") == 7);
        CHECK(database.integerOf("SELECT count(*) FROM record") == 5);
        CHECK(errorOf([&] { database.run("DELETE FROM extra"); }).message.find("no; never")
            != std::string::npos);
    }
    const auto before = must(Store::open(copy, ward.clock));
    CHECK(must(before->round(id)).id == id);
    CHECK_FALSE(must(before->verify()).fault.has_value());
}

TEST_CASE("a file that version 1 wrote is brought up, its projections filled anew, and nothing of it is lost")
{
    const TempDir dir;
    fs::copy_file(CRADLEPOST_SOURCE_DIR "/tests/core/store/files/version-1.db", dir.file("old.db"));
    FixedClock clock(std::chrono::sys_days(firstDay) + std::chrono::days(20));
    {
        Database old(dir.file("old.db"), Database::Access::ReadOnly);
        REQUIRE(schemaVersion(old) == 1);
        REQUIRE(old.integerOf("SELECT count(*) FROM round") == 11);
    }
    CHECK(Store::open(dir.file("old.db"), clock, OpenMode::ReadOnly).error().code == ErrorCode::ReadOnly);
    const auto store = must(Store::open(dir.file("old.db"), clock));
    CHECK(textOf(store->verify()) == "");
    const auto rows = must(store->rounds("sorrel-hill", 0, slotOf(addDays(firstDay, 30), 0)));
    REQUIRE(rows.size() == 11);
    for (const RoundRow& row : rows) {
        CHECK(row.recorded >= row.finished);
        CHECK_FALSE(row.fromPaper);
        CHECK(row.amendments == 0);
        CHECK_FALSE(row.amendedAt.has_value());
    }
    CHECK(must(store->drafts("sorrel-hill")).size() == 1);
    CHECK(
        must(store->openGaps("sorrel-hill")).size() + must(store->closedGaps("sorrel-hill", fromMs(0))).size()
        > 4);
    CHECK(fs::exists(dir.file("old.db.before-2")));
}

TEST_CASE("when the replay after a step fails, the file stays of the version it had")
{
    Ward ward;
    ward.store.reset();
    Database database(ward.dir.file("ward.db"), Database::Access::ReadWrite);
    auto steps = stepsAnd("DELETE FROM round");
    steps.back().replays = true;
    const auto fails = [](Database&) { refuse(ErrorCode::Io, "cut in the middle"); };
    CHECK(errorOf([&] { migrate(database, steps, fails); }).message == "cut in the middle");
    CHECK(schemaVersion(database) == newestSchema());
    int replays = 0;
    CHECK(migrate(database, steps, [&](Database&) { ++replays; }) == MigrationOutcome::Older);
    CHECK(replays == 1);
}

TEST_CASE("migration, newer: a file of a later version is refused and not touched")
{
    Ward ward;
    ward.store.reset();
    {
        Database database(ward.dir.file("ward.db"), Database::Access::ReadWrite);
        migrate(database, stepsAnd(good));
    }
    for (const OpenMode mode : {OpenMode::ReadWrite, OpenMode::ReadOnly}) {
        const auto opened = Store::open(ward.dir.file("ward.db"), ward.clock, mode);
        REQUIRE_FALSE(opened.has_value());
        CHECK(opened.error().code == ErrorCode::NewerSchema);
        CHECK(opened.error().message.find(ward.dir.file("ward.db")) != std::string::npos);
        CHECK_FALSE(opened.error().hint.empty());
    }
    Database database(ward.dir.file("ward.db"), Database::Access::ReadWrite);
    CHECK(database.integerOf("SELECT a FROM extra") == 7);
}

TEST_CASE("migration, failed half-way: the file is as it was, and the next try succeeds")
{
    Ward ward;
    ward.save(ward.round(0));
    ward.store.reset();
    Database database(ward.dir.file("ward.db"), Database::Access::ReadWrite);
    const auto broken = stepsAnd("CREATE TABLE extra (a INTEGER); INSERT INTO nowhere VALUES (1);");
    CHECK(errorOf([&] { migrate(database, broken); }).message.find("nowhere") != std::string::npos);
    CHECK(schemaVersion(database) == newestSchema());
    CHECK(database.integerOf("SELECT count(*) FROM sqlite_schema WHERE name = 'extra'") == 0);
    CHECK(database.integerOf("SELECT count(*) FROM record") == 5);
    CHECK_FALSE(database.inTransaction());
    CHECK(migrate(database, stepsAnd(good)) == MigrationOutcome::Older);
}

TEST_CASE("a database of another program is refused and not touched")
{
    const TempDir dir;
    {
        Database other(dir.file("other.db"), Database::Access::ReadWrite);
        other.runScript("CREATE TABLE theirs (a); PRAGMA user_version = 0");
    }
    FixedClock clock(fromMs(0));
    CHECK(Store::open(dir.file("other.db"), clock).error().code == ErrorCode::NotADatabase);
    {
        Database other(dir.file("other.db"), Database::Access::ReadWrite);
        CHECK(other.textOf("PRAGMA journal_mode") == "delete");
        other.run("PRAGMA user_version = 1");
    }
    CHECK(Store::open(dir.file("other.db"), clock).error().code == ErrorCode::NotADatabase);
}

TEST_CASE("an older file is not brought up while it is only read")
{
    const TempDir dir;
    {
        Database database(dir.file("empty.db"), Database::Access::ReadWrite);
        database.runScript("PRAGMA journal_mode = WAL");
    }
    FixedClock clock(fromMs(0));
    const auto opened = Store::open(dir.file("empty.db"), clock, OpenMode::ReadOnly);
    REQUIRE_FALSE(opened.has_value());
    CHECK(opened.error().code == ErrorCode::ReadOnly);
    CHECK(Store::open(dir.file("missing.db"), clock, OpenMode::ReadOnly).error().code == ErrorCode::NotFound);
    CHECK_FALSE(fs::exists(dir.file("missing.db")));
}
