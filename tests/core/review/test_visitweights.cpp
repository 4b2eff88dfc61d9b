// SPDX-License-Identifier: MIT
#include "core/review/visitweights.h"

#include <doctest/doctest.h>
#include <set>

using namespace cradlepost;

TEST_CASE("each weight can be set under its code and is read back, and no other one changes")
{
    const auto plain = weightsOf({});
    std::set<std::string> codes;
    for (std::size_t i = 0; i < plain.size(); ++i) {
        CHECK(codes.insert(plain[i].code).second);
        VisitWeights weights;
        CHECK(setWeight(weights, plain[i].code, 7));
        const auto set = weightsOf(weights);
        for (std::size_t j = 0; j < set.size(); ++j)
            CHECK(set[j].value == (j == i ? 7.0 : plain[j].value));
    }
    CHECK(codes.size() == 14);
}

TEST_CASE("what is not known, below 0, too much or broken where it counts is not set")
{
    VisitWeights weights;
    CHECK_FALSE(setWeight(weights, "luck", 1));
    CHECK_FALSE(setWeight(weights, "fell", -1));
    CHECK_FALSE(setWeight(weights, "fell", mostWeight + 1));
    CHECK_FALSE(setWeight(weights, "most-questions", 1.5));
    CHECK(weightsOf(weights) == weightsOf({}));
    CHECK(setWeight(weights, "fell", 1.5));
}

TEST_CASE("weights as they come are an empty text, others are kept and read back")
{
    CHECK(weightsText({}) == "");
    VisitWeights weights;
    setWeight(weights, "critical-gap", 2.5);
    setWeight(weights, "most-questions", 0);
    CHECK(weightsText(weights) == "critical-gap=2.5 most-questions=0");
    const auto read = weightsFromText(weightsText(weights));
    REQUIRE(read.has_value());
    CHECK(weightsOf(*read) == weightsOf(weights));
    CHECK(weightsOf(*weightsFromText("")) == weightsOf({}));
    for (const char* text : {"fell", "fell=", "fell=x", "luck=3", "fell=3  below=2", "fell=-2"})
        CHECK_FALSE(weightsFromText(text).has_value());
}
