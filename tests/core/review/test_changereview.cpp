// SPDX-License-Identifier: MIT
#include "handmade.h"

#include "core/stats/twoproportions.h"

#include <cmath>
#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("before and after a change idea, for the items that it names")
{
    HandMade made;
    for (int day = -19; day <= 20; ++day) // gaps in paper turn by turn: no carry-over
        made.round(
            october(day), 0, day < 1 ? (day % 2 == 0 ? "gmmg" : "gmmm") : (day % 4 == 0 ? "gmmg" : "gmmm"));
    made.history.changes.push_back(
        {.id = "idea", .title = "A box for papers", .from = october(1), .items = {"paper"}});
    const auto effects = changeEffects(made.selection());
    REQUIRE(effects.size() == 1);
    CHECK(effects[0].roundsBefore == 20);
    CHECK(effects[0].metBefore == stats::Tally{.x = 10, .n = 20});
    CHECK(effects[0].metAfter == stats::Tally{.x = 15, .n = 20});
    REQUIRE(effects[0].difference);
    CHECK(effects[0].difference->estimate == doctest::Approx(0.25));
    // Pearson: 20 rounds each with (1 - 0)^2 terms sum to 40 over 38 degrees of freedom.
    CHECK(effects[0].dispersion == doctest::Approx(40.0 / 38));
    const auto plain = stats::newcombeDifference({.x = 15, .n = 20}, {.x = 10, .n = 20});
    REQUIRE(plain);
    const double root = std::sqrt(40.0 / 38);
    CHECK(effects[0].difference->interval.low == doctest::Approx(0.25 - (0.25 - plain->interval.low) * root));
    CHECK_FALSE(effects[0].better());
}

TEST_CASE("gaps that last widen the interval; few rounds say nothing; old ideas are left out")
{
    HandMade made;
    for (int day = -19; day <= 20; ++day)
        made.round(october(day), 0, day < -9 || day > 10 ? "mmmg" : "mmmm");
    made.history.changes.push_back({.id = "a", .from = october(-100), .until = october(0)});
    made.history.changes.push_back({.id = "b", .from = october(1), .items = {"paper"}});
    made.history.changes.push_back({.id = "c", .from = october(15)});
    const auto effects = changeEffects(made.selection());
    REQUIRE(effects.size() == 2);
    CHECK(effects[0].change == 1);
    CHECK(effects[0].dispersion > 10);
    CHECK(effects[1].why == CannotSay::TooFew);
}
