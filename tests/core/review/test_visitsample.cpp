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
