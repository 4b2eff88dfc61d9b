// SPDX-License-Identifier: MIT
// bench_server [ROUNDS]: writing in bulk on a throw-away PostgreSQL. Rows of the table of rounds one by one, one by one
// without waiting (as the store sends them in a transaction) and as arrays with unnest; then a pack taken in.
#include "core/exchange/packimport.h"
#include "core/exchange/packwriter.h"
#include "core/store/transaction.h"
#include "tests/support/builders.h"
#include "tests/support/postgresserver.h"

#include <chrono>
#include <cstdio>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

constexpr int rows = 50'000;
constexpr int together = 1000;
const std::string outcomes(58, 'm');

double secondsOf(const std::function<void()>& run)
{
    const auto from = steady_clock::now();
    run();
    return duration<double>(steady_clock::now() - from).count();
}

void makeTable(Database& database)
{
    database.runScript("DROP TABLE IF EXISTS bulk; CREATE TABLE bulk (unit TEXT COLLATE \"C\", slot BIGINT, "
                       "outcomes TEXT, met BIGINT, readings TEXT, PRIMARY KEY (unit, slot))");
}

std::string unitOf(int row) { return "unit-" + std::to_string(row / 2000); }

void insert(Database& database, int row)
{
    database.prepare("INSERT INTO bulk (unit, slot, outcomes, met, readings) VALUES (?, ?, ?, ?, ?)")
        .bind(unitOf(row))
        .bind(row)
        .bind(outcomes)
        .bind(58)
        .bind("0=26400 20=80000")
        .run();
}

void oneByOne(Database& database)
{
    const Transaction transaction(database);
    for (int row = 0; row < rows / 10; ++row) {
        insert(database, row);
        database.integerOf("SELECT 1"); // waits for the answer
    }
}

void withoutWaiting(Database& database)
{
    Transaction transaction(database);
    for (int row = 0; row < rows; ++row)
        insert(database, row);
    transaction.commit();
}

void asArrays(Database& database)
{
    Transaction transaction(database);
    for (int from = 0; from < rows; from += together) {
        std::string columns[5];
        for (int row = from; row < from + together; ++row) {
            const std::string values[] = {unitOf(row), std::to_string(row), outcomes, "58", "\"0=26400 20=80000\""};
            for (std::size_t i = 0; i < std::size(columns); ++i)
                columns[i] += (row == from ? "{" : ",") + values[i];
        }
        Statement statement = database.prepare(
            "INSERT INTO bulk (unit, slot, outcomes, met, readings) SELECT * FROM unnest(CAST(CAST(? AS TEXT) AS TEXT[]), "
            "CAST(CAST(? AS TEXT) AS BIGINT[]), CAST(CAST(? AS TEXT) AS TEXT[]), CAST(CAST(? AS TEXT) AS BIGINT[]), "
            "CAST(CAST(? AS TEXT) AS TEXT[]))");
        for (std::string& column : columns)
            statement.bind(column + '}');
        statement.run();
    }
    transaction.commit();
}

void measure(const char* what, Database& database, int count, const std::function<void(Database&)>& write)
{
    makeTable(database);
    const double took = secondsOf([&] { write(database); });
    std::printf("    %-44s %8.0f rows/s\n", what, count / took);
}

void takeIn(const PostgresServer& server, const std::string& place, int rounds)
{
    const TempDir dir;
    FixedClock clock(sys_days(2020y / 1 / 1));
    const auto ward = must(Store::open(dir.file("ward.db"), clock));
    ward->signWith(aKey(1));
    addUnit(*ward, aUnit(), anAdoption());
    const Checklist checklist = must(ward->checklist("shift-readiness", 1));
    must(ward->together([&]() -> Result<void> {
        for (int n = 0; n < rounds; ++n) {
            RoundBuilder round(checklist);
            round.on(addDays(2020y / 1 / 1, n / 2), n % 2);
            round.withGap(checklist.item(static_cast<std::size_t>(n / 5 * 7) % checklist.itemCount()).id);
            const RoundRecord done = round.done();
            clock.set(done.finished);
            if (auto saved = ward->saveRound("sorrel-hill", done, "M. R."); !saved)
                return tl::unexpected(saved.error());
        }
        return {};
    }));
    must(writePack(*ward, {}, dir.file("ward.pack"), clock.now()));
    const auto district = must(Store::open(place, clock));
    const ImportWish wish{.trust = {aKey(1).id()}, .by = "M. R."};
    const double in = secondsOf([&] { must(importPack(*district, dir.file("ward.pack"), wish, clock.now())); });
    std::printf("    %-44s %8.0f rounds/s\n", "a pack taken in, everything verified", rounds / in);
    const double anew = secondsOf([&] { must(district->rebuild()); });
    std::printf("    %-44s %8.0f rounds/s\n", "all projections rebuilt", rounds / anew);
    server.run("VACUUM");
}

}

int main(int argc, char** argv)
{
    PostgresServer server;
    {
        Database database(server.freshPlace(), Database::Access::ReadWrite);
        std::printf("PostgreSQL, %d rows of five columns in one transaction\n", rows);
        measure("one by one", database, rows / 10, oneByOne);
        measure("one by one without waiting", database, rows, withoutWaiting);
        measure("as arrays of 1000 with unnest", database, rows, asArrays);
    }
    takeIn(server, server.freshPlace(), argc > 1 ? std::stoi(argv[1]) : 4000);
    return 0;
}
