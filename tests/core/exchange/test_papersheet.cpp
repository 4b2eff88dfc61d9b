// SPDX-License-Identifier: MIT
#include "core/exchange/papersheet.h"

#include <doctest/doctest.h>
#include <set>

using namespace cradlepost;

TEST_CASE("a sheet is taken apart by commas, or by semicolons where its names have no comma")
{
    for (const char* text : {"a,b\n1,2\n", "a;b\r\n1;2\r\n",
             "\xEF\xBB\xBF"
             "a,b\n\n1,2",
             "a;b\n1;2\n;\n"}) {
        CAPTURE(text);
        const PaperSheet sheet = readPaperSheet(text);
        CHECK(sheet.faults.empty());
        REQUIRE(sheet.header.size() == 2);
        REQUIRE(sheet.rows.size() == 1);
        CHECK(sheet.rows[0][1].text == "2");
    }
    CHECK(readPaperSheet("a,b\n1,2;3\n").rows[0][1].text == "2;3");
}

TEST_CASE("lines of another width and names that come twice are all told")
{
    const PaperSheet sheet = readPaperSheet("a,b,a\n1,2\n1,2,3\n1,2,3,4\n");
    REQUIRE(sheet.faults.size() == 3);
    CHECK(sheet.faults[0]
        == PaperFault{.code = PaperFaultCode::ColumnTwice, .line = 1, .column = 3, .name = "a"});
    CHECK(sheet.faults[1]
        == PaperFault{.code = PaperFaultCode::WrongWidth, .line = 2, .value = "2", .limit = "3"});
    CHECK(sheet.faults[2].line == 4);
    CHECK(sheet.rows.size() == 1);
}

TEST_CASE("a table that is broken says where and why")
{
    const PaperSheet sheet = readPaperSheet("a,b\n1,\"2\"x\n");
    REQUIRE(sheet.faults.size() == 1);
    CHECK(sheet.faults[0].code == PaperFaultCode::BrokenTable);
    CHECK(sheet.faults[0].line == 2);
    CHECK(sheet.faults[0].value == "text behind a closing quote");
}

TEST_CASE("every code of a fault has a name of its own")
{
    std::set<std::string> names;
    for (int code = 0; code <= static_cast<int>(PaperFaultCode::UnknownInitials); ++code)
        names.insert(codeName(static_cast<PaperFaultCode>(code)));
    CHECK(names.size() == static_cast<std::size_t>(PaperFaultCode::UnknownInitials) + 1);
}
