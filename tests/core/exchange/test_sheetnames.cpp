// SPDX-License-Identifier: MIT
#include "core/exchange/sheetnames.h"

#include <doctest/doctest.h>

using namespace cradlepost;

TEST_CASE("A name that a work book takes stays as it is")
{
    CHECK(sheetNames({"Summary", "Lost readiness"}) == std::vector<std::string>{"Summary", "Lost readiness"});
}

TEST_CASE("Signs that a work book refuses become blanks")
{
    CHECK(sheetNames({"a[b]c:d*e?f/g\\h"}).front() == "a b c d e f g h");
    CHECK(sheetNames({"'quoted'"}).front() == "quoted");
    CHECK(sheetNames({"two\nlines"}).front() == "two lines");
    CHECK(sheetNames({"", "::", "History"}) == std::vector<std::string>{"table", "table 2", "History_"});
}

TEST_CASE("A long name is cut at 31 characters, not bytes, and not inside one")
{
    CHECK(sheetNames({std::string(40, 'x')}).front() == std::string(31, 'x'));
    std::string hindi;
    for (int i = 0; i < 40; ++i)
        hindi += "\xE0\xA4\x95";
    CHECK(sheetNames({hindi}).front() == hindi.substr(0, 31 * 3));
    std::string beyond; // takes two units of UTF-16 each
    for (int i = 0; i < 20; ++i)
        beyond += "\xF0\x9F\x93\x88";
    CHECK(sheetNames({beyond}).front() == beyond.substr(0, 15 * 4));
}

TEST_CASE("Names that differ only in the case of letters, or are cut alike, are numbered")
{
    CHECK(sheetNames({"Done", "done", "DONE"}) == std::vector<std::string>{"Done", "done 2", "DONE 3"});
    const std::string longName(35, 'y');
    CHECK(sheetNames({longName + "1", longName + "2"})[1] == std::string(29, 'y') + " 2");
}
