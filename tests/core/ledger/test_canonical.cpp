// SPDX-License-Identifier: MIT
#include "core/ledger/canonical.h"

#include <bit>
#include <doctest/doctest.h>
#include <limits>

using namespace cradlepost;

namespace {

std::string canonicalOf(std::string_view text)
{
    const auto json = parseJson(text);
    REQUIRE(json.has_value());
    return canonicalText(*json);
}

struct NumberSample
{
    std::uint64_t bits;
    const char* text;
};

}

TEST_CASE("the example of RFC 8785 section 3.2 comes out as its sections 3.2.2 and 3.2.3 print it")
{
    const std::string in = R"({
      "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
      "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
      "literals": [null, true, false]
    })";
    CHECK(canonicalOf(in)
        == "{\"literals\":[null,true,false],\"numbers\":[333333333.3333333,1e+30,4.5,0.002,1e-27],"
           "\"string\":\"\u20ac$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}");
}

TEST_CASE("the same example has the bytes of RFC 8785 section 3.2.4")
{
    const std::string out = canonicalOf(R"({"string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/"})");
    const unsigned char printed[] = {0x22, 0xe2, 0x82, 0xac, 0x24, 0x5c, 0x75, 0x30, 0x30, 0x30, 0x66, 0x5c,
        0x6e, 0x41, 0x27, 0x42, 0x5c, 0x22, 0x5c, 0x5c, 0x5c, 0x5c, 0x5c, 0x22, 0x2f, 0x22};
    CHECK(out == "{\"string\":" + std::string(std::begin(printed), std::end(printed)) + "}");
}

TEST_CASE("names are sorted by UTF-16 units, as the sorting example of RFC 8785 section 3.2.3 shows")
{
    const std::string in = R"({
      "\u20ac": "Euro Sign",
      "\r": "Carriage Return",
      "\ufb33": "Hebrew Letter Dalet With Dagesh",
      "1": "One",
      "\ud83d\ude00": "Emoji: Grinning Face",
      "\u0080": "Control",
      "\u00f6": "Latin Small Letter O With Diaeresis"
    })";
    CHECK(canonicalOf(in)
        == "{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\u0080\":\"Control\","
           "\"\u00f6\":\"Latin Small Letter O With Diaeresis\",\"\u20ac\":\"Euro Sign\","
           "\"\U0001F600\":\"Emoji: Grinning Face\",\"\uFB33\":\"Hebrew Letter Dalet With Dagesh\"}");
}

TEST_CASE("every finite number of RFC 8785 appendix B comes out as printed there")
{
    const NumberSample samples[] = {
        {0x0000000000000000, "0"},
        {0x8000000000000000, "0"},
        {0x0000000000000001, "5e-324"},
        {0x8000000000000001, "-5e-324"},
        {0x7fefffffffffffff, "1.7976931348623157e+308"},
        {0xffefffffffffffff, "-1.7976931348623157e+308"},
        {0x4340000000000000, "9007199254740992"},
        {0xc340000000000000, "-9007199254740992"},
        {0x4430000000000000, "295147905179352830000"},
        {0x44b52d02c7e14af5, "9.999999999999997e+22"},
        {0x44b52d02c7e14af6, "1e+23"},
        {0x44b52d02c7e14af7, "1.0000000000000001e+23"},
        {0x444b1ae4d6e2ef4e, "999999999999999700000"},
        {0x444b1ae4d6e2ef4f, "999999999999999900000"},
        {0x444b1ae4d6e2ef50, "1e+21"},
        {0x3eb0c6f7a0b5ed8c, "9.999999999999997e-7"},
        {0x3eb0c6f7a0b5ed8d, "0.000001"},
        {0x41b3de4355555553, "333333333.3333332"},
        {0x41b3de4355555554, "333333333.33333325"},
        {0x41b3de4355555555, "333333333.3333333"},
        {0x41b3de4355555556, "333333333.3333334"},
        {0x41b3de4355555557, "333333333.33333343"},
        {0xbecbf647612f3696, "-0.0000033333333333333333"},
        {0x43143ff3c1cb0959, "1424953923781206.2"},
    };
    for (const NumberSample& sample : samples)
        CHECK(canonicalText(Json(std::bit_cast<double>(sample.bits))) == sample.text);
}

TEST_CASE("what appendix B calls an error never prints as a number and is refused in a record")
{
    for (const double value :
        {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
        CHECK(canonicalText(Json(value)) == "null");
        CHECK_FALSE(checkBody(Json(value)).has_value());
    }
}

TEST_CASE("integers print as they are up to 2^53 - 1 and as their double beyond")
{
    CHECK(canonicalOf("9007199254740991") == "9007199254740991");
    CHECK(canonicalOf("-9007199254740991") == "-9007199254740991");
    CHECK(canonicalOf("9007199254740993") == "9007199254740992");
    CHECK(canonicalOf("-9223372036854775808") == "-9223372036854776000");
}

TEST_CASE("control characters take their short escape or four lower-case hex digits")
{
    CHECK(canonicalText(Json(std::string("\b\t\n\f\r\x00\x1f\x7f\"\\/", 11)))
        == "\"\\b\\t\\n\\f\\r\\u0000\\u001f\x7f\\\"\\\\/\"");
}

TEST_CASE("canonical text is a fixed point: read again it gives itself")
{
    const std::string in = R"({"b":[1,2.5,-0.0,{"z":{},"a":[]}],"":"","a\u0000":"\ud83d\ude02"})";
    const std::string once = canonicalOf(in);
    CHECK(once == canonicalOf(once));
}

TEST_CASE("a body with a floating point number is refused and the member is named")
{
    const auto refused = checkBody(*parseJson(R"({"a":[1,{"b":2.5}]})"));
    REQUIRE_FALSE(refused.has_value());
    CHECK(refused.error().code == ErrorCode::InvalidArgument);
    CHECK(refused.error().message.find("body.a[1].b") == 0);
    CHECK(checkBody(*parseJson(R"({"a":[1,{"b":"2.5"}],"c":null,"d":true})")).has_value());
}

TEST_CASE("a body may hold integers up to 2^53 - 1 and no further")
{
    CHECK(checkBody(Json((std::int64_t{1} << 53) - 1)).has_value());
    CHECK(checkBody(Json(1 - (std::int64_t{1} << 53))).has_value());
    CHECK_FALSE(checkBody(Json(std::int64_t{1} << 53)).has_value());
    CHECK_FALSE(checkBody(Json(std::numeric_limits<std::int64_t>::min())).has_value());
}

TEST_CASE("a body with bytes that are not UTF-8 is refused, in values and in names")
{
    CHECK_FALSE(checkBody(Json(Json::Object{{"a", Json("\xC3")}})).has_value());
    CHECK_FALSE(checkBody(Json(Json::Object{{"\xFF", Json(1)}})).has_value());
}

TEST_CASE("UTF-8 is told from overlong forms, surrogates, cut sequences and too large values")
{
    for (const char* sound :
        {"", "a", "\u0080", "\u07FF", "\u0800", "\uD7FF", "\uE000", "\uFFFF", "\U00010000", "\U0010FFFF"})
        CHECK(isUtf8(sound));
    for (const char* broken :
        {"\x80", "\xC0\x80", "\xC1\xBF", "\xC2", "\xC2\x41", "\xE0\x9F\xBF", "\xED\xA0\x80", "\xE2\x82",
            "\xF0\x8F\xBF\xBF", "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xF0\x9F\x98"})
        CHECK_FALSE(isUtf8(broken));
}
