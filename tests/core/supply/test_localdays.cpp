// SPDX-License-Identifier: MIT
#include "core/supply/localdays.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace std::chrono;

TEST_CASE("a local day is the zone's own, on every hour of two years, through every change of the clock")
{
    for (const char* name : {"UTC", "Asia/Kolkata", "Europe/Dublin", "America/St_Johns", "Pacific/Apia"}) {
        CAPTURE(name);
        const auto zone = TimeZone::named(name);
        REQUIRE(zone.has_value());
        LocalDays days(*zone);
        const Instant begin = sys_days(2011y / 6 / 1); // Apia left out 30 December 2011
        for (int hour = 0; hour < 24 * 730; ++hour) {
            const Instant t = begin + hours(hour) + minutes(hour % 60);
            REQUIRE(days.of(t) == zone->toLocal(t).date);
        }
    }
}
