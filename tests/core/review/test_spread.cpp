// SPDX-License-Identifier: MIT
#include "core/review/spread.h"

#include <doctest/doctest.h>

#include <vector>

using namespace cradlepost;

TEST_CASE("rounds that spread as chance would are not widened")
{
    // p = 0.5, np(1-p) = 2.5: residuals 1 of 10 apart, 2 * 0.4 over 1 degree of freedom is below 1.
    const std::vector<GroupedTally> rounds{{0, {.x = 4, .n = 10}}, {0, {.x = 6, .n = 10}}};
    CHECK(spreadOf(rounds).dispersion == 1);
    CHECK(spreadOf(rounds).carryOver == 1); // neighbours differ
}

TEST_CASE("dispersion and carry-over of four rounds, by hand")
{
    // p = 0.5, residuals -4, -4, 4, 4 over sqrt(2.5): squares 4 * 6.4 = 25.6 over 3; neighbours 6.4 - 6.4
    // + 6.4.
    const std::vector<GroupedTally> rounds{
        {0, {.x = 1, .n = 10}}, {0, {.x = 1, .n = 10}}, {0, {.x = 9, .n = 10}}, {0, {.x = 9, .n = 10}}};
    const Spread spread = spreadOf(rounds);
    CHECK(spread.dispersion == doctest::Approx(25.6 / 3));
    CHECK(spread.carryOver == doctest::Approx((1 + 0.25) / (1 - 0.25))); // r = 6.4/25.6
}

TEST_CASE("a group that met everything counts in neither")
{
    const std::vector<GroupedTally> rounds{{0, {.x = 10, .n = 10}}, {0, {.x = 10, .n = 10}}, {1, {}}};
    CHECK(spreadOf(rounds).dispersion == 1);
    CHECK(spreadOf(rounds).carryOver == 1);
}
