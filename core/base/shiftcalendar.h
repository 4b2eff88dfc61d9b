// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/calendar.h"

#include <cstdint>
#include <string>
#include <vector>

namespace cradlepost {

/** Most shifts that a day can have: the slot keeps two bits for them. */
inline constexpr int maxShiftsPerDay = 4;

/** One shift of a pattern: a code ("day", "evening", "night" or the ward's own word) and when it starts. */
struct ShiftStart
{
    std::string code;
    std::chrono::minutes at {0}; ///< since midnight, local, 0..1439
    auto operator<=>(const ShiftStart&) const = default;
};

/** How a unit cuts its day; a shift lasts until the next one starts. */
struct ShiftPattern
{
    std::vector<ShiftStart> starts; ///< in order of time, the first is the first of its date
    auto operator<=>(const ShiftPattern&) const = default;

    /** 07:00 and 19:00 (common practice, no source). */
    static ShiftPattern twoByTwelve();
    /** 07:00, 15:00 and 23:00 (common practice, no source). */
    static ShiftPattern threeByEight();
    /** One to four starts, strictly rising, codes not empty and not repeated. */
    [[nodiscard]] Result<void> check() const;
};

/** "07:00 day, 19:00 night": start times with names, as typed in Set-up. The error says how to write it. */
Result<ShiftPattern> readPattern(std::string_view text);
/** The same in the other direction. */
std::string patternText(const ShiftPattern& pattern);

/**
 * Sorts by month, day and shift, so that a month is one range: month index << 7 | day << 2 | shift,
 * the month index counting from January of year 0.
 */
using Slot = std::int64_t;

Slot slotOf(Date date, int shift);
Date dateOfSlot(Slot slot);
int shiftOfSlot(Slot slot);
/** First slot of a month and first slot of the month after it: [from, to). */
std::pair<Slot, Slot> slotsOfMonth(std::chrono::year_month month);

/** A shift as it was worked: it belongs to the date on which it starts, also over midnight. */
struct Shift
{
    Date date;
    int index = 0; ///< position in its pattern, 0..3
    std::string code;
    Instant begins;
    Instant ends; ///< exclusive; over a clock change the shift is an hour longer or shorter
    auto operator<=>(const Shift&) const = default;
    [[nodiscard]] Slot slot() const { return slotOf(date, index); }
};

/** Shifts of one unit. Pure: the moment is always passed in. */
class ShiftCalendar
{
public:
    ShiftCalendar(ShiftPattern pattern, TimeZone zone)
        : m_pattern(std::move(pattern))
        , m_zone(std::move(zone))
    {
    }

    [[nodiscard]] const ShiftPattern& pattern() const { return m_pattern; }
    [[nodiscard]] const TimeZone& zone() const { return m_zone; }
    /** `index` must be one of the pattern's. */
    [[nodiscard]] Shift shift(Date date, int index) const;
    [[nodiscard]] Shift shiftAt(Instant t) const;
    [[nodiscard]] Shift next(const Shift& shift) const;
    [[nodiscard]] Shift previous(const Shift& shift) const;

private:
    ShiftPattern m_pattern;
    TimeZone m_zone;
};

}
