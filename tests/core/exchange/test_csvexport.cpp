// SPDX-License-Identifier: MIT
#include "core/exchange/csvexport.h"

#include "busymonth.h"
#include "core/base/csv.h"
#include "core/exchange/csvdictionary.h"
#include "core/exchange/csvrounds.h"
#include "core/exchange/csvtablefile.h"

#include <algorithm>
#include <doctest/doctest.h>
#include <fstream>
#include <map>
#include <regex>
#include <set>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

std::string textOf(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    REQUIRE(file.good());
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

struct Exported
{
    explicit Exported(const std::optional<ReviewSpan>& span = {})
        : month(dir.file("ward.db"))
    {
        written = must(exportCsv(*month.store, {.folder = dir.file("tables"), .units = {}, .span = span}));
    }

    [[nodiscard]] CsvTable table(const std::string& name) const
    {
        return must(readCsv(textOf(dir.file("tables/" + name + ".csv"))));
    }

    TempDir dir;
    BusyMonth month;
    std::vector<CsvExported> written;
};

std::set<std::string> column(const CsvTable& table, std::string_view name)
{
    std::set<std::string> values;
    for (const auto& row : table.rows)
        values.insert(row[static_cast<std::size_t>(table.find(name))].text);
    return values;
}

/** Whether a cell is of its type; empty always is. */
bool fits(const std::string& cell, const CsvColumn& column)
{
    static const std::map<std::string, std::regex> forms{{"id", std::regex("[a-z0-9/-]+")},
        {"integer", std::regex("-?[0-9]+")}, {"decimal", std::regex("-?[0-9]+(\\.[0-9]+)?")},
        {"date", std::regex("[0-9]{4}-[0-9]{2}-[0-9]{2}")},
        {"time", std::regex("[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9:]{8}(\\.[0-9]{3})?Z")},
        {"flag", std::regex("[01]")}, {"marks", std::regex("[pf-]+")}, {"text", std::regex(".+")}};
    if (column.type == "code")
        return std::find(column.codes.begin(), column.codes.end(), cell) != column.codes.end();
    return std::regex_match(cell, forms.at(column.type));
}

}

TEST_CASE("the dictionary names each column once, with a type, a meaning, and codes where they are due")
{
    REQUIRE(csvDictionary().size() > 50);
    std::set<std::string> seen;
    for (const CsvColumn& one : csvDictionary()) {
        CAPTURE(one.table);
        CAPTURE(one.column);
        CHECK(seen.insert(one.table + '.' + one.column).second);
        CHECK_FALSE(one.meaning.empty());
        CHECK((one.type == "code") == !one.codes.empty());
    }
    // Tables stand together, so that a table's columns are found in one run.
    const auto names = csvTableNames();
    CHECK(std::set<std::string>(names.begin(), names.end()).size() == names.size());
}

TEST_CASE("every table has the columns of the dictionary, and every cell is of its type")
{
    const Exported exported;
    for (const std::string& name : csvTableNames()) {
        const CsvTable table = exported.table(name);
        std::vector<CsvColumn> columns;
        for (const CsvColumn& one : csvDictionary()) {
            if (one.table == name)
                columns.push_back(one);
        }
        REQUIRE(table.header.size() == columns.size());
        CHECK(table.rows.size() > 0);
        for (std::size_t i = 0; i < columns.size(); ++i) {
            CAPTURE(name);
            CAPTURE(columns[i].column);
            CHECK(table.header[i].text == columns[i].column);
            for (const auto& row : table.rows) {
                CAPTURE(row[i].text);
                const bool isSound = row[i].text.empty() || fits(row[i].text, columns[i]);
                CHECK(isSound);
            }
        }
    }
}

TEST_CASE("the dictionary lies beside the tables and reads back as it came")
{
    const Exported exported;
    const CsvTable table = exported.table("dictionary");
    REQUIRE(table.rows.size() == csvDictionary().size());
    CHECK(table.rows.back()[1].text == csvDictionary().back().column);
    const std::string text = textOf(exported.dir.file("tables/dictionary.csv"));
    CHECK(std::count(text.begin(), text.end(), '\n') == std::count(text.begin(), text.end(), '\r'));
}

TEST_CASE("tables join by their ids, and hold what the store holds")
{
    const Exported exported;
    const CsvTable rounds = exported.table("rounds");
    const CsvTable answers = exported.table("answers");
    CHECK(rounds.rows.size() == 20);
    CHECK(column(answers, "round") == column(rounds, "round"));
    const auto readings = column(exported.table("readings"), "round");
    const auto ids = column(rounds, "round");
    CHECK(std::includes(ids.begin(), ids.end(), readings.begin(), readings.end()));
    CHECK(column(rounds, "kind") == std::set<std::string>{"shift", "recheck", "pre-birth", "spot-check"});
    const auto amended = static_cast<std::size_t>(rounds.find("amendments"));
    for (const auto& row : rounds.rows)
        CHECK((row[amended].text == "1") == (row[0].text == recordName(exported.month.amended)));
    const auto gaps = must(exported.month.store->openGaps(exported.month.unit)).size()
        + must(exported.month.store->closedGaps(exported.month.unit, fromMs(0))).size();
    CHECK(exported.table("gaps").rows.size() == gaps);
    CHECK(exported.table("stock_movements").rows.size() == 5);
}

TEST_CASE("all kinds of answers leave something in their own columns")
{
    const Exported exported;
    const CsvTable answers = exported.table("answers");
    const std::map<std::string, const char*> filled{{"measure", "value"}, {"since", "since"},
        {"steps", "steps"}, {"count", "pieces"}, {"kit", "parts"}, {"cylinder", "gauge"}};
    for (const auto& [kind, name] : filled) {
        std::size_t full = 0;
        for (const auto& row : answers.rows) {
            const bool mine = row[static_cast<std::size_t>(answers.find("kind"))].text == kind;
            const bool has = !row[static_cast<std::size_t>(answers.find(name))].text.empty();
            full += mine && has ? 1U : 0U;
        }
        CAPTURE(kind);
        CHECK(full > 0);
    }
}

TEST_CASE("a name that a spreadsheet would run gets an apostrophe, and quotes are doubled")
{
    const Exported exported;
    const CsvTable items = exported.table("stock_items");
    CHECK(
        items.rows.front()[static_cast<std::size_t>(items.find("name"))].text == "'=Oxytocin, \"ampoules\"");
    CHECK(textOf(exported.dir.file("tables/stock_items.csv")).find("\"'=Oxytocin, \"\"ampoules\"\"\"")
        != std::string::npos);
}

TEST_CASE("a shelf's days between deliveries and chance to have enough stand in its row, and are empty when "
          "not set")
{
    TempDir dir;
    const BusyMonth month(dir.file("ward.db"));
    must(month.store->describeStockItem(month.unit,
        {.id = "towels", .name = "Towels", .at = must(month.store->stockItems(month.unit)).front().at},
        "AB"));
    must(exportCsv(*month.store, {.folder = dir.file("tables"), .units = {}, .span = {}}));
    const CsvTable items = must(readCsv(textOf(dir.file("tables/stock_items.csv"))));
    const auto cellOf = [&](std::size_t row, const char* name) {
        return items.rows.at(row).at(static_cast<std::size_t>(items.find(name))).text;
    };
    CHECK(cellOf(0, "delivery_days") == "14");
    CHECK(cellOf(0, "service") == "0.98");
    CHECK(cellOf(1, "item") == "towels");
    CHECK(cellOf(1, "delivery_days").empty());
    CHECK(cellOf(1, "service").empty());
}

TEST_CASE("a span takes the shifts that began in it")
{
    const Date day = std::chrono::year(2026) / 11 / 2;
    const Exported exported(ReviewSpan{.from = day, .to = addDays(day, 1)});
    CHECK(column(exported.table("rounds"), "date") == std::set<std::string>{"2026-11-02"});
    CHECK(exported.table("stock_movements").rows.empty());
}

TEST_CASE("a folder that holds such a table is refused, and nothing in it changes")
{
    const Exported exported;
    const std::string before = textOf(exported.dir.file("tables/rounds.csv"));
    const auto again
        = exportCsv(*exported.month.store, {.folder = exported.dir.file("tables"), .units = {}, .span = {}});
    REQUIRE_FALSE(again.has_value());
    CHECK(again.error().code == ErrorCode::AlreadyExists);
    CHECK(textOf(exported.dir.file("tables/rounds.csv")) == before);
}

TEST_CASE("an export that fails leaves no table behind")
{
    TempDir dir;
    const BusyMonth month(dir.file("ward.db"));
    const auto refused
        = exportCsv(*month.store, {.folder = dir.file("tables"), .units = {"nowhere"}, .span = {}});
    REQUIRE_FALSE(refused.has_value());
    CHECK(refused.error().code == ErrorCode::NotFound);
    CHECK(std::filesystem::is_empty(dir.file("tables")));
}

TEST_CASE("a row that does not fit its table is refused")
{
    TempDir dir;
    auto file = must(CsvTableFile::begin(dir.path().string(), "units"));
    CHECK_FALSE(file.add({"a", "b"}).has_value());
    CHECK(file.add({"a", "b", "c", "d"}).has_value());
    CHECK(file.rows() == 1);
    must(file.publish());
    CHECK(textOf(dir.file("units.csv")) == "unit,name,level,zone\r\na,b,c,d\r\n");
}
