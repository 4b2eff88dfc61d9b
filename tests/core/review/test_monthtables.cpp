// SPDX-License-Identifier: MIT
#include "handmade.h"
#include "stableunit.h"

#include "core/review/monthtables.h"
#include "tests/support/builders.h"

#include <algorithm>
#include <doctest/doctest.h>
#include <set>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

bool fits(const Cell& cell, ColumnKind kind)
{
    if (std::holds_alternative<std::monostate>(cell))
        return true;
    switch (kind) {
    case ColumnKind::Text:
    case ColumnKind::Code:
        return std::holds_alternative<std::string>(cell);
    case ColumnKind::Count:
    case ColumnKind::Flag:
        return std::holds_alternative<std::int64_t>(cell);
    case ColumnKind::Number:
    case ColumnKind::Share:
        return std::holds_alternative<double>(cell);
    case ColumnKind::Day:
        return std::holds_alternative<Date>(cell);
    case ColumnKind::Time:
        break;
    }
    return std::holds_alternative<Instant>(cell);
}

void checkShape(const std::vector<DataTable>& tables)
{
    std::set<std::string> ids;
    for (const DataTable& table : tables) {
        CAPTURE(table.id);
        CHECK(ids.insert(table.id).second);
        for (const auto& row : table.rows) {
            REQUIRE(row.size() == table.columns.size());
            for (std::size_t i = 0; i < row.size(); ++i) {
                CAPTURE(table.columns[i].id);
                CHECK(fits(row[i], table.columns[i].kind));
            }
        }
    }
}

}

TEST_CASE("every row has a cell of the right kind for every column")
{
    const StableUnit unit = stableUnit(3);
    const auto tables = monthTables(must(reviewMonth(unit.history, unit.span)));
    CHECK(tables.size() == 23);
    checkShape(tables);
    checkShape(monthTables(HandMade().review()));
}

TEST_CASE("the tables say what the review says")
{
    HandMade made;
    for (int day = 1; day <= 31; ++day)
        made.round(october(day), 0, day % 2 == 0 ? "gmmm" : "mmmm");
    const auto tables = monthTables(made.review());
    const auto summary = std::find_if(
        tables.begin(), tables.end(), [](const DataTable& table) { return table.id == "summary"; });
    REQUIRE(summary != tables.end());
    CHECK(std::get<std::string>(summary->rows[1][0]) == "ready");
    CHECK(std::get<std::int64_t>(summary->rows[1][1]) == 16);
    CHECK(std::get<std::int64_t>(summary->rows[1][2]) == 31);
    CHECK(std::get<double>(summary->rows[1][3]) == 16.0 / 31);
}
