// SPDX-License-Identifier: MIT
#include "core/exchange/tablecell.h"
#include "core/exchange/tablesxlsx.h"
#include "tests/support/builders.h"
#include "tests/support/sampletables.h"
#include "xlsxcells.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("The work book holds real types and formats, read by another program")
{
    const TempDir folder;
    const std::string path = folder.file("month.xlsx");
    REQUIRE(writeXlsx(aTableBook(), {}, path));
    const auto cells = cellsOfWorkBook(path);
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

TEST_CASE("A moment in the work book keeps its seconds")
{
    const TempDir folder;
    const std::string path = folder.file("month.xlsx");
    TableBook book = aTableBook();
    book.about.madeAt += std::chrono::seconds(47);
    REQUIRE(writeXlsx(book, {}, path));
    CHECK(cellsOfWorkBook(path).at("about!B6") == "d|yyyy-mm-dd hh:mm|2026-10-12 08:00:47");
}

TEST_CASE("The work book has a fixed heading, a filter, no merged cells and no formula")
{
    const TempDir folder;
    const std::string path = folder.file("month.xlsx");
    REQUIRE(writeXlsx(aTableBook(), {}, path));
    const auto cells = cellsOfWorkBook(path);
    CHECK(cells.at("lost-readiness#frozen") == "A2");
    CHECK(cells.at("lost-readiness#filter") == "A1:H4");
    CHECK(cells.at("lost-readiness#merged") == "0");
    CHECK(cells.at("open-gaps#filter") == "A1");
    for (const auto& [at, cell] : cells)
        CHECK_MESSAGE(!cell.starts_with("f|"), at);
    CHECK(cells.at("lost-readiness!B3").starts_with("s|@|=cmd|'/c calc'!A1 <script>"));
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
    const auto cells = cellsOfWorkBook(path);
    CHECK(cells.at("t!A2") == "s|@|" + text.substr(0, 32'764 * 3) + "...");
}
