// SPDX-License-Identifier: MIT
#include "core/exchange/tablesxlsx.h"
#include "tests/support/builders.h"
#include "tests/support/readonlyplace.h"
#include "tests/support/sampletables.h"
#include "xlsxcells.h"

#include <cstdlib>
#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

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
    const auto cells = cellsOfWorkBook(path);
    CHECK(cells.at("sheets") == "Sheet  about,Sheet  lost-readiness,Sheet  open-gaps");
    CHECK(cells.at("Sheet  lost-readiness!A1") == "s|General|H item");
    CHECK(cells.at("Sheet  lost-readiness!A2") == "s|@|W kits-whole");
    CHECK(cells.at("Sheet  lost-readiness!B2") == "s|@|cord ties ran out");
    CHECK(cells.at("Sheet  about!A2") == "s|General|A unit");
    CHECK(cells.at("Sheet  lost-readiness#rightToLeft") == "True");
}

TEST_CASE("The same tables give the same work book, byte for byte")
{
    const TempDir folder;
    REQUIRE(writeXlsx(aTableBook(), {}, folder.file("a.xlsx")));
    REQUIRE(writeXlsx(aTableBook(), {}, folder.file("b.xlsx")));
    CHECK(bytesOf(folder.file("a.xlsx")) == bytesOf(folder.file("b.xlsx")));
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
