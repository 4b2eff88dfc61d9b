// SPDX-License-Identifier: MIT
#include "core/supply/clockentry.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace std::chrono;

namespace {

TimeZone zone() { return *TimeZone::named("Asia/Kolkata"); }
Instant on(int day, int hour, int minute)
{
    return zone().toInstant({.date = year(2026) / 11 / day, .sinceMidnight = hours(hour) + minutes(minute)});
}

}

TEST_CASE("what happened was at the latest such time, yesterday's when today's is still to come")
{
    CHECK(readPast("1924", on(24, 19, 30), zone()) == on(24, 19, 24));
    CHECK(readPast("19:24", on(24, 19, 24), zone()) == on(24, 19, 24));
    CHECK(readPast("23:50", on(24, 0, 10), zone()) == on(23, 23, 50));
    CHECK(readPast("924", on(24, 19, 0), zone()) == on(24, 9, 24));
    CHECK(readPast("", on(24, 19, 0), zone()) == on(24, 19, 0));
}

TEST_CASE("what is expected is at the next such time, tomorrow's when today's is over")
{
    CHECK(readComing("1630", on(24, 15, 0), zone()) == on(24, 16, 30));
    CHECK(readComing("0:20", on(24, 23, 30), zone()) == on(25, 0, 20));
    CHECK(readComing("14:10", on(24, 15, 0), zone()) == on(24, 14, 10)); // overdue for less than an hour
    CHECK(readComing("13:59", on(24, 15, 0), zone()) == on(25, 13, 59));
    CHECK(readComing("23:30", on(25, 0, 10), zone()) == on(24, 23, 30));
}

TEST_CASE("what is no time of day is refused with how to write it")
{
    for (const char* text : {"24:00", "1260", "7", "12345", "16.30", "ab", "16:3", "-130", "+130"}) {
        CAPTURE(text);
        CHECK_FALSE(readPast(text, on(24, 15, 0), zone()).has_value());
        const auto coming = readComing(text, on(24, 15, 0), zone());
        REQUIRE_FALSE(coming.has_value());
        CHECK_FALSE(coming.error().hint.empty());
    }
    CHECK_FALSE(readComing("", on(24, 15, 0), zone()).has_value());
}
