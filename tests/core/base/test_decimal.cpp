// SPDX-License-Identifier: MIT
#include "core/base/decimal.h"

#include <doctest/doctest.h>
#include <limits>

using namespace cradlepost;

TEST_CASE("a decimal reads what a keyboard gives and prints the shortest form")
{
    const std::pair<const char*, const char*> cases[] = {{"26.4", "26.4"}, {"26,4", "26.4"}, {"28", "28"},
        {"28.0", "28"}, {"-0.5", "-0.5"}, {"0", "0"}, {"0.125", "0.125"}, {"007", "7"}, {"-0", "0"}};
    for (const auto& [in, out] : cases) {
        CAPTURE(in);
        const auto read = Decimal::parse(in);
        REQUIRE(read);
        CHECK(read->toString() == out);
    }
    CHECK(Decimal::parse("26.4")->thousandths == 26400);
    CHECK(Decimal {std::numeric_limits<std::int64_t>::min()}.toString() == "-9223372036854775.808");
}

TEST_CASE("a decimal refuses what is not a number and says how to write one")
{
    for (const char* in : {"", "-", ".", ".5", "5.", "26.4.1", "2 6", "1e3", "26.4567", "nan", "+3", "1234567890123"}) {
        CAPTURE(in);
        const auto read = Decimal::parse(in);
        REQUIRE_FALSE(read);
        CHECK(read.error().code == ErrorCode::InvalidArgument);
        CHECK(read.error().hint.find("26.4") != std::string::npos);
    }
}
