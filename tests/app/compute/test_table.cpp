// SPDX-License-Identifier: MIT
#include "app/compute/table.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::compute;

namespace {

const std::vector<ColumnSpec> columns{{"name", ColumnKind::Text, "", true}, {"x", ColumnKind::Count, ""},
    {"n", ColumnKind::Count, ""},
    {.name = "value", .kind = ColumnKind::Number, .meaning = "", .optional = true, .gaps = true},
    {.name = "on", .kind = ColumnKind::Flag, .meaning = "", .optional = true}};

}

TEST_CASE("columns may stand in any order and optional ones may be missing")
{
    const auto table = Table::read("n,on,x,value\n5,yes,2,\n6,0,6,-1.5\n", columns);
    REQUIRE(table);
    CHECK(table->size() == 2);
    CHECK(table->counts("x") == std::vector<std::int64_t>{2, 6});
    CHECK(table->flags("on") == std::vector<bool>{true, false});
    CHECK_FALSE(table->gapped("value")[0]);
    CHECK(*table->gapped("value")[1] == -1.5);
    CHECK(table->texts("name").empty());
    CHECK_FALSE(table->has("name"));
    CHECK(table->line(1) == 3);
    CHECK((*table->tallies())[1] == stats::Tally{6, 6});
}

TEST_CASE("a fault in a table has its line, its column and its name")
{
    const std::pair<const char*, const char*> cases[]
        = {{"x\n1\n", "line 1, column 1: the column 'n' is missing"},
            {"x,n,m\n1,2,3\n", "line 1, column 5: 'm' is no column of this method"},
            {"x,n\n", "line 1, column 1: there is no row"},
            {"x,n\n1,two\n", "line 2, column 3: (n) 'two' is not a count"},
            {"x,n\n-1,2\n", "line 2, column 1: (x)"}, {"x,n\n1.5,2\n", "line 2, column 1: (x)"},
            {"x,n\n1,\n", "line 2, column 3: (n) the cell is empty"},
            {"x,n,on\n1,2,maybe\n", "line 2, column 5: (on) 'maybe' is none of"},
            {"x,n,value\n1,2,nan\n", "line 2, column 5: (value) 'nan' is not a number"},
            {"x,n,name\n1,2,\n", "line 2, column 5: (name) the cell is empty"},
            {"x,n\n1,9007199254740993\n", "line 2, column 3"}};
    for (const auto& [text, message] : cases) {
        CAPTURE(message);
        const auto table = Table::read(text, columns);
        REQUIRE_FALSE(table);
        CHECK(table.error().code == ErrorCode::BadDocument);
        CHECK(table.error().message.find(message) == 0);
    }
    const auto table = Table::read("x,n\n1,2\n3,2\n", columns);
    REQUIRE(table);
    const auto tallies = table->tallies();
    REQUIRE_FALSE(tallies);
    CHECK(tallies.error().message.find("line 3, column 1: (x) 3 of 2 cannot be") == 0);
}

TEST_CASE("each kind of column takes what it says")
{
    const auto takes = [](ColumnKind kind, const char* text) {
        return Table::read(std::string("v\n") + text + "\n", {{"v", kind, ""}}).has_value();
    };
    CHECK(takes(ColumnKind::NotNegative, "0"));
    CHECK_FALSE(takes(ColumnKind::NotNegative, "-0.1"));
    CHECK(takes(ColumnKind::Positive, "0.1"));
    CHECK_FALSE(takes(ColumnKind::Positive, "0"));
    CHECK(takes(ColumnKind::Chance, "1"));
    CHECK_FALSE(takes(ColumnKind::Chance, "1.1"));
    CHECK(takes(ColumnKind::Inside, "0.5"));
    CHECK_FALSE(takes(ColumnKind::Inside, "1"));
    CHECK(takes(ColumnKind::Whole, "-3"));
    CHECK_FALSE(takes(ColumnKind::Whole, "3.5"));
    CHECK(takes(ColumnKind::Text, "3.5"));
}
