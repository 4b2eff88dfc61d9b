// SPDX-License-Identifier: MIT
#include "core/store/dueshifts.h"

#include <algorithm>

namespace cradlepost {

namespace {

/** False when the day has a shift that has not begun. */
bool addDue(std::vector<Shift>& due, const ShiftCalendar& calendar, Date day, Instant now)
{
    for (int i = 0; i < static_cast<int>(calendar.pattern().starts.size()); ++i) {
        Shift shift = calendar.shift(day, i);
        if (shift.begins > now)
            return false;
        due.push_back(std::move(shift));
    }
    return true;
}

}

std::vector<Date> daysOf(Database& database, const std::string& query, const std::string& unit)
{
    std::vector<Date> days;
    Statement row = database.prepare(query);
    row.bind(unit);
    while (row.next())
        days.push_back(need(dateFromIso(row.textView(0))));
    return days;
}

std::vector<Shift> dueShifts(Database& database, const UnitTable& units, const std::string& unit,
    const TimeZone& zone, const ReviewSpan& days, Instant now)
{
    const auto adoptions = daysOf(database,
        "SELECT from_day FROM adoption WHERE unit = ? AND kind = 'shift' ORDER BY from_day LIMIT 1", unit);
    std::vector<Shift> due;
    if (adoptions.empty())
        return due;
    const auto patterns
        = daysOf(database, "SELECT from_day FROM shift_pattern WHERE unit = ? ORDER BY from_day", unit);
    std::size_t next = 0;
    std::optional<ShiftCalendar> calendar;
    for (Date day = std::max(days.from, adoptions.front()); day < days.to; day = addDays(day, 1)) {
        bool isNew = false;
        for (; next < patterns.size() && patterns[next] <= day; ++next)
            isNew = true;
        if (isNew)
            calendar.emplace(units.pattern(unit, day)->pattern, zone);
        if (calendar && !addDue(due, *calendar, day, now))
            break;
    }
    return due;
}

}
