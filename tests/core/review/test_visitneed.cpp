// SPDX-License-Identifier: MIT
#include "tests/core/review/handmadedistrict.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using doctest::Approx;

namespace {

/** Eight units alike but for what a test adds. */
DistrictHistory alike()
{
    return test::handMadeDistrict({{"Alder", 80, 90}, {"Beck", 78, 90}, {"Cairn", 79, 90}, {"Dale", 77, 90},
        {"Elm", 81, 90}, {"Fell", 80, 90}, {"Garth", 77, 90}, {"Holm", 79, 90}});
}

}

TEST_CASE("critical gaps count by number and by the age of the oldest, each up to its most")
{
    DistrictHistory history = alike();
    history.units[2].open = {{.item = "oxytocin", .severity = Severity::Critical, .hours = 14 * 24},
        {.item = "oxytocin", .severity = Severity::Critical, .hours = 24},
        {.item = "light", .severity = Severity::Minor, .hours = 90 * 24}};
    history.units[4].open = {{.item = "suction", .severity = Severity::Critical, .hours = 70 * 24}};
    const auto visits = reviewDistrict(history).visits;
    REQUIRE(visits.size() == 2);
    CHECK(visits[0].unit == 2);
    CHECK(visits[0].points == Approx(3 + 3 + 2)); // two gaps, two weeks
    CHECK(visits[0].reasons.front().count == 2);
    CHECK(visits[0].help == VisitHelp::Supplies);
    CHECK(visits[1].points == Approx(3 + 4)); // ten weeks count as four
    CHECK(visits[1].help == VisitHelp::Engineer);
}

TEST_CASE("weights are options: without weight a reason is none")
{
    DistrictHistory history = alike();
    history.units[2].open = {{.item = "oxytocin", .severity = Severity::Critical, .hours = 24}};
    DistrictOptions options;
    options.weights.criticalGap = 0;
    options.weights.criticalWeek = 0;
    CHECK(reviewDistrict(history, options).visits.empty());
}
