// SPDX-License-Identifier: MIT
#include "app/compute/report.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::compute;

namespace {

Report sample()
{
    Json::Array rows;
    rows.emplace_back(Json::Object{{"row", rowNumber(0)}, {"low", 0.1}, {"name", "a \"b\"\n"}});
    rows.emplace_back(Json::Object{{"row", rowNumber(1)}, {"low", maybe(std::nullopt)}, {"name", "c"}});
    return {{{"method", "x"}, {"big", 1e300}, {"third", 1.0 / 3}, {"flag", true},
        {"inner", Json::Object{{"n", 5}}}, {"empty", Json::Array{}}, {"rows", std::move(rows)}}};
}

}

TEST_CASE("an answer is one line of JSON in full precision")
{
    const auto text = toJsonLine(sample());
    CHECK(text
        == "{\"method\":\"x\",\"big\":1e+300,\"third\":0.3333333333333333,\"flag\":true,\"inner\":{\"n\":5},"
           "\"empty\":[],"
           "\"rows\":[{\"row\":1,\"low\":0.1,\"name\":\"a "
           "\\\"b\\\"\\n\"},{\"row\":2,\"low\":null,\"name\":\"c\"}]}\n");
    const auto back = parseJson(text);
    REQUIRE(back);
    CHECK(std::get<double>(back->find("third")->value) == 1.0 / 3);
}

TEST_CASE("an answer for eyes lines up its tables")
{
    const auto text = toPlainText(sample());
    CHECK(text.find("third: 0.3333333333333333\n") != std::string::npos);
    CHECK(text.find("inner.n: 5\n") != std::string::npos);
    CHECK(text.find("rows:\n  row low name\n  1   0.1 a") != std::string::npos);
    CHECK(text.find("  2   -   c\n") != std::string::npos);
}
