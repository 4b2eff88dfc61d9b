// SPDX-License-Identifier: MIT
#include "core/base/json.h"
#include "core/exchange/tablesjson.h"
#include "tests/support/builders.h"
#include "tests/support/sampletables.h"

#include <cmath>
#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

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

TEST_CASE("A number that is none is null in JSON")
{
    TableBook book = aTableBook();
    book.tables
        = {{.id = "t", .columns = {{"a", ColumnKind::Number}}, .rows = {{std::nan("")}, {INFINITY}, {2.0}}}};
    const Json json = must(parseJson(jsonOfTables(book)));
    const auto& rows = *(*json.find("tables")->asArray())[0].find("rows")->asArray();
    CHECK((*rows[0].asArray())[0].isNull());
    CHECK((*rows[1].asArray())[0].isNull());
}
