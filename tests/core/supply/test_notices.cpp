// SPDX-License-Identifier: MIT
#include "core/supply/notices.h"

#include "shelf.h"

#include <doctest/doctest.h>
#include <set>

using namespace cradlepost;
using Code = NoticeCode;

namespace {

const Instant now = at("2026-11-24 08:00");

std::vector<Notice> notices(const NoticeInput& input) { return noticesAt(input, TimeZone::utc()); }

std::string codesOf(const std::vector<Notice>& all)
{
    std::string out;
    for (const Notice& one : all)
        out += (out.empty() ? "" : " ") + std::string(codeName(one.code));
    return out;
}

NoticeInput atTime(std::string_view when) { return {.now = at(when)}; }

NoticeInput withBirth(std::string_view when, std::string_view expected,
    std::span<const WarmerStanding> warmers, std::int64_t kits)
{
    NoticeInput input = atTime(when);
    input.births = coverBirths({{.birth = "b", .expected = at(expected)}}, warmers, kits, input.now);
    return input;
}

}

TEST_CASE("a quiet ward has no notices") { CHECK(notices(atTime("2026-11-24 08:00")).empty()); }

TEST_CASE("a warmer that has just become ready is news for a while")
{
    const auto runs
        = foldWarmers({recorded(1, WarmerSwitch{.device = "w", .at = at("2026-11-24 07:30"), .on = true})});
    const auto told = [&](std::string_view when) {
        NoticeInput input = atTime(when);
        input.warmers = {warmerAt(runs, "w", input.now)};
        return notices(input);
    };
    CHECK(told("2026-11-24 07:59").empty());
    REQUIRE(told("2026-11-24 08:00").size() == 1);
    CHECK(told("2026-11-24 08:00")[0].code == Code::WarmerReady);
    CHECK(told("2026-11-24 08:00")[0].at == now);
    CHECK(told("2026-11-24 08:15").at(0).key == told("2026-11-24 08:00").at(0).key);
    CHECK(told("2026-11-24 08:16").empty());
}

TEST_CASE("a birth is told when it is near and has no warmer or no kit")
{
    CHECK(notices(withBirth("2026-11-24 07:59", "2026-11-24 10:00", {}, 0)).empty());
    const auto near = notices(withBirth("2026-11-24 08:00", "2026-11-24 10:00", {}, 0));
    CHECK(codesOf(near) == "birth-without-warmer birth-without-kit");
    CHECK(near.at(0).value == "none");
    CHECK(near.at(0).at == now);
    CHECK(notices(withBirth("2026-11-24 09:00", "2026-11-24 10:00", {}, 0)).at(0).key == near.at(0).key);
    const std::vector<WarmerStanding> warm{{.device = "w",
        .state = WarmerState::Ready,
        .onSince = at("2026-11-24 01:00"),
        .readyAt = at("2026-11-24 01:30")}};
    CHECK(notices(withBirth("2026-11-24 08:00", "2026-11-24 10:00", warm, 1)).empty());
}

TEST_CASE(
    "to switch on is told a quarter of an hour before the latest moment, and after it the birth has none")
{
    const std::vector<WarmerStanding> off{{.device = "w"}};
    CHECK(notices(withBirth("2026-11-24 09:14", "2026-11-24 10:00", off, 1)).empty());
    const auto ahead = notices(withBirth("2026-11-24 09:15", "2026-11-24 10:00", off, 1));
    REQUIRE(ahead.size() == 1);
    CHECK(ahead[0].code == Code::SwitchOnWarmer);
    CHECK(ahead[0].at == at("2026-11-24 09:30"));
    const auto late = notices(withBirth("2026-11-24 09:31", "2026-11-24 10:00", off, 1));
    CHECK(codesOf(late) == "birth-without-warmer switch-on-warmer");
    CHECK(late.at(0).value == "late");
    CHECK(late.at(1).key == ahead.at(0).key);
    // Overdue by an hour it is still the same notice.
    CHECK(notices(withBirth("2026-11-24 11:00", "2026-11-24 10:00", off, 1)).at(1).key == ahead.at(0).key);
}

TEST_CASE("a gap is told once its due time is over, and again when a new one is")
{
    NoticeInput input = atTime("2026-11-24 08:00");
    input.gaps = {{.item = "suction", .nth = 2, .due = now}};
    CHECK(notices(input).empty());
    input.now += std::chrono::milliseconds(1);
    const auto first = notices(input);
    REQUIRE(first.size() == 1);
    CHECK(first[0].subject == "suction");
    CHECK(first[0].value == "2");
    input.gaps[0].due -= std::chrono::hours(1);
    CHECK(notices(input).at(0).key != first[0].key);
}

TEST_CASE("a round is due within its time and overdue after it")
{
    NoticeInput input = atTime("2026-11-24 06:59");
    input.round = RoundWanted{
        .shift = "day", .slot = 77, .from = at("2026-11-24 07:00"), .until = at("2026-11-24 08:00")};
    CHECK(notices(input).empty());
    input.now = at("2026-11-24 07:00");
    CHECK(codesOf(notices(input)) == "round-due");
    input.now = at("2026-11-24 08:00");
    CHECK(codesOf(notices(input)) == "round-overdue");
    CHECK(notices(input).at(0).at == at("2026-11-24 08:00"));
    CHECK(notices(input).at(0).value == "77");
}

TEST_CASE("fridge readings, upkeep and a warmer gone off too soon are told")
{
    NoticeInput input = atTime("2026-11-24 08:00");
    input.fridges = {{"fridge-1", readingDue({}, "fridge-1", TimeZone::utc(), now).value()}};
    input.upkeep
        = {{.device = "scale-1", .kind = UpkeepKind::Service, .due = day("2026-11-23"), .overdue = true},
            {.device = "scale-2", .kind = UpkeepKind::Service, .due = day("2026-11-24"), .overdue = false}};
    input.offTooSoon = {{.device = "w", .off = at("2026-11-24 07:00"), .birth = "b", .expected = now}};
    const auto all = notices(input);
    CHECK(codesOf(all) == "upkeep-overdue fridge-reading-due warmer-off-too-soon");
    CHECK(all[0].at == at("2026-11-24 00:00"));
    CHECK(all[0].subject == "scale-1");
    CHECK(all[1].at == at("2026-11-24 06:00"));
    CHECK(all[2].value == "b");
}

TEST_CASE("what fell due first stands first, and of two together the weightier one")
{
    NoticeInput input = withBirth("2026-11-24 08:00", "2026-11-24 10:00", {}, 0);
    input.round = RoundWanted{.shift = "day", .slot = 1, .from = at("2026-11-24 07:00"), .until = now};
    input.gaps = {{.item = "a", .nth = 1, .due = at("2026-11-24 07:30")}};
    CHECK(codesOf(notices(input)) == "gap-overdue birth-without-warmer birth-without-kit round-overdue");
}

TEST_CASE("no two notices share a key, and asking twice gives the same")
{
    NoticeInput input
        = withBirth("2026-11-24 09:20", "2026-11-24 10:00", std::vector<WarmerStanding>{{.device = "w"}}, 0);
    input.gaps = {{.item = "a", .nth = 1, .due = {}}, {.item = "a", .nth = 2, .due = {}}};
    const auto all = notices(input);
    std::set<std::string> keys;
    for (const Notice& one : all)
        keys.insert(one.key);
    CHECK(all.size() == 4);
    CHECK(keys.size() == all.size());
    CHECK(notices(input) == all);
}
