// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/shiftcalendar.h"
#include "core/review/span.h"
#include "core/store/database.h"
#include "core/store/unittable.h"

namespace cradlepost {

/** Days from which on something is said of a unit, in order: the first column of a query with one unit. */
std::vector<Date> daysOf(Database& database, const std::string& query, const std::string& unit);

/**
 * The shifts of a unit of these days that have begun by `now` and in which a round is due:
 * by the pattern in force, from the day on which the unit took up its first checklist for shift rounds.
 */
std::vector<Shift> dueShifts(Database& database, const UnitTable& units, const std::string& unit,
    const TimeZone& zone, const ReviewSpan& days, Instant now);

}
