// SPDX-License-Identifier: MIT
#include "core/store/database.h"
#include "core/store/sqlerror.h"
#include "core/store/transaction.h"

#include <cerrno>
#include <doctest/doctest.h>
#include <sqlite3.h>

using namespace cradlepost;

namespace {

std::unique_ptr<Database> aDatabase()
{
    auto database = Database::inMemory();
    database->run("CREATE TABLE t (i INTEGER, s TEXT, b BLOB) STRICT");
    return database;
}

}

TEST_CASE("every type of value comes back as it went in")
{
    const auto database = aDatabase();
    const std::array<unsigned char, 4> bytes{0, 1, 254, 255};
    const std::string text = std::string("क\0b", 5);
    database->prepare("INSERT INTO t VALUES (?, ?, ?)")
        .bind(std::int64_t{1} << 62)
        .bind(text)
        .bind(std::span<const unsigned char>(bytes))
        .run();
    Statement row = database->prepare("SELECT i, s, b FROM t");
    REQUIRE(row.next());
    CHECK(row.integer(0) == std::int64_t{1} << 62);
    CHECK(row.text(1) == text);
    CHECK(row.bytes<4>(2) == bytes);
    CHECK(row.bytes<6>(2) == std::array<unsigned char, 6>{0, 1, 254, 255, 0, 0});
    CHECK(row.type(0) == ColumnType::Integer);
    CHECK(row.type(1) == ColumnType::Text);
    CHECK(row.type(2) == ColumnType::Bytes);
    CHECK(row.columns() == 3);
    CHECK(row.columnName(1) == "s");
    CHECK_FALSE(row.next());
}

TEST_CASE("an empty text is a text and nothing is null")
{
    const auto database = aDatabase();
    database->prepare("INSERT INTO t VALUES (?, ?, ?)")
        .bind(std::optional<Instant>())
        .bind(std::string_view())
        .bindNull()
        .run();
    Statement row = database->prepare("SELECT i, s, b FROM t");
    REQUIRE(row.next());
    CHECK(row.isNull(0));
    CHECK(row.type(1) == ColumnType::Text);
    CHECK(row.text(1) == "");
    CHECK(row.isNull(2));
}

TEST_CASE("a statement can be used inside itself and again after it")
{
    const auto database = aDatabase();
    for (int i = 0; i < 3; ++i)
        database->prepare("INSERT INTO t (i) VALUES (?)").bind(i).run();
    const char* sql = "SELECT i FROM t ORDER BY i";
    int pairs = 0;
    for (int turn = 0; turn < 2; ++turn) {
        Statement outer = database->prepare(sql);
        while (outer.next()) {
            Statement inner = database->prepare(sql);
            while (inner.next())
                ++pairs;
        }
    }
    CHECK(pairs == 18);
}

TEST_CASE("many statements run one after the other, and the first fault ends them")
{
    const auto database = aDatabase();
    database->runScript("INSERT INTO t (i) VALUES (1); -- one; two\n INSERT INTO t (s) VALUES ('a;b');\n\n");
    CHECK(database->integerOf("SELECT count(*) FROM t") == 2);
    const auto failed = attempt(
        [&] { database->runScript("INSERT INTO t (i) VALUES (3); nonsense; INSERT INTO t (i) VALUES (4)"); });
    REQUIRE_FALSE(failed.has_value());
    CHECK(failed.error().message.find("nonsense") != std::string::npos);
    CHECK(database->integerOf("SELECT count(*) FROM t") == 3);
}

TEST_CASE("a transaction that is dropped takes everything back, one inside another only its own")
{
    const auto database = aDatabase();
    {
        const Transaction dropped(*database);
        database->run("INSERT INTO t (i) VALUES (1)");
    }
    CHECK(database->integerOf("SELECT count(*) FROM t") == 0);
    {
        Transaction outer(*database);
        database->run("INSERT INTO t (i) VALUES (1)");
        {
            const Transaction dropped(*database);
            database->run("INSERT INTO t (i) VALUES (2)");
        }
        {
            Transaction kept(*database);
            database->run("INSERT INTO t (i) VALUES (3)");
            kept.commit();
        }
        outer.commit();
    }
    CHECK(database->integerOf("SELECT sum(i) FROM t") == 4);
    CHECK_FALSE(database->inTransaction());
}

TEST_CASE("SQLite's codes become ours")
{
    const auto codeOf
        = [](int code, int systemErrno) { return sqliteError(code, systemErrno, "/x", "why").code; };
    CHECK(codeOf(SQLITE_BUSY, 0) == ErrorCode::Locked);
    CHECK(codeOf(SQLITE_BUSY_SNAPSHOT, 0) == ErrorCode::Locked);
    CHECK(codeOf(SQLITE_READONLY_DBMOVED, 0) == ErrorCode::ReadOnly);
    CHECK(codeOf(SQLITE_FULL, 0) == ErrorCode::DiskFull);
    CHECK(codeOf(SQLITE_CORRUPT_INDEX, 0) == ErrorCode::Damaged);
    CHECK(codeOf(SQLITE_IOERR_SHORT_READ, 0) == ErrorCode::Damaged);
    CHECK(codeOf(SQLITE_NOTADB, 0) == ErrorCode::NotADatabase);
    CHECK(codeOf(SQLITE_IOERR_WRITE, EFBIG) == ErrorCode::DiskFull);
    CHECK(codeOf(SQLITE_IOERR_WRITE, EROFS) == ErrorCode::ReadOnly);
    CHECK(codeOf(SQLITE_IOERR_READ, ENOENT) == ErrorCode::Io);
    CHECK(codeOf(SQLITE_CANTOPEN, ENOENT) == ErrorCode::NotFound);
    CHECK(codeOf(SQLITE_CANTOPEN, EACCES) == ErrorCode::ReadOnly);
    CHECK(codeOf(SQLITE_ERROR, 0) == ErrorCode::Io);
}

TEST_CASE("an error says what, where and what to do")
{
    const Error error = sqliteError(SQLITE_FULL, 0, "/ward/one.db", "database or disk is full");
    CHECK(error.message.find("/ward/one.db") != std::string::npos);
    CHECK(error.message.find("no room") != std::string::npos);
    CHECK(error.message.find("database or disk is full") != std::string::npos);
    CHECK_FALSE(error.hint.empty());
}
