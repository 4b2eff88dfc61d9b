// SPDX-License-Identifier: MIT
#include "app/compute/method.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::compute;

namespace {

const std::vector<OptionSpec> specs{levelOption(), numberOption("centre", "c", "", -10, 10),
    wholeOption("length", "l", "8", 2, 20), choiceOption("model", "m", {"none", "wide"}),
    {.name = "rows", .kind = OptionKind::Rows, .meaning = "r", .fallback = "", .choices = {}},
    {.name = "words", .kind = OptionKind::Words, .meaning = "w", .fallback = "", .choices = {}}};

}

TEST_CASE("options that are not given take what the method states")
{
    const auto options = Options::read(specs, {});
    REQUIRE(options);
    CHECK(options->number("level") == 0.95);
    CHECK(options->whole("length") == 8);
    CHECK(options->word("model") == "none");
    CHECK_FALSE(options->maybe("centre"));
    CHECK_FALSE(options->has("rows"));
    CHECK(options->rows("rows").empty());
    CHECK(options->words("words").empty());
}

TEST_CASE("options are read in full precision and in order")
{
    const auto options = Options::read(
        specs, {{"centre", "-0.1"}, {"rows", "3,14"}, {"words", "a,b"}, {"length", "20"}, {"model", "wide"}});
    REQUIRE(options);
    CHECK(*options->maybe("centre") == -0.1);
    CHECK(options->rows("rows") == std::vector<std::size_t>{3, 14});
    CHECK(options->words("words") == std::vector<std::string>{"a", "b"});
    CHECK(options->whole("length") == 20);
    CHECK(options->word("model") == "wide");
}

TEST_CASE("an option out of its bounds is refused with its name and what it takes")
{
    const std::pair<GivenOptions, const char*> cases[]
        = {{{{"level", "1"}}, "strictly between 0 and 1, not '1'"},
            {{{"level", "nan"}}, "--level takes a number"}, {{{"level", "0.9x"}}, "--level"},
            {{{"level", ""}}, "--level"}, {{{"centre", "10.5"}}, "from -10 to 10"},
            {{{"centre", "inf"}}, "--centre"}, {{{"length", "2.5"}}, "a whole number from 2 to 20"},
            {{{"length", "1"}}, "--length"}, {{{"model", "other"}}, "one of none, wide"},
            {{{"rows", "4,3"}}, "rising row numbers"}, {{{"rows", "0"}}, "--rows"},
            {{{"rows", "1,"}}, "--rows"}, {{{"words", "a,,b"}}, "words parted by commas"},
            {{{"colour", "red"}}, "there is no option --colour"}};
    for (const auto& [given, message] : cases) {
        CAPTURE(message);
        const auto options = Options::read(specs, given);
        REQUIRE_FALSE(options);
        CHECK(options.error().code == ErrorCode::InvalidArgument);
        CHECK(options.error().message.find(message) != std::string::npos);
    }
}

TEST_CASE("numbers are plain decimals")
{
    CHECK(*readNumber("1e3") == 1000);
    CHECK(*readNumber("+2.5") == 2.5);
    CHECK(*readNumber("-.5") == -0.5);
    for (const char* bad : {"", "+", "-", "+-1", "1,5", "0x10", " 1", "1 ", "nan", "inf", "1e999"}) {
        CAPTURE(bad);
        CHECK_FALSE(readNumber(bad));
    }
    CHECK(*readWhole("-7") == -7);
    for (const char* bad : {"", "1.0", "9223372036854775808", "x"})
        CHECK_FALSE(readWhole(bad));
}
