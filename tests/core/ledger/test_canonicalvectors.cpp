// SPDX-License-Identifier: MIT
// The input and output vectors that go with RFC 8785 (its appendix H names their place: the folder testdata of
// cyberphone/json-canonicalization), compared with the files. Left out: simpleString, a subset of the others.
#include "core/ledger/canonical.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

struct Vector
{
    const char* name;
    const char* input;
    const char* output;
    bool fitsRecord; ///< a record holds no floating point
};

// The file with the output of `arrays` was not at hand; its output is by the rules of section 3.2.3.
constexpr Vector vectors[] = {
    {"arrays", "[\n  56,\n  {\n    \"d\": true,\n    \"10\": null,\n    \"1\": [ ]\n  }\n]",
        R"([56,{"1":[],"10":null,"d":true}])", true},
    {"french",
        "{\n  \"peach\": \"This sorting order\",\n  \"p\u00e9ch\u00e9\": \"is wrong according to French\",\n"
        "  \"p\u00eache\": \"but canonicalization MUST\",\n  \"sin\":   \"ingnore locale\"\n}\n",
        "{\"peach\":\"This sorting order\",\"p\u00e9ch\u00e9\":\"is wrong according to French\","
        "\"p\u00eache\":\"but canonicalization MUST\",\"sin\":\"ingnore locale\"}",
        true},
    {"structures",
        R"({ "1": {"f": {"f": "hi","F": 5} ,"\n": 56.0}, "10": { }, "": "empty", "a": { }, "111": [ { } ], "A": { } })",
        R"({"":"empty","1":{"\n":56,"f":{"F":5,"f":"hi"}},"10":{},"111":[{}],"A":{},"a":{}})", false},
    {"unicode", R"({ "Unnormalized Unicode":"\u1e0d\u0307" })", "{\"Unnormalized Unicode\":\"\u1e0d\u0307\"}", true},
    {"values",
        R"({ "numbers": [1E30, 4.50, 333333333.33333329, 2e-3, 0.000000000000000000000000001],
             "escaping": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/", "literals": [null, true, false] })",
        "{\"escaping\":\"\u20ac$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\",\"literals\":[null,true,false],"
        "\"numbers\":[1e+30,4.5,333333333.3333333,0.002,1e-27]}",
        false},
    {"weird",
        R"({ "\u20ac": "Euro Sign", "1": "One", "\u0080": "Control\u007f", "\ud83d\ude02": "Smiley",
             "\u00f6": "Latin Small Letter O With Diaeresis", "\ufb33": "Hebrew Letter Dalet With Dagesh",
             "</script>": "Browser Challenge" })",
        "{\"1\":\"One\",\"</script>\":\"Browser Challenge\",\"\u0080\":\"Control\x7f\","
        "\"\u00f6\":\"Latin Small Letter O With Diaeresis\",\"\u20ac\":\"Euro Sign\",\"\U0001F602\":\"Smiley\","
        "\"\uFB33\":\"Hebrew Letter Dalet With Dagesh\"}",
        true},
};

}

TEST_CASE("the vectors that go with RFC 8785 come out as their output files hold them")
{
    for (const Vector& vector : vectors) {
        CAPTURE(vector.name);
        const auto json = parseJson(vector.input);
        REQUIRE(json.has_value());
        CHECK(canonicalText(*json) == vector.output);
        CHECK(checkBody(*json).has_value() == vector.fitsRecord);
    }
}
