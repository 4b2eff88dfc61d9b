// SPDX-License-Identifier: MIT
#include "core/base/csv.h"

#include <doctest/doctest.h>
#include <random>

using namespace cradlepost;

TEST_CASE("a table reads quotes, line ends and blanks as the standard says")
{
    const auto table = readCsv("\xEF\xBB\xBF"
                               "unit, n ,note\r\nNorth,12,\"a, \"\"b\"\"\r\nc\"\nSouth , 7, \n\n\"\",,x");
    REQUIRE(table);
    REQUIRE(table->header.size() == 3);
    CHECK(table->header[1].text == "n");
    CHECK(table->header[1].column == 7);
    REQUIRE(table->rows.size() == 3);
    CHECK(table->rows[0][2].text == "a, \"b\"\nc");
    CHECK(table->rows[0][2].line == 2);
    CHECK(table->rows[0][2].column == 10);
    CHECK(table->rows[1][0].text == "South");
    CHECK(table->rows[1][0].line == 4);
    CHECK(table->rows[1][2].text.empty());
    CHECK(table->rows[2][0].line == 6);
    CHECK(table->find("note") == 2);
    CHECK(table->find("other") == -1);
    CHECK(readCsv("a;b\n1,5;2\n", ';')->rows[0][0].text == "1,5");
    CHECK(readCsv("a\n")->rows.empty());
}

TEST_CASE("a faulty table is refused with line and column")
{
    const std::pair<std::string, const char*> cases[] = {{"", "line 1, column 1: there is no header line"},
        {"\r\n\n", "line 1, column 1: there is no header"},
        {"a,\n1,2", "line 1, column 3: a column without a name"},
        {"a,b,a\n", "line 1, column 5: the column 'a' comes twice"},
        {"a,b\n1\n", "line 2, column 1: 1 field where"},
        {"a,b\n1,2,3\n", "line 2, column 5: 3 fields where the header has 2"},
        {"a,b\n1,x\"y\n", "line 2, column 4: a quote inside"},
        {"a,b\n\"1\"2,3\n", "line 2, column 4: text behind"},
        {"a,b\n1,\"2\n3\n", "line 2, column 3: the quote that begins here never closes"},
        {"a,b\n1,2\rx\n", "line 2, column 4: a carriage return"},
        {std::string("a,b\n1,\0\n", 8), "line 2, column 3: a control"},
        {"a,b\n1,\xC3\n", "line 2, column 3: this is not UTF-8"},
        {"a,b\n\xED\xA0\x80,1\n", "line 2, column 1: this is not"},
        {"\xC3\xA9,b\n1,\"\xF4\x90\x80\x80\"\n", "line 2, column 4: this is not"}};
    for (const auto& [text, message] : cases) {
        CAPTURE(message);
        const auto table = readCsv(text);
        REQUIRE_FALSE(table);
        CHECK(table.error().code == ErrorCode::BadDocument);
        CHECK(table.error().message.find(message) == 0);
    }
}

TEST_CASE("columns are counted in characters")
{
    const auto table = readCsv("\xC3\xA9t\xC3\xA9,n\n\xE0\xA4\x95,1\n");
    REQUIRE(table);
    CHECK(table->header[1].column == 5);
    CHECK(table->rows[0][1].column == 3);
}

TEST_CASE("what is written reads back as it was")
{
    std::mt19937_64 random(4180);
    const std::string alphabet[] = {"a", "\"", ",", "\n", " ", "\t", "\xC3\xA9", "7", "", "-"};
    for (int i = 0; i < 2000; ++i) {
        const auto width = 1 + random() % 4;
        std::vector<std::string> header;
        for (std::size_t c = 0; c < width; ++c)
            header.push_back("c" + std::to_string(c));
        std::string text;
        appendCsvLine(text, header);
        std::vector<std::vector<std::string>> rows;
        for (auto r = random() % 4; r > 0; --r) {
            auto& row = rows.emplace_back();
            for (std::size_t c = 0; c < width; ++c) {
                auto& cell = row.emplace_back();
                for (auto k = random() % 5; k > 0; --k)
                    cell += alphabet[random() % std::size(alphabet)];
            }
            appendCsvLine(text, row);
        }
        CAPTURE(text);
        const auto table = readCsv(text);
        REQUIRE(table);
        REQUIRE(table->rows.size() == rows.size());
        for (std::size_t r = 0; r < rows.size(); ++r) {
            for (std::size_t c = 0; c < width; ++c)
                CHECK(table->rows[r][c].text == rows[r][c]);
        }
    }
}

TEST_CASE("random bytes are read or refused, never worse")
{
    std::mt19937_64 random(1);
    const char bytes[] = {'a', ',', '"', '\n', '\r', ' ', '\t', '\0', '\x7F', '\xC3', '\xA9', '\xF0', '1'};
    int refused = 0;
    for (int i = 0; i < 5000; ++i) {
        std::string text;
        for (auto k = random() % 40; k > 0; --k)
            text += bytes[random() % std::size(bytes)];
        const auto table = readCsv(text);
        if (table)
            continue;
        ++refused;
        CHECK(table.error().message.find("line ") == 0);
    }
    CHECK(refused > 100);
}
