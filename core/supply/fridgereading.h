// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/calendar.h"
#include "core/base/decimal.h"
#include "core/base/json.h"
#include "core/supply/recorded.h"

namespace cradlepost {

/** One look at a fridge's thermometer. The body of a `fridge-reading` record. Degrees C, -40..60. */
struct FridgeReading
{
    std::string fridge; ///< equipment id
    Instant at;
    Decimal celsius;
    std::optional<Decimal> lowest; ///< since the last reset, as the thermometer keeps it
    std::optional<Decimal> highest;
    bool operator==(const FridgeReading&) const = default;
};

/** lowest <= celsius <= highest where they are given. */
Result<void> checkReading(const FridgeReading& reading);
Json toBody(const FridgeReading& reading);
Result<FridgeReading> fridgeReadingFromBody(const Json& body);

/**
 * When a reading is due: one in each part of the day. Twice a day: WHO, Immunization in Practice, module 2;
 * the hours are common practice, no source.
 */
struct ReadingTimes
{
    std::vector<std::chrono::minutes> partsFrom{std::chrono::hours(6), std::chrono::hours(14)}; ///< rising
};

struct ReadingSlot
{
    Date day;
    int part = 0;
    Instant from; ///< due from here
    Instant until; ///< missed from here: the next part begins
    auto operator<=>(const ReadingSlot&) const = default;
};

/** Parts of the days first..last that are over at `now` and have no reading of this fridge. */
std::vector<ReadingSlot> missedReadings(const std::vector<FridgeReading>& readings, const std::string& fridge,
    Date first, Date last, const TimeZone& zone, Instant now, const ReadingTimes& times = {});
/** The part of the day that runs at `now` and still wants its reading. */
std::optional<ReadingSlot> readingDue(const std::vector<FridgeReading>& readings, const std::string& fridge,
    const TimeZone& zone, Instant now, const ReadingTimes& times = {});

}
