// SPDX-License-Identifier: MIT
#include "core/base/calendar.h"

#include <doctest/doctest.h>
#include <QDateTime>
#include <QTimeZone>
#include <random>

using namespace cradlepost;
using namespace std::chrono;

TEST_CASE("days are read and written as ISO 8601")
{
    CHECK(toIso(*dateFromIso("2026-11-24")) == "2026-11-24");
    CHECK(toIso(*dateFromIso("2024-02-29")) == "2024-02-29");
    for (const char* bad :
        {"", "2026-02-29", "2026-13-01", "2026-1-01", "26-01-01", "2026/01/01", "2026-01-0x", "-026-01-01"}) {
        CAPTURE(bad);
        CHECK_FALSE(dateFromIso(bad));
    }
}

TEST_CASE("an unknown zone is refused by name")
{
    const auto zone = TimeZone::named("Atlantis/Capital");
    REQUIRE_FALSE(zone);
    CHECK(zone.error().message.find("Atlantis/Capital") != std::string::npos);
    CHECK_FALSE(TimeZone::named(""));
}

TEST_CASE("wall clock and moment convert both ways in a half-hour zone")
{
    const auto zone = TimeZone::named("Asia/Kolkata").value(); // UTC+05:30, no clock change
    const Instant t = sys_days(2026y / 11 / 24) + 19h + 42min - 5h - 30min;
    const LocalTime local = zone.toLocal(t);
    CHECK(toIso(local.date) == "2026-11-24");
    CHECK(local.sinceMidnight == 19h + 42min);
    CHECK(zone.toInstant(local) == t);
}

TEST_CASE("a reading skipped or doubled by the clock change has one meaning")
{
    // Europe/Berlin, EU rule: 2026-03-29 02:00 -> 03:00, 2026-10-25 03:00 -> 02:00, both at 01:00 UTC.
    const auto zone = TimeZone::named("Europe/Berlin").value();
    CHECK(zone.toInstant({2026y / 3 / 29, 2h + 30min}) == Instant(sys_days(2026y / 3 / 29) + 1h + 30min));
    CHECK(zone.toInstant({2026y / 10 / 25, 2h + 30min}) == Instant(sys_days(2026y / 10 / 25) + 30min));
    CHECK(zone.toInstant({2026y / 10 / 25, 3h}) == Instant(sys_days(2026y / 10 / 25) + 2h));
}

TEST_CASE("every zone's wall clock is the one of the system's time zone database, in any order of asking")
{
    std::mt19937_64 random(20261125);
    std::uniform_int_distribution<std::int64_t> moment(
        toMs(sys_days(1969y / 1 / 1)), toMs(sys_days(2060y / 1 / 1)));
    for (const char* name : {"UTC", "Asia/Kolkata", "Europe/Berlin", "America/New_York", "Africa/Casablanca",
             "Africa/Nairobi", "Asia/Gaza", "Australia/Lord_Howe", "Pacific/Apia", "America/Caracas"}) {
        const auto zone = TimeZone::named(name).value();
        const QTimeZone system(name);
        REQUIRE(system.isValid());
        const auto holds = [&](std::int64_t ms) {
            const auto at = QDateTime::fromMSecsSinceEpoch(ms, Qt::UTC);
            const auto wall = floor<minutes>(fromMs(ms) + seconds(system.offsetFromUtc(at)));
            const LocalTime local = zone.toLocal(fromMs(ms));
            return local.date == Date(floor<days>(wall)) && local.sinceMidnight == wall - floor<days>(wall);
        };
        for (int i = 0; i < 2000; ++i) {
            const std::int64_t ms = moment(random);
            CAPTURE(name);
            CAPTURE(ms);
            REQUIRE(holds(ms));
        }
        // On both sides of each change.
        for (const auto& change : system.transitions(QDateTime::fromMSecsSinceEpoch(0, Qt::UTC),
                 QDateTime::fromMSecsSinceEpoch(toMs(sys_days(2037y / 1 / 1)), Qt::UTC))) {
            CAPTURE(name);
            CAPTURE(change.atUtc.toString(Qt::ISODate).toStdString());
            for (const std::int64_t by : {-60'000, -1, 0, 1, 60'000})
                REQUIRE(holds(change.atUtc.toMSecsSinceEpoch() + by));
        }
    }
}
