// SPDX-License-Identifier: MIT
#include "handmade.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("rounds against spot checks by hand")
{
    HandMade made;
    const auto check = [&](int day, Outcome clean, Outcome device, Outcome paper) {
        made.history.spotChecks.push_back({.slot = slotOf(october(day), 0),
            .seen = {{.item = "clean", .outcome = clean}, {.item = "device", .outcome = device},
                {.item = "paper", .outcome = paper}}});
    };
    for (int day = 1; day <= 10; ++day) {
        made.round(october(day), 0, day <= 4 ? "mmmg" : "mmmm");
        // Of four gaps seen by the round the check confirms three; it finds one more each in clean and paper.
        check(day, day == 9 ? Outcome::Gap : Outcome::Met, Outcome::Met,
            day <= 3 || day == 8 ? Outcome::Gap : Outcome::Met);
    }
    check(20, Outcome::Gap, Outcome::Gap, Outcome::Gap); // no round of that shift
    const TrustAgreement agreement = trustAgreement(made.selection());
    CHECK(agreement.checks == 10);
    CHECK(agreement.agreed == stats::Tally{.x = 27, .n = 30});
    REQUIRE(agreement.kappa);
    // po = 27/30; met 26/30 and 25/30: pe = (26*25 + 4*5)/900.
    const double pe = (26 * 25 + 4 * 5) / 900.0;
    CHECK(agreement.kappa->estimate == doctest::Approx((0.9 - pe) / (1 - pe)));
    CHECK(agreement.adjusted->agreement.estimate == doctest::Approx(0.8));
    REQUIRE(agreement.items.size() == 3);
    CHECK(agreement.items[0].item == 3);
    CHECK(agreement.items[0].agreed == 8);
    CHECK(agreement.items[0].roundMetCheckGap == 1);
    CHECK(agreement.items[0].roundGapCheckMet == 1);
    CHECK_FALSE(agreement.why);
}

TEST_CASE("without spot checks there is no agreement")
{
    CHECK(trustAgreement(HandMade().selection()).why == CannotSay::NoData);
}

TEST_CASE("few answers say no agreement, however well they agree")
{
    HandMade made;
    made.round(october(1), 0, "mmmm");
    made.history.spotChecks.push_back(
        {.slot = slotOf(october(1), 0), .seen = {{.item = "clean", .outcome = Outcome::Met}}});
    const TrustAgreement agreement = trustAgreement(made.selection());
    CHECK(agreement.why == CannotSay::TooFew);
    CHECK(agreement.agreed == stats::Tally{.x = 1, .n = 1});
    CHECK_FALSE(agreement.kappa);
    CHECK_FALSE(agreement.ac1); // by its formula it would be 1
    CHECK_FALSE(agreement.adjusted);
}
