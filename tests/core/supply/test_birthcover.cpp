// SPDX-License-Identifier: MIT
#include "core/supply/birthcover.h"

#include "shelf.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

const Instant now = at("2026-11-24 08:00");

ExpectedBirth birth(std::string name, std::string_view when, int babies = 1)
{
    return {.birth = std::move(name), .expected = at(when), .babies = babies};
}

WarmerStanding offWarmer(std::string device) { return {.device = std::move(device)}; }
WarmerStanding onSince(std::string device, std::string_view since)
{
    const auto runs = foldWarmers({recorded(1, WarmerSwitch{.device = device, .at = at(since), .on = true})});
    return warmerAt(runs, device, now);
}

std::vector<BirthCover> cover(const std::vector<ExpectedBirth>& births,
    const std::vector<WarmerStanding>& warmers, std::int64_t kits = 9)
{
    return coverBirths(births, warmers, kits, now);
}

}

TEST_CASE("a warmer that is warm serves a birth at any time")
{
    const auto out = cover({birth("b", "2026-11-24 08:05")}, {onSince("w", "2026-11-24 07:00")});
    CHECK(out.at(0).places == std::vector<BabyPlace>{{.place = WarmPlace::Ready, .device = "w"}});
}

TEST_CASE("a warmer that is on will be warm in time, or too late")
{
    const std::vector<WarmerStanding> warming{onSince("w", "2026-11-24 07:50")};
    const auto inTime = cover({birth("b", "2026-11-24 08:20")}, warming);
    CHECK(inTime.at(0).places.at(0).place == WarmPlace::Warming);
    CHECK(inTime.at(0).places.at(0).readyAt == at("2026-11-24 08:20"));
    const auto late = cover({birth("b", "2026-11-24 08:19")}, warming);
    CHECK(late.at(0).places.at(0).place == WarmPlace::Late);
    CHECK_FALSE(late.at(0).places.at(0).switchOnBy.has_value());
}

TEST_CASE("a warmer that is off must go on half an hour before the birth at the latest")
{
    const auto out = cover({birth("b", "2026-11-24 11:00")}, {offWarmer("w")});
    CHECK(out.at(0).places.at(0).place == WarmPlace::SwitchOn);
    CHECK(out.at(0).places.at(0).switchOnBy == at("2026-11-24 10:30"));
    const auto justNow = cover({birth("b", "2026-11-24 08:30")}, {offWarmer("w")});
    CHECK(justNow.at(0).places.at(0).place == WarmPlace::SwitchOn);
    const auto late = cover({birth("b", "2026-11-24 08:29")}, {offWarmer("w")});
    CHECK(late.at(0).places.at(0).place == WarmPlace::Late);
    CHECK(late.at(0).places.at(0).readyAt == at("2026-11-24 08:30"));
    CHECK(late.at(0).places.at(0).switchOnBy == at("2026-11-24 07:59"));
}

TEST_CASE("the warmer that is warm is taken before the one that is off")
{
    const auto out
        = cover({birth("b", "2026-11-24 11:00")}, {offWarmer("a"), onSince("b", "2026-11-24 07:00")});
    CHECK(out.at(0).places.at(0).device == "b");
    const auto sameTime
        = cover({birth("b", "2026-11-24 11:00")}, {offWarmer("a"), onSince("b", "2026-11-24 08:00")});
    CHECK(sameTime.at(0).places.at(0).device == "b");
}

TEST_CASE("twins need two warmers, and a birth too soon after another needs its own")
{
    const std::vector<WarmerStanding> one{onSince("w", "2026-11-24 07:00")};
    const auto twins = cover({birth("b", "2026-11-24 11:00", 2)}, one);
    CHECK(twins.at(0).places.at(0).place == WarmPlace::Ready);
    CHECK(twins.at(0).places.at(1).place == WarmPlace::None);
    const auto close = cover({birth("b", "2026-11-24 11:59"), birth("a", "2026-11-24 11:00")}, one);
    CHECK(close.at(0).birth.birth == "a");
    CHECK(close.at(1).places.at(0).place == WarmPlace::None);
    const auto apart = cover({birth("b", "2026-11-24 12:00"), birth("a", "2026-11-24 11:00")}, one);
    CHECK(apart.at(1).places.at(0).place == WarmPlace::Ready);
}

TEST_CASE("a ward without a warmer says so for every baby")
{
    const auto out = cover({birth("b", "2026-11-24 11:00", 3)}, {});
    CHECK(out.at(0).places == std::vector<BabyPlace>(3));
    CHECK(out.at(0).places.at(0).place == WarmPlace::None);
}

TEST_CASE("a birth that is overdue is due now, and when the warmer should have gone on does not move")
{
    const auto out = cover({birth("b", "2026-11-24 07:00")}, {offWarmer("w")});
    CHECK(out.at(0).places.at(0).place == WarmPlace::Late);
    CHECK(out.at(0).places.at(0).switchOnBy == at("2026-11-24 06:30"));
    CHECK(out.at(0).places.at(0).readyAt == at("2026-11-24 08:30"));
    const auto both = cover(
        {birth("a", "2026-11-24 06:00"), birth("b", "2026-11-24 08:10")}, {onSince("w", "2026-11-24 05:00")});
    CHECK(both.at(1).places.at(0).place == WarmPlace::None);
}

TEST_CASE("kits go to the first births, one each")
{
    const auto out = cover(
        {birth("c", "2026-11-24 13:00"), birth("a", "2026-11-24 11:00", 2), birth("b", "2026-11-24 12:00")},
        {}, 2);
    CHECK(out.at(0).kit);
    CHECK(out.at(1).kit);
    CHECK_FALSE(out.at(2).kit);
    CHECK_FALSE(cover({birth("a", "2026-11-24 11:00")}, {}, 0).at(0).kit);
}
