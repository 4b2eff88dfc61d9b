// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/clock.h"
#include "core/base/result.h"

#include <string>
#include <string_view>

namespace cradlepost {

/** A calendar day, local to a unit. */
using Date = std::chrono::year_month_day;

/** "2026-11-24" (ISO 8601). */
std::string toIso(Date date);
/** Reads "2026-11-24"; fails on anything else and on days that do not exist. */
Result<Date> dateFromIso(std::string_view text);

inline Date addDays(Date date, int days) { return std::chrono::sys_days(date) + std::chrono::days(days); }
inline int daysBetween(Date from, Date to)
{
    return static_cast<int>((std::chrono::sys_days(to) - std::chrono::sys_days(from)).count());
}

/** A wall-clock reading in a time zone. */
struct LocalTime
{
    Date date;
    std::chrono::minutes sinceMidnight {0}; ///< as the wall clock shows it, 0..1439
    auto operator<=>(const LocalTime&) const = default;
};

/** A named zone of the IANA time zone database, for example "Asia/Kolkata" or "UTC". */
class TimeZone
{
public:
    /** Fails when the system does not know the name. */
    static Result<TimeZone> named(std::string_view name);
    static TimeZone utc() { return TimeZone("UTC"); }

    [[nodiscard]] const std::string& name() const { return m_name; }
    [[nodiscard]] LocalTime toLocal(Instant t) const;
    /**
     * The moment at which the wall clock shows `local`. A reading that the clock change skips is moved on by
     * the change; one that happens twice means the first.
     */
    [[nodiscard]] Instant toInstant(LocalTime local) const;

private:
    explicit TimeZone(std::string name)
        : m_name(std::move(name))
    {
    }
    std::string m_name;
};

}
