// SPDX-License-Identifier: MIT
#include "core/base/shiftcalendar.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace std::chrono;

namespace {
ShiftCalendar in(const char* zone, ShiftPattern pattern) { return {std::move(pattern), TimeZone::named(zone).value()}; }
}

TEST_CASE("a night belongs to the date on which it starts, also after midnight")
{
    const auto calendar = in("UTC", ShiftPattern::twoByTwelve());
    const Shift night = calendar.shiftAt(sys_days(2026y / 11 / 25) + 3h);
    CHECK(toIso(night.date) == "2026-11-24");
    CHECK(night.code == "night");
    CHECK(night.begins == Instant(sys_days(2026y / 11 / 24) + 19h));
    CHECK(night.ends == Instant(sys_days(2026y / 11 / 25) + 7h));
    CHECK(calendar.shiftAt(night.ends).code == "day");
    CHECK(calendar.shiftAt(night.ends - 1ms) == night);
}

TEST_CASE("next and previous walk through all shifts without a hole")
{
    for (const auto& pattern : {ShiftPattern::twoByTwelve(), ShiftPattern::threeByEight(),
             ShiftPattern {.starts = {{"early", 8h}, {"late", 14h}, {"night", 20h}}}}) {
        for (const char* zone : {"UTC", "Asia/Kolkata", "Europe/Berlin", "America/New_York"}) {
            const auto calendar = in(zone, pattern);
            Shift shift = calendar.shift(2026y / 1 / 1, 0);
            for (int i = 0; i < 1200; ++i) {
                const Shift next = calendar.next(shift);
                REQUIRE(next.begins == shift.ends);
                REQUIRE(next.slot() > shift.slot());
                REQUIRE(calendar.previous(next) == shift);
                REQUIRE(calendar.shiftAt(next.begins) == next);
                shift = next;
            }
        }
    }
}

TEST_CASE("a night over the clock change is an hour shorter or longer")
{
    const auto calendar = in("Europe/Berlin", ShiftPattern::twoByTwelve());
    const Shift spring = calendar.shift(2026y / 3 / 28, 1);
    CHECK(spring.ends - spring.begins == 11h);
    const Shift autumn = calendar.shift(2026y / 10 / 24, 1);
    CHECK(autumn.ends - autumn.begins == 13h);
}

TEST_CASE("a slot sorts by month, day and shift and can be read back")
{
    const Slot slot = slotOf(2026y / 11 / 24, 2);
    CHECK(toIso(dateOfSlot(slot)) == "2026-11-24");
    CHECK(shiftOfSlot(slot) == 2);
    const auto [from, to] = slotsOfMonth(2026y / 11);
    CHECK(from <= slotOf(2026y / 11 / 1, 0));
    CHECK(slotOf(2026y / 11 / 30, 3) < to);
    CHECK(to <= slotOf(2026y / 12 / 1, 0));
    CHECK(slotsOfMonth(2026y / 12).second == slotsOfMonth(2027y / 1).first);
}

TEST_CASE("a pattern that cannot be worked is refused")
{
    CHECK(ShiftPattern::threeByEight().check());
    CHECK_FALSE(ShiftPattern {}.check());
    CHECK_FALSE(ShiftPattern {.starts = {{"a", 1h}, {"b", 1h}}}.check());
    CHECK_FALSE(ShiftPattern {.starts = {{"a", 1h}, {"a", 2h}}}.check());
    CHECK_FALSE(ShiftPattern {.starts = {{"a", 24h}}}.check());
    CHECK_FALSE(ShiftPattern {.starts = {{"", 1h}}}.check());
    CHECK_FALSE(ShiftPattern {.starts = {{"a", 1h}, {"b", 2h}, {"c", 3h}, {"d", 4h}, {"e", 5h}}}.check());
}

TEST_CASE("a pattern is read as it is written, and what cannot be read says how to write it")
{
    CHECK(patternText(ShiftPattern::threeByEight()) == "07:00 morning, 15:00 evening, 23:00 night");
    CHECK(readPattern("07:00 day, 19:00 night").value() == ShiftPattern::twoByTwelve());
    CHECK(readPattern("08:00 early,14:30 late duty , 20:00 night").value().starts[1].code == "late duty");
    for (const char* bad : {"", "day", "7:00 day", "07:00", "07:00 ", "24:00 day", "07:60 day", "19:00 night, 07:00 day",
             "07:00 day,", "-7:00 day"}) {
        CAPTURE(bad);
        const auto read = readPattern(bad);
        REQUIRE_FALSE(read);
        CHECK_FALSE(read.error().hint.empty());
    }
}
