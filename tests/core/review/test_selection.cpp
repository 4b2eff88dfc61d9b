// SPDX-License-Identifier: MIT
#include "handmade.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("rounds are parted at the first day of the span")
{
    HandMade made;
    made.round(october(0), 1, "mmmm");
    made.round(october(1), 0, "mmmm");
    const Selection selection = made.selection();
    CHECK(selection.before().size() == 1);
    CHECK(selection.rounds().size() == 1);
    CHECK(selection.shifts == std::vector<std::string>{"day", "night"});
    CHECK(toMs(selection.end()) == toMs(made.history.now));
}

TEST_CASE("a round cut to some items is judged over them alone")
{
    HandMade made;
    made.round(october(1), 0, "gmmg");
    CHECK(made.selection().rounds()[0].state == Readiness::NotReady);
    CHECK(made.selection().rounds()[0].index == doctest::Approx(0.5));
    const Selection rest = made.selection({.shifts = {}, .sections = {"rest"}, .items = {}});
    REQUIRE(rest.items.size() == 2);
    CHECK(rest.rounds()[0].state == Readiness::ReadyWithGaps);
    CHECK(rest.rounds()[0].items == stats::Tally{.x = 1, .n = 2});
    const Selection device = made.selection({.shifts = {}, .sections = {}, .items = {"device"}});
    CHECK(device.rounds()[0].state == Readiness::Ready);
    CHECK(device.rounds()[0].index == doctest::Approx(1));
}

TEST_CASE("a filter of shifts takes rounds and shifts due")
{
    HandMade made;
    made.round(october(1), 0, "mmmm");
    made.round(october(1), 1, "mmmm");
    const Selection nights = made.selection({.shifts = {"night"}, .sections = {}, .items = {}});
    CHECK(nights.rounds().size() == 1);
    CHECK(nights.rounds()[0].shift->code == "night");
    CHECK(nights.shifts == std::vector<std::string>{"night"});
}

TEST_CASE("an empty span and one that the history does not cover are refused")
{
    const HandMade made;
    CHECK(select(made.history, {.from = octoberFirst, .to = octoberFirst}).error().code
        == ErrorCode::InvalidArgument);
    CHECK(select(made.history, {.from = october(2), .to = october(33)}).error().code
        == ErrorCode::InvalidArgument);
    CHECK(select(made.history, {.from = october(-30), .to = october(1)}).error().code
        == ErrorCode::InvalidArgument);
    UnitHistory later = made.history;
    later.gapsFrom = october(2); // read for a review that begins a day later
    CHECK(select(later, {.from = octoberFirst, .to = october(4)}).error().code == ErrorCode::InvalidArgument);
    CHECK(select(later, {.from = october(2), .to = october(4)}));
}
