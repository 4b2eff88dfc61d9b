// SPDX-License-Identifier: MIT
#include "core/exchange/tables.h"

#include "tests/support/sampletables.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("Without words an id stands for itself, a heading with its unit")
{
    CHECK(sheetWord({}, "done") == "done");
    CHECK(headingWord({}, "done", {.id = "hours", .unit = "h"}) == "hours (h)");
    CHECK(headingWord({}, "done", {.id = "gaps"}) == "gaps");
    CHECK(codeWord({}, "done", {.id = "item"}, "kits-whole") == "kits-whole");
    CHECK(aboutWord({}, "unit") == "unit");
}

TEST_CASE("What tables are about is told in one order")
{
    std::string keys;
    for (const AboutLine& line : aboutLines(aTableBook().about))
        keys += line.key + ' ';
    CHECK(keys == "unit place firstDay lastDay madeAt zone station ledgerHead program ");
}
