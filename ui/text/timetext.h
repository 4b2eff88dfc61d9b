// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/shiftcalendar.h"
#include "ui/text/language.h"

#include <QCoreApplication>

namespace cradlepost {

/** Times as the ward reads them: the unit's wall clock, 24 hours. */
class TimeText
{
    Q_DECLARE_TR_FUNCTIONS(TimeText)
public:
    TimeText(const Language& language, TimeZone zone)
        : m_language(language)
        , m_zone(std::move(zone))
    {
    }

    /** "19:42" */
    [[nodiscard]] QString clock(Instant t) const;
    /** "19:42" on the day of `now`, "Mon 19:42" less than a week from it, else "3 Nov 19:42". */
    [[nodiscard]] QString moment(Instant t, Instant now) const;
    /** "24 Nov" */
    [[nodiscard]] QString day(Date date) const;
    /** "Tue 24 Nov" */
    [[nodiscard]] QString weekday(Date date) const;
    /** "Night" for the known codes, else the code itself. */
    [[nodiscard]] static QString shiftName(const std::string& code);
    /** "Night, Tue 24 Nov · 19:00 to 07:00" */
    [[nodiscard]] QString shift(const Shift& shift) const;
    /** "12 min", "5 h", "3 days", rounded down, never below 0. */
    [[nodiscard]] static QString span(std::chrono::milliseconds length);

    [[nodiscard]] const TimeZone& zone() const { return m_zone; }

private:
    const Language& m_language;
    TimeZone m_zone;
};

}
