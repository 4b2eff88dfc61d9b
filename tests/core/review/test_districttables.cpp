// SPDX-License-Identifier: MIT
#include "tests/core/review/handmadedistrict.h"

#include "core/review/districttables.h"

#include <doctest/doctest.h>

using namespace cradlepost;

TEST_CASE("the tables have as many cells as columns and show the weights")
{
    DistrictHistory history = test::handMadeDistrict({{"Alder", 80, 90}, {"Beck", 78, 90}, {"Cairn", 0, 0}});
    history.units[0].gaps[0] = {.x = 30, .n = 90};
    history.units[1].lastRound = history.now;
    const DistrictReview review = reviewDistrict(history);
    bool hasWeights = false;
    for (const DataTable& table : districtTables(review)) {
        for (const auto& row : table.rows)
            CHECK_MESSAGE(row.size() == table.columns.size(), table.id);
        hasWeights = hasWeights || (table.id == "visit-weights" && table.rows.size() == 14);
    }
    CHECK(hasWeights);
}
