// SPDX-License-Identifier: MIT
#include "core/base/json.h"

#include <doctest/doctest.h>

using namespace cradlepost;

TEST_CASE("a value knows the line it was read from")
{
    const auto root = parseJson("{\n \"a\": 1,\n \"b\": [\n  \"x\",\n  -2\n ]\n}\n");
    REQUIRE(root);
    CHECK(root->line == 1);
    CHECK(*root->findInteger("a") == 1);
    const auto& list = *root->find("b")->asArray();
    CHECK(list[0].line == 4);
    CHECK(*list[1].asInteger() == -2);
    CHECK(list[1].line == 5);
}

TEST_CASE("a broken text is refused with line and column")
{
    const auto bad = parseJson("{\n \"a\": 1,\n}");
    REQUIRE_FALSE(bad);
    CHECK(bad.error().message.starts_with("line 3, column"));
}

TEST_CASE("a name that stands twice is refused (RFC 7493, 2.3)")
{
    const auto bad = parseJson(R"({"a":1,"b":2,"a":3})");
    REQUIRE_FALSE(bad);
    CHECK(bad.error().message.find("'a' stands twice") != std::string::npos);
}

TEST_CASE("deep nesting, stray bytes and wrong encodings are refused")
{
    CHECK_FALSE(parseJson(std::string(100000, '[')));
    CHECK_FALSE(parseJson(std::string(65, '[') + std::string(65, ']')));
    CHECK(parseJson(std::string(64, '[') + std::string(64, ']')));
    CHECK_FALSE(parseJson("1 2"));
    CHECK_FALSE(parseJson(std::string_view("1\0", 2)));
    CHECK_FALSE(parseJson("\"\xff\""));
    CHECK_FALSE(parseJson("\"\\ud800\""));
    CHECK_FALSE(parseJson(""));
}

TEST_CASE("whole numbers stay whole and large ones fall to floating point")
{
    CHECK(*parseJson("9007199254740993")->asInteger() == 9007199254740993);
    CHECK(std::holds_alternative<double>(parseJson("18446744073709551615")->value));
    CHECK(std::holds_alternative<double>(parseJson("1.0")->value));
}
