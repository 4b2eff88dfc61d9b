// SPDX-License-Identifier: MIT
#include "core/base/csv.h"
#include "ui/charts/charttable.h"

#include <doctest/doctest.h>

using namespace cradlepost;

TEST_CASE("a table becomes lines that end in CR LF, quoted where they have to be")
{
    const ChartTable table{.headers = {QStringLiteral("Item"), QStringLiteral("Share, %")},
        .rows = {{QStringLiteral("the \"small\" mask"), QStringLiteral("31")},
            {QStringLiteral("two\nlines"), QStringLiteral("-1.5")}, {QStringLiteral("किट"), {}}}};
    CHECK(csvOf(table).toStdString()
        == "Item,\"Share, %\"\r\n\"the \"\"small\"\" mask\",31\r\n\"two\nlines\",-1.5\r\nकिट,\r\n");
    const auto read = readCsv(csvOf(table).toStdString());
    REQUIRE(read);
    REQUIRE(read->rows.size() == 3);
    CHECK(read->rows[0][0].text == "the \"small\" mask");
    CHECK(read->rows[1][0].text == "two\nlines");
}

TEST_CASE("a cell that a spreadsheet would run is disarmed, a number is left alone")
{
    struct Case
    {
        const char* cell;
        const char* written;
    };
    for (const Case& c :
        {Case{"=1+1", "'=1+1"}, Case{"@x", "'@x"}, Case{"+49", "'+49"}, Case{"-cmd", "'-cmd"},
            Case{"-2", "-2"}, Case{"-2.5%", "-2.5%"}, Case{"-1+cmd(1)", "'-1+cmd(1)"}, Case{"a=b", "a=b"}}) {
        CAPTURE(c.cell);
        const ChartTable table{.headers = {QStringLiteral("h")}, .rows = {{QString::fromUtf8(c.cell)}}};
        CHECK(csvOf(table).toStdString() == std::string("h\r\n") + c.written + "\r\n");
    }
}
