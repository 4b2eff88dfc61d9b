// SPDX-License-Identifier: MIT
#include "core/supply/warmerclock.h"

#include "shelf.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using std::chrono::minutes;

namespace {

WarmerSwitch on(std::string_view when, std::string device = "warmer-1")
{
    return {.device = std::move(device), .at = at(when), .on = true};
}
WarmerSwitch off(std::string_view when, std::string device = "warmer-1")
{
    return {.device = std::move(device), .at = at(when), .on = false};
}

std::vector<WarmerRun> runs(std::vector<WarmerSwitch> events)
{
    return foldWarmers(recordedAll(std::move(events)));
}

std::vector<BirthSpan> board(
    std::string_view said, std::string_view when, std::optional<std::string_view> done = {})
{
    std::vector<BirthEvent> events{{.birth = "b", .at = at(said), .expected = at(when)}};
    if (done)
        events.push_back({.birth = "b", .at = at(*done), .change = BirthChange::Done});
    return foldBirths(recordedAll(events));
}

}

TEST_CASE("a warmer is ready half an hour after it was switched on, to the minute")
{
    // 30 minutes before a birth: common practice, no source.
    const auto all = runs({on("2026-11-24 08:00")});
    CHECK(warmerAt(all, "warmer-1", at("2026-11-24 07:59")).state == WarmerState::Off);
    const auto warming = warmerAt(all, "warmer-1", at("2026-11-24 08:29"));
    CHECK(warming.state == WarmerState::Warming);
    CHECK(warming.readyAt == at("2026-11-24 08:30"));
    CHECK(warming.onFor == minutes(29));
    CHECK(warmerAt(all, "warmer-1", at("2026-11-24 08:30")).state == WarmerState::Ready);
}

TEST_CASE("the site's own warming time counts")
{
    const auto all = runs({on("2026-11-24 08:00")});
    CHECK(warmerAt(all, "warmer-1", at("2026-11-24 08:20"), minutes(20)).state == WarmerState::Ready);
    CHECK(warmerAt(all, "warmer-1", at("2026-11-24 08:20"), minutes(45)).readyAt == at("2026-11-24 08:45"));
}

TEST_CASE("switching on again counts from the first time, and after a break from the start")
{
    const auto all = runs({on("2026-11-24 08:00"), on("2026-11-24 08:20"), off("2026-11-24 09:00"),
        off("2026-11-24 09:05"), on("2026-11-24 09:10")});
    REQUIRE(all.size() == 2);
    CHECK(warmerAt(all, "warmer-1", at("2026-11-24 08:31")).onSince == at("2026-11-24 08:00"));
    CHECK(warmerAt(all, "warmer-1", at("2026-11-24 09:00")).state == WarmerState::Off);
    CHECK(warmerAt(all, "warmer-1", at("2026-11-24 09:30")).state == WarmerState::Warming);
}

TEST_CASE("each warmer has its own clock, and one that nobody switched on is off")
{
    const auto all = runs({on("2026-11-24 08:00"), off("2026-11-24 08:30", "warmer-2")});
    CHECK(warmerAt(all, "warmer-1", at("2026-11-24 10:00")).state == WarmerState::Ready);
    CHECK(warmerAt(all, "warmer-2", at("2026-11-24 10:00")).state == WarmerState::Off);
    CHECK_FALSE(warmerAt(all, "warmer-3", at("2026-11-24 10:00")).onSince.has_value());
}

TEST_CASE("runs are the same in whatever order the records arrive")
{
    const auto facts = recordedAll<WarmerSwitch>({on("2026-11-24 08:00"), off("2026-11-24 09:00"),
        on("2026-11-24 09:00", "warmer-2"), on("2026-11-24 10:00")});
    CHECK(foldWarmers({facts[3], facts[1], facts[2], facts[0]}) == foldWarmers(facts));
}

TEST_CASE("a warmer switched off while a birth is near is found until it is on again or the birth is over")
{
    const auto all = runs({on("2026-11-24 08:00"), off("2026-11-24 10:00")});
    const auto near = board("2026-11-24 09:00", "2026-11-24 12:00");
    const auto found = offTooSoon(all, near, at("2026-11-24 10:30"));
    REQUIRE(found.size() == 1);
    CHECK(found[0]
        == OffTooSoon{.device = "warmer-1",
            .off = at("2026-11-24 10:00"),
            .birth = "b",
            .expected = at("2026-11-24 12:00")});
    CHECK(offTooSoon(all, near, at("2026-11-24 09:59")).empty());
    const auto again = runs({on("2026-11-24 08:00"), off("2026-11-24 10:00"), on("2026-11-24 10:20")});
    CHECK(offTooSoon(again, near, at("2026-11-24 10:10")).size() == 1);
    CHECK(offTooSoon(again, near, at("2026-11-24 10:30")).empty());
    const auto done = board("2026-11-24 09:00", "2026-11-24 12:00", "2026-11-24 11:00");
    CHECK(offTooSoon(all, done, at("2026-11-24 10:30")).size() == 1);
    CHECK(offTooSoon(all, done, at("2026-11-24 11:30")).empty());
}

TEST_CASE("a warmer may go off when the birth is far, over, or not yet said")
{
    const auto all = runs({on("2026-11-24 08:00"), off("2026-11-24 10:00")});
    CHECK(offTooSoon(all, board("2026-11-24 09:00", "2026-11-24 14:01"), at("2026-11-24 11:00")).empty());
    CHECK(offTooSoon(all, board("2026-11-24 09:00", "2026-11-24 14:00"), at("2026-11-24 11:00")).size() == 1);
    CHECK(offTooSoon(all, board("2026-11-24 09:00", "2026-11-24 14:01"), at("2026-11-24 11:00"),
              std::chrono::hours(5))
              .size()
        == 1);
    CHECK(offTooSoon(
        all, board("2026-11-24 08:00", "2026-11-24 09:50", "2026-11-24 10:00"), at("2026-11-24 11:00"))
              .empty());
    CHECK(offTooSoon(all, board("2026-11-24 10:30", "2026-11-24 11:30"), at("2026-11-24 11:00")).empty());
}

TEST_CASE("a switch is written and read again as it was")
{
    for (const WarmerSwitch& event : {on("2026-11-24 08:00"), off("2026-11-24 08:00")}) {
        CHECK(checkSwitch(event).has_value());
        CHECK(isRecordBody(toBody(event)));
        const auto again = warmerSwitchFromBody(toBody(event));
        REQUIRE(again.has_value());
        CHECK(*again == event);
    }
    CHECK(canonicalText(toBody(on("2026-11-24 08:00")))
        == R"({"at":1795507200000,"device":"warmer-1","switched":"on"})");
    CHECK_FALSE(checkSwitch({.device = "", .at = {}, .on = true}).has_value());
    CHECK_FALSE(
        warmerSwitchFromBody(parseJson(R"({"at":1,"device":"w","switched":"up"})").value()).has_value());
}
