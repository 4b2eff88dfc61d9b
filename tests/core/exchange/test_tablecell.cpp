// SPDX-License-Identifier: MIT
#include "core/exchange/tablecell.h"

#include <cmath>
#include <cstdlib>
#include <doctest/doctest.h>
#include <limits>

using namespace cradlepost;

TEST_CASE("A number is written as the shortest text that reads back the same")
{
    CHECK(numberText(0.1 + 0.2) == "0.30000000000000004");
    CHECK(numberText(5.0) == "5");
    CHECK(numberText(-0.0) == "0");
    CHECK(numberText(1e-7) == "1e-07");
    CHECK(numberText(std::numeric_limits<double>::infinity()).empty());
    CHECK(numberText(std::nan("")).empty());
    CHECK(std::strtod(numberText(27.0 / 88.0).c_str(), nullptr) == 27.0 / 88.0);
}

TEST_CASE("A moment is written in UTC, with milliseconds only where there are any")
{
    CHECK(toIso(fromMs(0)) == "1970-01-01T00:00:00Z");
    CHECK(toIso(fromMs(1'791'772'200'007)) == "2026-10-12T02:30:00.007Z");
    CHECK(toIso(fromMs(-1)) == "1969-12-31T23:59:59.999Z");
}
