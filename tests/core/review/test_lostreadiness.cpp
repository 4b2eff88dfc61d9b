// SPDX-License-Identifier: MIT
#include "handmade.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("losses by hand: gaps times severity, the largest first")
{
    HandMade made;
    made.round(october(1), 0, "gmmg");
    made.round(october(1), 1, "mggg");
    made.round(october(2), 0, "mmng");
    made.round(october(2), 1, "ummm");
    const LostReadiness lost = lostReadiness(made.selection());
    // clean 1 * 3, temperature 1 * 2, device 1 * 2, paper 3 * 1: ten in all.
    CHECK(lost.whole == doctest::Approx(10));
    REQUIRE(lost.items.size() == 4);
    CHECK(lost.items[0].item == 0); // of equals the first of the checklist
    CHECK(lost.items[0].gaps.tally == stats::Tally{.x = 1, .n = 3}); // not checked once
    CHECK(lost.items[0].notChecked == 1);
    CHECK(lost.items[1].item == 3);
    CHECK(lost.items[1].gaps.tally == stats::Tally{.x = 3, .n = 4});
    CHECK(lost.items[1].cumulated == doctest::Approx(0.6));
    CHECK(lost.items[3].item == 2);
    CHECK(lost.items[3].gaps.tally == stats::Tally{.x = 1, .n = 3}); // did not apply once
    CHECK(lost.items[3].cumulated == doctest::Approx(1));
    CHECK(lost.vitalFew == 3);
}

TEST_CASE("weights can be set, and a month without a gap has no loss")
{
    HandMade made;
    made.round(october(1), 0, "gmmg");
    ReviewOptions options;
    options.weights = {.critical = 1, .major = 1, .minor = 5};
    CHECK(lostReadiness(made.selection({}, options)).items[0].item == 3);
    CHECK(lostReadiness(HandMade().selection()).why == CannotSay::NoData);
    HandMade well;
    well.round(october(1), 0, "mmmm");
    CHECK(lostReadiness(well.selection()).why == CannotSay::NoSpread);
}
