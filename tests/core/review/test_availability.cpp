// SPDX-License-Identifier: MIT
#include "handmade.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("availability by hand: hours without an open gap")
{
    HandMade made;
    made.round(october(1), 0, "mmmm");
    made.gap("device", Severity::Major, -10, 20); // 20 h in the span, opened before it
    made.gap("device", Severity::Major, 100, 140);
    made.gap("device", Severity::Major, 744 - 14.4, std::nullopt);
    const auto all = availability(made.selection());
    REQUIRE(all.size() == 1); // the only function test
    CHECK(all[0].hours == doctest::Approx(744));
    CHECK(all[0].downHours == doctest::Approx(74.4));
    CHECK(all[0].share == doctest::Approx(0.9));
    CHECK(all[0].failures == 2);
    CHECK(*all[0].hoursBetween == doctest::Approx(669.6 / 2));
    CHECK(*all[0].longestDown == doctest::Approx(40));
    CHECK(all[0].downAtEnd);
}

TEST_CASE("equipment that no round looked at has no availability")
{
    HandMade made;
    made.round(october(1), 0, "mmnm");
    CHECK(availability(made.selection()).empty());
}
