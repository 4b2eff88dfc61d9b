// SPDX-License-Identifier: MIT
#include "handmade.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("readings on halves far more often than one in five are asked about")
{
    HandMade made;
    for (int i = 0; i < 60; ++i) // two of three on halves, over two degrees
        made.round(october(1 + i / 2), i % 2, "mmmm",
            {.temperature = i % 3 == 2 ? 26.1 + 0.1 * (i % 20) : 26 + 0.5 * (i % 5)});
    const auto all = trustReadings(made.selection());
    REQUIRE(all.size() == 1);
    CHECK(all[0].step == Decimal{.thousandths = 100});
    CHECK(all[0].onFives.tally.x >= 40);
    CHECK(all[0].rounded);
    CHECK_FALSE(all[0].neverVaries);
}

TEST_CASE("readings that take every ending alike are not asked about")
{
    HandMade made;
    for (int i = 0; i < 60; ++i)
        made.round(october(1 + i / 2), i % 2, "mmmm", {.temperature = 26 + 0.1 * (i % 20)});
    const auto all = trustReadings(made.selection());
    CHECK(all[0].onFives.tally == stats::Tally{.x = 12, .n = 60});
    CHECK_FALSE(all[0].rounded);
    REQUIRE(all[0].digits);
    CHECK(all[0].digits->chiSquare == doctest::Approx(0));
}

TEST_CASE("a narrow heap on one value is no rounding")
{
    HandMade made;
    for (int i = 0; i < 60; ++i)
        made.round(october(1 + i / 2), i % 2, "mmmm", {.temperature = i % 4 == 0 ? 27.1 : 27.0});
    const auto all = trustReadings(made.selection());
    CHECK(all[0].whyFives == CannotSay::NoSpread);
    CHECK_FALSE(all[0].rounded);
}

TEST_CASE("readings that stopped varying are asked about, those that never did are not")
{
    HandMade made;
    for (int i = 0; i < 20; ++i)
        made.round(october(1 + i), 0, "mmmm", {.temperature = 27});
    CHECK_FALSE(trustReadings(made.selection())[0].neverVaries);
    HandMade stopped;
    stopped.round(october(-3), 0, "mmmm", {.temperature = 26.4});
    for (int i = 0; i < 20; ++i)
        stopped.round(october(1 + i), 0, "mmmm", {.temperature = 27});
    const auto all = trustReadings(stopped.selection());
    CHECK(all[0].neverVaries);
    CHECK(all[0].longestRun == 20);
    CHECK(all[0].different == 1);
}
