// SPDX-License-Identifier: MIT
#include "core/supply/coldchain.h"

#include "shelf.h"
#include "tests/core/stats/near.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using stats::near;
using std::chrono::hours;
using std::chrono::minutes;

namespace {

FridgeReading reading(
    std::string_view when, const char* celsius, const char* lowest = nullptr, const char* highest = nullptr)
{
    FridgeReading out{.fridge = "fridge-1", .at = at(when), .celsius = num(celsius)};
    if (lowest != nullptr)
        out.lowest = num(lowest);
    if (highest != nullptr)
        out.highest = num(highest);
    return out;
}

std::vector<Excursion> found(
    const std::vector<FridgeReading>& readings, std::string_view now = "2026-11-25 20:00")
{
    return excursionsOf(readings, "fridge-1", at(now));
}

Result<KineticTemperature> kinetic(const std::vector<FridgeReading>& readings, std::string_view from,
    std::string_view to, minutes longest = hours(24))
{
    return kineticTemperature(readings, "fridge-1", at(from), at(to), longest);
}

}

TEST_CASE("the limits themselves are inside")
{
    // 2 to 8 degrees C: WHO, Immunization in Practice, module 2.
    CHECK(found({reading("2026-11-24 08:00", "2"), reading("2026-11-24 18:00", "8")}).empty());
    CHECK(found({reading("2026-11-24 08:00", "8.1")}).at(0).kind == ExcursionKind::TooWarm);
    CHECK(found({reading("2026-11-24 08:00", "1.9")}).at(0).kind == ExcursionKind::TooCold);
    CHECK(found({}).empty());
}

TEST_CASE("an excursion lasted at least between its readings, and at most between the good ones around it")
{
    const auto out = found({reading("2026-11-24 08:00", "5"), reading("2026-11-24 10:00", "9"),
        reading("2026-11-24 13:00", "11"), reading("2026-11-24 15:30", "7")});
    REQUIRE(out.size() == 1);
    CHECK(out[0].atLeast() == hours(3));
    CHECK(out[0].atMost() == minutes(7 * 60 + 30));
    CHECK(out[0].worst == num("11"));
    CHECK_FALSE(out[0].open);
    CHECK(out[0].alarm == AlarmState::None);
}

TEST_CASE("ten hours above 8 degrees reach the high alarm")
{
    // Above 8 degrees C for 10 h: WHO PQS E006/TR06 (from memory).
    const auto state = [](std::string_view first, std::string_view last) {
        return found({reading("2026-11-24 05:00", "8"), reading(first, "8.1"), reading(last, "9"),
                         reading("2026-11-24 22:00", "8")})
            .at(0)
            .alarm;
    };
    CHECK(state("2026-11-24 08:00", "2026-11-24 18:00") == AlarmState::Reached);
    CHECK(state("2026-11-24 08:01", "2026-11-24 18:00") == AlarmState::Possible);
    const auto within = found({reading("2026-11-24 08:01", "8"), reading("2026-11-24 12:00", "20"),
        reading("2026-11-24 18:00", "8")});
    CHECK(within.at(0).alarm == AlarmState::None);
    const auto just = found({reading("2026-11-24 08:00", "8"), reading("2026-11-24 12:00", "20"),
        reading("2026-11-24 18:00", "8")});
    CHECK(just.at(0).alarm == AlarmState::Possible);
}

TEST_CASE("an hour at -0.5 degrees or below reaches the low alarm")
{
    // -0.5 degrees C or lower for 60 min: WHO PQS E006 (as reported by the Logistics Cluster).
    const auto frost = [](const char* celsius, std::string_view last) {
        std::optional<AlarmState> state;
        for (const Excursion& one :
            found({reading("2026-11-24 07:40", "2"), reading("2026-11-24 08:00", celsius),
                reading(last, celsius), reading("2026-11-24 09:10", "2")})) {
            if (one.kind == ExcursionKind::Frost)
                state = one.alarm;
        }
        return state;
    };
    CHECK(frost("-0.5", "2026-11-24 09:00") == AlarmState::Reached);
    CHECK(frost("-0.5", "2026-11-24 08:59") == AlarmState::Possible);
    CHECK_FALSE(frost("-0.4", "2026-11-24 09:00").has_value());
}

TEST_CASE("cold that is no frost has no alarm of its own, but asks to read again")
{
    const auto out = found({reading("2026-11-24 07:40", "1"), reading("2026-11-25 08:00", "1")});
    REQUIRE(out.size() == 1);
    CHECK(out[0].alarm == AlarmState::None);
    CHECK(verdictOf(out) == ColdChainVerdict{.advice = ColdChainAdvice::CheckAgain, .frost = false});
}

TEST_CASE("an excursion without a good reading before it has no longest time, and may be an alarm")
{
    const auto out = found({reading("2026-11-24 08:00", "9"), reading("2026-11-24 09:00", "5")});
    CHECK_FALSE(out.at(0).atMost().has_value());
    CHECK(out.at(0).alarm == AlarmState::Possible);
    CHECK_FALSE(outsideTime(out).warmAtMost.has_value());
}

TEST_CASE("an excursion without a good reading after it goes on")
{
    const std::vector<FridgeReading> readings{
        reading("2026-11-24 08:00", "5"), reading("2026-11-24 10:00", "9")};
    CHECK(found(readings, "2026-11-24 17:59").at(0).alarm == AlarmState::None);
    const auto later = found(readings, "2026-11-24 18:00").at(0);
    CHECK(later.open);
    CHECK(later.alarm == AlarmState::Possible);
    CHECK(later.atMost() == hours(10));
    CHECK(found(readings, "2026-11-24 09:00").empty()); // not read yet
}

TEST_CASE("a kept extreme shows an excursion that no reading saw")
{
    const auto out = found({reading("2026-11-24 08:00", "5"), reading("2026-11-24 18:00", "5", "4", "12"),
        reading("2026-11-25 08:00", "5", "4", "6")});
    REQUIRE(out.size() == 1);
    CHECK(out[0].kind == ExcursionKind::TooWarm);
    CHECK(out[0].worst == num("12"));
    CHECK(out[0].atLeast() == minutes(0));
    CHECK(out[0].atMost() == hours(10));
    CHECK(out[0].alarm == AlarmState::Possible);
}

TEST_CASE("a kept extreme belongs to the excursion that was running")
{
    const auto out = found({reading("2026-11-24 08:00", "5"), reading("2026-11-24 10:00", "9", "4", "10"),
        reading("2026-11-24 12:00", "5", "5", "14")});
    REQUIRE(out.size() == 1);
    CHECK(out[0].worst == num("14"));
    CHECK(out[0].atMost() == hours(4));
}

TEST_CASE("frost is cold as well, and cold time counts it once")
{
    const auto out = found({reading("2026-11-24 08:00", "5"), reading("2026-11-24 10:00", "-2"),
        reading("2026-11-24 12:00", "-1"), reading("2026-11-24 13:00", "5"), reading("2026-11-24 14:00", "9"),
        reading("2026-11-24 15:00", "8")});
    REQUIRE(out.size() == 3);
    CHECK(outsideTime(out)
        == OutsideTime{.warmAtLeast = minutes(0),
            .warmAtMost = hours(2),
            .coldAtLeast = hours(2),
            .coldAtMost = hours(5)});
    CHECK(verdictOf(out) == ColdChainVerdict{.advice = ColdChainAdvice::HoldAndAsk, .frost = true});
}

TEST_CASE("heat that may be an alarm asks to hold and to ask, without frost")
{
    const auto out = found({reading("2026-11-24 08:00", "9")});
    CHECK(verdictOf(out) == ColdChainVerdict{.advice = ColdChainAdvice::HoldAndAsk, .frost = false});
    CHECK(verdictOf({}) == ColdChainVerdict{});
}

TEST_CASE("the site's own limits count, and another fridge's readings do not")
{
    const std::vector<FridgeReading> readings{
        reading("2026-11-24 08:00", "9"), reading("2026-11-24 10:00", "9")};
    CHECK(excursionsOf(readings, "fridge-1", at("2026-11-25 08:00"), {.high = num("10")}).empty());
    CHECK(excursionsOf(readings, "fridge-2", at("2026-11-25 08:00")).empty());
}

TEST_CASE("readings in any order give the same excursions")
{
    const std::vector<FridgeReading> readings{reading("2026-11-24 08:00", "5"),
        reading("2026-11-24 10:00", "9"), reading("2026-11-24 12:00", "1"), reading("2026-11-24 14:00", "5")};
    CHECK(found({readings[2], readings[3], readings[0], readings[1]}) == found(readings));
    CHECK(found(readings).size() == 2);
}

TEST_CASE("the mean kinetic temperature weighs each reading by the time it stood")
{
    // Computed by the formula of USP <1160>, dH/R = 10 000 K: 5 degrees for 23 h and 25 degrees for 1 h.
    const auto day = kinetic({reading("2026-11-24 00:00", "5"), reading("2026-11-24 23:00", "25")},
        "2026-11-24 00:00", "2026-11-25 00:00");
    REQUIRE(day.has_value());
    CHECK(stats::isPrinted(day->celsius, 7.7564, 4));
    CHECK(day->covered == near(1));
    // 2 and 8 degrees, equal weights.
    const auto half = kinetic({reading("2026-11-24 00:00", "2"), reading("2026-11-24 12:00", "8")},
        "2026-11-24 00:00", "2026-11-25 00:00");
    CHECK(stats::isPrinted(half.value().celsius, 5.5364, 4));
}

TEST_CASE("a reading before the stretch stands into it, but not for ever")
{
    const std::vector<FridgeReading> readings{reading("2026-11-24 00:00", "5")};
    CHECK(kinetic(readings, "2026-11-24 12:00", "2026-11-25 00:00").value().covered == near(1));
    CHECK(kinetic(readings, "2026-11-24 12:00", "2026-11-25 12:00").value().covered == near(0.5));
    CHECK(kinetic(readings, "2026-11-24 12:00", "2026-11-25 12:00").value().celsius == near(5, 1e-6));
    CHECK(stats::isUndefined(kinetic(readings, "2026-11-25 12:00", "2026-11-26 12:00")));
    CHECK(stats::isUndefined(kinetic(readings, "2026-11-23 00:00", "2026-11-24 00:00")));
    CHECK(stats::isRefused(kinetic(readings, "2026-11-24 00:00", "2026-11-24 00:00")));
}
