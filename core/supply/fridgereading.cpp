// SPDX-License-Identifier: MIT
#include "core/supply/fridgereading.h"

#include "core/base/refusal.h"
#include "core/supply/bodyreader.h"

#include "core/checklist/objectreader.h"

namespace cradlepost {

namespace {

constexpr Decimal coldest{-40'000};
constexpr Decimal hottest{60'000};

bool isPlausible(Decimal celsius) { return celsius >= coldest && celsius <= hottest; }

ReadingSlot partAt(Date day, std::size_t part, const TimeZone& zone, const ReadingTimes& times)
{
    const bool last = part + 1 == times.partsFrom.size();
    const LocalTime next{
        .date = last ? addDays(day, 1) : day, .sinceMidnight = times.partsFrom[last ? 0 : part + 1]};
    return {.day = day,
        .part = static_cast<int>(part),
        .from = zone.toInstant({.date = day, .sinceMidnight = times.partsFrom[part]}),
        .until = zone.toInstant(next)};
}

bool isRead(const std::vector<FridgeReading>& readings, const std::string& fridge, const ReadingSlot& slot)
{
    return std::any_of(readings.begin(), readings.end(), [&](const FridgeReading& reading) {
        return reading.fridge == fridge && reading.at >= slot.from && reading.at < slot.until;
    });
}

}

Result<void> checkReading(const FridgeReading& reading)
{
    if (!isId(reading.fridge))
        return fail(ErrorCode::InvalidArgument, "fridge reading: no fridge is named");
    if (!isPlausible(reading.celsius) || (reading.lowest && !isPlausible(*reading.lowest))
        || (reading.highest && !isPlausible(*reading.highest)))
        return tl::unexpected(refused(refusal::fridgeRange, {coldest.toString(), hottest.toString()},
            "fridge reading: no fridge is so cold or so warm", "read it again: degrees C from -40 to 60"));
    if ((reading.lowest && *reading.lowest > reading.celsius)
        || (reading.highest && *reading.highest < reading.celsius))
        return tl::unexpected(refused(refusal::fridgeOrder, {},
            "fridge reading: the kept lowest is above, or the kept highest below the reading",
            "the three were read in another order, or the thermometer was not reset"));
    return {};
}

Json toBody(const FridgeReading& reading)
{
    Json::Object body{
        {"at", toMs(reading.at)}, {"celsius", reading.celsius.toString()}, {"fridge", reading.fridge}};
    if (reading.highest)
        body.push_back({"highest", reading.highest->toString()});
    if (reading.lowest)
        body.push_back({"lowest", reading.lowest->toString()});
    return body;
}

Result<FridgeReading> fridgeReadingFromBody(const Json& body)
{
    BodyReader read(body, "fridge-reading record");
    FridgeReading reading{.fridge = read.id("fridge"),
        .at = read.moment("at"),
        .celsius = read.decimal("celsius", coldest, hottest),
        .lowest = std::nullopt,
        .highest = std::nullopt};
    if (read.has("lowest"))
        reading.lowest = read.decimal("lowest", coldest, reading.celsius);
    if (read.has("highest"))
        reading.highest = read.decimal("highest", reading.celsius, hottest);
    if (auto done = read.finish(); !done)
        return tl::unexpected(done.error());
    return reading;
}

std::vector<ReadingSlot> missedReadings(const std::vector<FridgeReading>& readings, const std::string& fridge,
    Date first, Date last, const TimeZone& zone, Instant now, const ReadingTimes& times)
{
    std::vector<ReadingSlot> missed;
    for (Date day = first; day <= last; day = addDays(day, 1)) {
        for (std::size_t part = 0; part < times.partsFrom.size(); ++part) {
            const ReadingSlot slot = partAt(day, part, zone, times);
            if (slot.until <= now && !isRead(readings, fridge, slot))
                missed.push_back(slot);
        }
    }
    return missed;
}

std::optional<ReadingSlot> readingDue(const std::vector<FridgeReading>& readings, const std::string& fridge,
    const TimeZone& zone, Instant now, const ReadingTimes& times)
{
    const Date today = zone.toLocal(now).date;
    for (const Date day : {addDays(today, -1), today}) {
        for (std::size_t part = 0; part < times.partsFrom.size(); ++part) {
            const ReadingSlot slot = partAt(day, part, zone, times);
            if (slot.from <= now && now < slot.until && !isRead(readings, fridge, slot))
                return slot;
        }
    }
    return std::nullopt;
}

}
