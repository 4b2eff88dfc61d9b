// SPDX-License-Identifier: MIT
#include "core/base/csv.h"
#include "core/base/json.h"
#include "core/exchange/tablecell.h"
#include "core/exchange/tablescsv.h"
#include "core/exchange/tablesjson.h"
#include "core/exchange/tablesxlsx.h"
#include "core/exchange/ziptest.h"
#include "tests/support/builders.h"
#include "tests/support/readonlyplace.h"
#include "tests/support/sampletables.h"

#include <cmath>
#include <cstdlib>
#include <doctest/doctest.h>
#include <fstream>
#include <limits>
#include <map>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

std::string read(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

/** "table/row/column" to value, of what csvOfTables wrote. */
std::map<std::string, std::string> pivot(const std::string& csv)
{
    std::map<std::string, std::string> cells;
    const CsvTable table = must(readCsv(csv));
    for (const auto& row : table.rows)
        cells[row[0].text + '/' + row[1].text + '/' + row[2].text] = row[3].text;
    return cells;
}

/** What an independent reader finds: one line a cell, "sheet!A1|type|number format|value". */
std::map<std::string, std::string> workBook(const TempDir& folder, const std::string& path)
{
    const std::string script = std::string(CRADLEPOST_SOURCE_DIR) + "/tests/core/exchange/readxlsx.py";
    const std::string list = folder.file("cells");
    const std::string command = "/usr/bin/python3 '" + script + "' '" + path + "' > '" + list + "'";
    REQUIRE(std::system(command.c_str()) == 0);
    std::map<std::string, std::string> cells;
    std::ifstream lines(list);
    for (std::string line; std::getline(lines, line);)
        cells[line.substr(0, line.find('|'))] = line.substr(line.find('|') + 1);
    return cells;
}

}

TEST_CASE("A number is written as the shortest text that reads back the same")
{
    CHECK(numberText(0.1 + 0.2) == "0.30000000000000004");
    CHECK(numberText(5.0) == "5");
    CHECK(numberText(-0.0) == "0");
    CHECK(numberText(1e-7) == "1e-07");
    CHECK(numberText(std::numeric_limits<double>::infinity()).empty());
    CHECK(numberText(std::nan("")).empty());
    CHECK(std::strtod(numberText(27.0 / 88.0).c_str(), nullptr) == 27.0 / 88.0);
}

TEST_CASE("A moment is written in UTC, with milliseconds only where there are any")
{
    CHECK(toIso(fromMs(0)) == "1970-01-01T00:00:00Z");
    CHECK(toIso(fromMs(1'791'772'200'007)) == "2026-10-12T02:30:00.007Z");
    CHECK(toIso(fromMs(-1)) == "1969-12-31T23:59:59.999Z");
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

TEST_CASE("The JSON reads back: what it is about, columns, rows, null where nothing can be said")
{
    const Json book = must(parseJson(jsonOfTables(aTableBook())));
    const Json& about = *book.find("about");
    CHECK(*about.findString("unit") == "sorrel-hill");
    CHECK(*about.findString("madeAt") == "2026-10-12T02:30:00Z");
    CHECK(about.find("cautions")->asArray()->size() == 2);
    const auto& tables = *book.find("tables")->asArray();
    REQUIRE(tables.size() == 2);
    CHECK(*tables[0].findString("id") == "lost-readiness");
    const auto& columns = *tables[0].find("columns")->asArray();
    CHECK(*columns[3].findString("kind") == "share");
    CHECK(*columns[4].findString("unit") == "h");
    CHECK(*columns[4].findInteger("decimals") == 2);
    const auto& rows = *tables[0].find("rows")->asArray();
    REQUIRE(rows.size() == 3);
    CHECK(*(*rows[1].asArray())[1].asString() == hostileText());
    CHECK(std::get<double>((*rows[0].asArray())[3].value) == 27.0 / 88.0);
    CHECK(*(*rows[0].asArray())[2].asInteger() == 27);
    CHECK(*(*rows[0].asArray())[7].asBool() == true);
    CHECK((*rows[2].asArray())[3].isNull());
    CHECK(tables[1].find("rows")->asArray()->empty());
}

TEST_CASE("A number that is none is null in JSON and missing in CSV")
{
    TableBook book = aTableBook();
    book.tables
        = {{.id = "t", .columns = {{"a", ColumnKind::Number}}, .rows = {{std::nan("")}, {INFINITY}, {2.0}}}};
    const Json json = must(parseJson(jsonOfTables(book)));
    const auto& rows = *(*json.find("tables")->asArray())[0].find("rows")->asArray();
    CHECK((*rows[0].asArray())[0].isNull());
    CHECK((*rows[1].asArray())[0].isNull());
    const auto cells = pivot(csvOfTables(book));
    CHECK(cells.count("t/1/a") == 0);
    CHECK(cells.at("t/3/a") == "2");
}

TEST_CASE("The work book holds real types and formats, read by another program")
{
    const TempDir folder;
    const std::string path = folder.file("month.xlsx");
    REQUIRE(writeXlsx(aTableBook(), {}, path));
    const auto cells = workBook(folder, path);
    CHECK(cells.at("sheets") == "about,lost-readiness,open-gaps");
    CHECK(cells.at("about!A9") == "s|General|ledgerHead");
    CHECK(cells.at("about!B9") == "s|@|9f3ac2d17b");
    CHECK(cells.at("about!B4") == "d|yyyy-mm-dd|2026-10-01 00:00:00");
    CHECK(cells.at("about!B6") == "d|yyyy-mm-dd hh:mm|2026-10-12 08:00:00"); // the unit's wall clock
    CHECK(cells.at("lost-readiness!E1") == "s|General|hours (h)");
    CHECK(cells.at("lost-readiness!A2") == "s|@|kits-whole");
    CHECK(cells.at("lost-readiness!C2") == "n|0|27");
    CHECK(cells.at("lost-readiness!D2") == "n|0.0%|" + numberText(27.0 / 88.0));
    CHECK(cells.at("lost-readiness!E2") == "n|0.00|12.3456789");
    CHECK(cells.at("lost-readiness!F2") == "d|yyyy-mm-dd|2026-10-12 00:00:00");
    CHECK(cells.at("lost-readiness!G2") == "d|yyyy-mm-dd hh:mm|2026-10-12 08:00:00");
    CHECK(cells.at("lost-readiness!H2") == "b|General|True");
    CHECK(cells.at("lost-readiness!H3") == "b|General|False");
    CHECK(cells.count("lost-readiness!D4") == 0);
}

TEST_CASE("The work book has a fixed heading, a filter, no merged cells and no formula")
{
    const TempDir folder;
    const std::string path = folder.file("month.xlsx");
    REQUIRE(writeXlsx(aTableBook(), {}, path));
    const auto cells = workBook(folder, path);
    CHECK(cells.at("lost-readiness#frozen") == "A2");
    CHECK(cells.at("lost-readiness#filter") == "A1:H4");
    CHECK(cells.at("lost-readiness#merged") == "0");
    CHECK(cells.at("open-gaps#filter") == "A1");
    for (const auto& [at, cell] : cells)
        CHECK_MESSAGE(!cell.starts_with("f|"), at);
    CHECK(cells.at("lost-readiness!B3").starts_with("s|@|=cmd|'/c calc'!A1 <script>"));
}

TEST_CASE("The work book speaks the words that it is given, ids only where there are none")
{
    const TempDir folder;
    const std::string path = folder.file("month.xlsx");
    const TableWords words{.sheet = [](const std::string& table) { return "Sheet: " + table; },
        .heading = [](const std::string&, const Column& column) { return "H " + column.id; },
        .code = [](const std::string&, const Column&, const std::string& code) { return "W " + code; },
        .about = [](const std::string& key) { return "A " + key; },
        .rightToLeft = true};
    REQUIRE(writeXlsx(aTableBook(), words, path));
    const auto cells = workBook(folder, path);
    CHECK(cells.at("sheets") == "Sheet  about,Sheet  lost-readiness,Sheet  open-gaps");
    CHECK(cells.at("Sheet  lost-readiness!A1") == "s|General|H item");
    CHECK(cells.at("Sheet  lost-readiness!A2") == "s|@|W kits-whole");
    CHECK(cells.at("Sheet  lost-readiness!B2") == "s|@|cord ties ran out");
    CHECK(cells.at("Sheet  about!A2") == "s|General|A unit");
    CHECK(cells.at("Sheet  lost-readiness#rightToLeft") == "True");
}

TEST_CASE("A text longer than a cell takes is cut between characters, and the book is sound")
{
    const TempDir folder;
    TableBook book = aTableBook();
    std::string text;
    for (int i = 0; i < 40'000; ++i)
        text += "\xE0\xA4\x95";
    book.tables = {{.id = "t", .columns = {{"a"}}, .rows = {{text}}}};
    const std::string path = folder.file("long.xlsx");
    REQUIRE(writeXlsx(book, {}, path));
    const auto cells = workBook(folder, path);
    CHECK(cells.at("t!A2") == "s|@|" + text.substr(0, 32'764 * 3) + "...");
}

TEST_CASE("The same tables give the same work book, byte for byte")
{
    const TempDir folder;
    REQUIRE(writeXlsx(aTableBook(), {}, folder.file("a.xlsx")));
    REQUIRE(writeXlsx(aTableBook(), {}, folder.file("b.xlsx")));
    CHECK(read(folder.file("a.xlsx")) == read(folder.file("b.xlsx")));
}

TEST_CASE("A work book on a full disk is an error and leaves nothing")
{
    const TempDir folder;
    const SmallDisk disk(folder.path().string(), 8);
    if (!disk.isThere())
        return;
    TableBook book = aTableBook();
    book.tables.push_back(aLongTable(5000));
    const auto written = writeXlsx(book, {}, folder.file("a.xlsx"));
    REQUIRE(!written);
    CHECK(written.error().code == ErrorCode::DiskFull);
    CHECK(std::filesystem::is_empty(folder.path()));
}

TEST_CASE("A full folder for temporary files is noticed, though the library does not say so")
{
    const TempDir folder;
    const TempDir target;
    const SmallDisk disk(folder.path().string(), 64);
    if (!disk.isThere())
        return;
    const char* before = std::getenv("TMPDIR");
    const std::string kept = before != nullptr ? before : "/tmp";
    ::setenv("TMPDIR", folder.path().c_str(), 1);
    TableBook book = aTableBook();
    book.tables.push_back(aLongTable(20'000));
    const auto written = writeXlsx(book, {}, target.file("a.xlsx"));
    ::setenv("TMPDIR", kept.c_str(), 1);
    REQUIRE(!written);
    CHECK(written.error().code == ErrorCode::DiskFull);
    CHECK(std::filesystem::is_empty(target.path()));
}

TEST_CASE("A work book that is cut anywhere has no whole parts")
{
    const TempDir folder;
    REQUIRE(writeXlsx(aTableBook(), {}, folder.file("a.xlsx")));
    CHECK(hasWholeParts(folder.file("a.xlsx")));
    const std::string whole = read(folder.file("a.xlsx"));
    for (const std::size_t length : {whole.size() / 2, whole.size() - 30, std::size_t(4), std::size_t(0)}) {
        std::ofstream(folder.file("b.xlsx"), std::ios::binary) << whole.substr(0, length);
        CHECK(!hasWholeParts(folder.file("b.xlsx")));
    }
}
