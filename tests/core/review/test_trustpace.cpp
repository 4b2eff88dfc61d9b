// SPDX-License-Identifier: MIT
#include "handmade.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("rounds below the floor are too fast, those from paper are not timed")
{
    HandMade made;
    for (int day = 1; day <= 12; ++day)
        made.round(october(day), 0, "mmmm", {.seconds = 100 + 10 * (day % 3)});
    made.round(october(13), 0, "mmmm", {.seconds = 7}); // four answers at two seconds: the floor is 8
    made.round(october(14), 0, "mmmm", {.seconds = 8});
    made.round(october(15), 0, "mmmm", {.seconds = 1, .fromPaper = true});
    const TrustPace pace = trustPace(made.selection());
    CHECK(pace.timed == 14);
    CHECK(pace.belowFloor == 1);
    CHECK(pace.tooFast == 2); // 8 seconds are far from the unit's own pace
    CHECK(pace.rounds == std::vector<std::size_t>{12, 13});
    CHECK(*pace.medianSeconds == doctest::Approx(110));
    CHECK(*pace.medianPerItem == doctest::Approx(27.5));
}

TEST_CASE("with few rounds only the floor judges")
{
    HandMade made;
    made.round(october(1), 0, "mmmm", {.seconds = 100});
    made.round(october(2), 0, "mmmm", {.seconds = 9});
    made.round(october(3), 0, "mmmm", {.seconds = 2});
    const TrustPace pace = trustPace(made.selection());
    CHECK(pace.why == CannotSay::TooFew);
    CHECK(pace.tooFast == 1);
    CHECK(trustPace(HandMade().selection()).why == CannotSay::NoData);
}
