// SPDX-License-Identifier: MIT
#include "handmade.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("repeats are counted against chance from the unit's own shares")
{
    HandMade made;
    for (int day = 1; day <= 20; ++day)
        made.round(october(day), 0, day % 2 == 0 ? "mmmm" : "mmmg",
            {.temperature = day <= 16 ? 26 + 0.1 * day : 27.7});
    const TrustRepeats repeats = trustRepeats(made.selection());
    CHECK(repeats.compared == 20);
    // Days 17 and 19 say the same, 18 and 20 too.
    CHECK(repeats.repeating == 2);
    REQUIRE(repeats.chance);
    CHECK(repeats.chance->seen == 2);
    CHECK(repeats.chance->pairs == 190);
    // Paper: two halves, 1/2. Temperature: 16 values once, 27.7 four times: (16 + 16)/400.
    CHECK(repeats.chance->expected == doctest::Approx(190 * 0.5 * 32.0 / 400));
}

TEST_CASE("without readings nothing is said: gaps that last make rounds alike")
{
    HandMade made;
    for (int day = 1; day <= 20; ++day)
        made.round(october(day), 0, "mmmg");
    const TrustRepeats repeats = trustRepeats(made.selection());
    CHECK(repeats.why == CannotSay::NoSpread);
    CHECK_FALSE(repeats.chance);
}

TEST_CASE("few rounds are not compared")
{
    HandMade made;
    for (int day = 1; day <= 9; ++day)
        made.round(october(day), 0, "mmmm", {.temperature = 27});
    CHECK(trustRepeats(made.selection()).why == CannotSay::TooFew);
}
