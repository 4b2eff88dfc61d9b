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

namespace {

/** Shelves for every unit, of which those of the third one are these. */
void shelve(DistrictHistory& history, std::vector<ShelfStand> third)
{
    for (const DistrictUnit& unit : history.units)
        history.shelves.push_back({.unit = unit.id, .shelves = {}});
    history.shelves[2].shelves = std::move(third);
}

ShelfStand stock(const std::string& name, std::int64_t usable, double perDay)
{
    return {.item = {.id = name, .name = name, .levels = {.par = 50, .minimum = 10}},
        .usable = usable,
        .perDay = perDay,
        .daysToDelivery = 10};
}

}

TEST_CASE("stock that is out or will not last until its delivery is a reason, and it is for supplies")
{
    DistrictHistory history = alike();
    shelve(history, {stock("Gloves", 0, 0), stock("Caps", 30, 5), stock("Cord clamps", 60, 5)});
    const auto visits = reviewDistrict(history).visits;
    REQUIRE(visits.size() == 1);
    CHECK(visits[0].unit == 2);
    CHECK(visits[0].points == Approx(2 * 2));
    CHECK(visits[0].help == VisitHelp::Supplies);
    REQUIRE(visits[0].reasons.size() == 1);
    CHECK(visits[0].reasons[0].code == VisitReasonCode::RunsOut);
    CHECK(visits[0].reasons[0].count == 2);
    CHECK(visits[0].reasons[0].names == std::vector<std::string>{"Gloves", "Caps"});
}

TEST_CASE("running out counts up to its most, and not at all without shelves")
{
    DistrictHistory history = alike();
    CHECK(reviewDistrict(history).visits.empty());
    std::vector<ShelfStand> many;
    for (int i = 0; i < 9; ++i)
        many.push_back(stock("Thing " + std::to_string(i), 0, 1));
    shelve(history, many);
    CHECK(reviewDistrict(history).visits.at(0).points == Approx(2 * 3));
}
