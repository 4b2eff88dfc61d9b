// SPDX-License-Identifier: MIT
// Rules and risks meet published tables in tests/core/stats/test_lqas.cpp.
#include "tests/core/review/handmadedistrict.h"

#include <doctest/doctest.h>

using namespace cradlepost;

TEST_CASE("the visit's sample keeps both risks, and there is none without a checklist")
{
    DistrictHistory history = test::handMadeDistrict({{"Alder", 80, 90}});
    CHECK_FALSE(visitSample(history, {}));
    Checklist list;
    list.sections = {{.items = std::vector<Item>(57)}};
    history.lists = {{.checklist = std::make_shared<const Checklist>(list)}};
    const DistrictOptions options;
    const auto sample = visitSample(history, options);
    REQUIRE(sample);
    CHECK(sample->lot == 57);
    CHECK(sample->rule.n < 57);
    CHECK(sample->rule.d <= sample->rule.n);
    CHECK(sample->rule.risks.goodFailed <= options.sampleRisk);
    CHECK(sample->rule.risks.poorPassed <= options.sampleRisk);
    DistrictOptions impossible;
    impossible.sampleGood = 0.76; // one item apart: only a look at all of them would do
    const auto whole = visitSample(history, impossible);
    CHECK((!whole || whole->rule.n > sample->rule.n));
}

TEST_CASE("a sample is drawn without repeats, the same for the same seed, another for another")
{
    const auto drawn = drawSample(57, 18, "sorrel-hill 2026-11-03");
    CHECK(drawn.size() == 18);
    for (std::size_t i = 0; i < drawn.size(); ++i) {
        CHECK(drawn[i] < 57);
        if (i > 0)
            CHECK(drawn[i - 1] < drawn[i]);
    }
    CHECK(drawSample(57, 18, "sorrel-hill 2026-11-03") == drawn);
    CHECK(drawSample(57, 18, "sorrel-hill 2026-11-04") != drawn);
    CHECK(drawSample(5, 9, "x") == std::vector<std::size_t>{0, 1, 2, 3, 4});
    CHECK(drawSample(5, 0, "x").empty());
}

TEST_CASE("over many seeds every item is drawn about as often as every other")
{
    constexpr int seeds = 6000;
    std::vector<int> times(57);
    for (int seed = 0; seed < seeds; ++seed) {
        for (const std::size_t item : drawSample(57, 18, std::to_string(seed)))
            ++times[item];
    }
    // Mean 1894.7, standard deviation 36: five of them each way.
    for (const int one : times) {
        CHECK(one > 1895 - 180);
        CHECK(one < 1895 + 180);
    }
}
