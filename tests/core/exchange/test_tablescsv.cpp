// SPDX-License-Identifier: MIT
#include "core/base/csv.h"
#include "core/exchange/tablecell.h"
#include "core/exchange/tablescsv.h"
#include "tests/support/builders.h"
#include "tests/support/sampletables.h"

#include <cmath>
#include <doctest/doctest.h>
#include <map>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

/** "table/row/column" to value, of what csvOfTables wrote. */
std::map<std::string, std::string> pivot(const std::string& csv)
{
    std::map<std::string, std::string> cells;
    const CsvTable table = must(readCsv(csv));
    for (const auto& row : table.rows)
        cells[row[0].text + '/' + row[1].text + '/' + row[2].text] = row[3].text;
    return cells;
}

}

TEST_CASE("The CSV holds every known cell in full precision, and what the tables are about")
{
    const auto cells = pivot(csvOfTables(aTableBook()));
    CHECK(cells.at("about/1/ledgerHead") == "9f3ac2d17b");
    CHECK(cells.at("about/1/lastDay") == "2026-10-31");
    CHECK(cells.at("cautions/2/text") == "Limits are defaults.");
    CHECK(cells.at("lost-readiness/1/item") == "kits-whole");
    CHECK(cells.at("lost-readiness/1/share") == numberText(27.0 / 88.0));
    CHECK(cells.at("lost-readiness/1/opened") == "2026-10-12T02:30:00Z");
    CHECK(cells.at("lost-readiness/2/open") == "0");
    CHECK(cells.count("lost-readiness/3/share") == 0);
}

TEST_CASE("A text that a spreadsheet would run as a formula is disarmed, a negative number is not")
{
    TableBook book = aTableBook();
    book.tables = {{.id = "t",
        .columns = {{"a"}, {"b", ColumnKind::Number}},
        .rows = {{std::string("+1"), -2.5}, {std::string("@x"), -0.5}, {std::string("plain"), 1.0}}}};
    const auto cells = pivot(csvOfTables(book));
    CHECK(cells.at("t/1/a") == "'+1");
    CHECK(cells.at("t/2/a") == "'@x");
    CHECK(cells.at("t/3/a") == "plain");
    CHECK(cells.at("t/1/b") == "-2.5");
    CHECK(pivot(csvOfTables(aTableBook())).at("lost-readiness/2/remark") == '\'' + hostileText());
}

TEST_CASE("A number that is none is missing in CSV")
{
    TableBook book = aTableBook();
    book.tables
        = {{.id = "t", .columns = {{"a", ColumnKind::Number}}, .rows = {{std::nan("")}, {INFINITY}, {2.0}}}};
    const auto cells = pivot(csvOfTables(book));
    CHECK(cells.count("t/1/a") == 0);
    CHECK(cells.at("t/3/a") == "2");
}
