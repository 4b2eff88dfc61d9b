// SPDX-License-Identifier: MIT
// Newcombe's limits themselves: tests/core/stats/test_twoproportions.cpp.
#include "core/review/widened.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using doctest::Approx;

TEST_CASE("widened limits stand four times as far off at sixteen times the variance, and never beyond 1")
{
    const stats::Tally first{.x = 56, .n = 70};
    const stats::Tally second{.x = 48, .n = 80};
    // Newcombe (1998), example a: 0.2, 0.0524 to 0.3339.
    const auto plain = widenedDifference(first, second, 1);
    REQUIRE(plain);
    CHECK(plain->interval.low == Approx(0.0524).epsilon(0.001));
    CHECK(plain->interval.high == Approx(0.3339).epsilon(0.001));
    const auto wide = widenedDifference(first, second, 16);
    CHECK(wide->interval.low == Approx(0.2 - 4 * (0.2 - plain->interval.low)));
    CHECK(widenedDifference(first, second, 1e6)->interval.high == 1);
    CHECK_FALSE(widenedDifference(first, {}, 1));
    CHECK(*widenedP(first, second, 16) > *widenedP(first, second, 1));
}
