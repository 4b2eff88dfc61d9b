// SPDX-License-Identifier: MIT
#include "core/supply/fridgereading.h"

#include "shelf.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

FridgeReading reading(std::string_view when, const char* celsius = "5")
{
    return {.fridge = "fridge-1", .at = at(when), .celsius = num(celsius)};
}

std::vector<ReadingSlot> missed(const std::vector<FridgeReading>& readings, std::string_view now)
{
    return missedReadings(
        readings, "fridge-1", day("2026-11-23"), day("2026-11-24"), TimeZone::utc(), at(now));
}

bool isDue(const std::vector<FridgeReading>& readings, std::string_view now)
{
    return readingDue(readings, "fridge-1", TimeZone::utc(), at(now)).has_value();
}

}

TEST_CASE("a reading is written and read again as it was")
{
    FridgeReading full = reading("2026-11-24 08:00", "-0.5");
    full.lowest = num("-1.25");
    full.highest = num("9");
    for (const FridgeReading& one : {full, reading("2026-11-24 08:00")}) {
        CHECK(checkReading(one).has_value());
        CHECK(isRecordBody(toBody(one)));
        const auto again = fridgeReadingFromBody(toBody(one));
        REQUIRE_MESSAGE(again.has_value(), (again ? "" : again.error().message));
        CHECK(*again == one);
    }
    CHECK(canonicalText(toBody(full))
        == R"({"at":1795507200000,"celsius":"-0.5","fridge":"fridge-1","highest":"9","lowest":"-1.25"})");
}

TEST_CASE("a slip of the keyboard and extremes on the wrong side are refused, typed or read")
{
    const auto isRefused = [](const FridgeReading& one) {
        return !checkReading(one).has_value() && !fridgeReadingFromBody(toBody(one)).has_value();
    };
    CHECK(isRefused(reading("2026-11-24 08:00", "61")));
    CHECK(isRefused(reading("2026-11-24 08:00", "-41")));
    FridgeReading one = reading("2026-11-24 08:00");
    one.lowest = num("5.1");
    CHECK(isRefused(one));
    one.lowest = std::nullopt;
    one.highest = num("4.9");
    CHECK(isRefused(one));
    one.highest = num("90");
    CHECK(isRefused(one));
    one = reading("2026-11-24 08:00");
    one.fridge.clear();
    CHECK(isRefused(one));
}

TEST_CASE("two readings a day are wanted, and a part of the day that is over without one was missed")
{
    // Twice a day: WHO, Immunization in Practice, module 2.
    const std::vector<FridgeReading> readings{reading("2026-11-23 07:00"), reading("2026-11-24 15:00")};
    const auto out = missed(readings, "2026-11-25 08:00");
    REQUIRE(out.size() == 2);
    CHECK(out[0].day == day("2026-11-23"));
    CHECK(out[0].part == 1);
    CHECK(out[0].from == at("2026-11-23 14:00"));
    CHECK(out[0].until == at("2026-11-24 06:00"));
    CHECK(out[1].day == day("2026-11-24"));
    CHECK(out[1].part == 0);
}

TEST_CASE("a part of the day is not missed before it is over")
{
    CHECK(missed({}, "2026-11-23 13:59").empty());
    CHECK(missed({}, "2026-11-23 14:00").size() == 1);
    CHECK(missed({}, "2026-11-25 05:59").size() == 3);
    CHECK(missed({}, "2026-11-25 06:00").size() == 4);
}

TEST_CASE("a reading counts in the part of the day in which it was made, also after midnight")
{
    CHECK(missed({reading("2026-11-24 02:00")}, "2026-11-24 06:00").size() == 1);
    CHECK(missed({reading("2026-11-23 06:00"), reading("2026-11-24 05:59")}, "2026-11-24 06:00").empty());
}

TEST_CASE("a reading of another fridge is none of this one")
{
    FridgeReading other = reading("2026-11-23 07:00");
    other.fridge = "fridge-2";
    CHECK(missed({other}, "2026-11-23 14:00").size() == 1);
    CHECK(isDue({other}, "2026-11-23 10:00"));
}

TEST_CASE("a reading is due until it is made, across midnight too")
{
    CHECK(isDue({}, "2026-11-24 06:00"));
    CHECK_FALSE(isDue({reading("2026-11-24 06:00")}, "2026-11-24 13:59"));
    CHECK(isDue({reading("2026-11-24 06:00")}, "2026-11-24 14:00"));
    const auto night = readingDue({}, "fridge-1", TimeZone::utc(), at("2026-11-25 02:00"));
    REQUIRE(night.has_value());
    CHECK(night->day == day("2026-11-24"));
    CHECK(night->part == 1);
    CHECK_FALSE(isDue({reading("2026-11-24 23:00")}, "2026-11-25 02:00"));
}

TEST_CASE("a site may read three times, at its own hours and in its own zone")
{
    using std::chrono::hours;
    const ReadingTimes thrice{.partsFrom = {hours(7), hours(13), hours(19)}};
    const auto zone = TimeZone::named("Asia/Kolkata").value();
    const auto due = readingDue({}, "fridge-1", zone, at("2026-11-24 08:00"), thrice); // 13:30 there
    REQUIRE(due.has_value());
    CHECK(due->part == 1);
    CHECK(due->from == at("2026-11-24 07:30"));
    CHECK(missedReadings(
              {}, "fridge-1", day("2026-11-23"), day("2026-11-23"), zone, at("2026-11-25 00:00"), thrice)
              .size()
        == 3);
}
