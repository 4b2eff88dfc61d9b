// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/calendar.h"

#include <map>

namespace cradlepost {

/** The local day of many moments: asks the zone once a day instead of once a moment. */
class LocalDays
{
public:
    explicit LocalDays(TimeZone zone)
        : m_zone(std::move(zone))
    {
    }

    /** The same as TimeZone::toLocal(t).date. */
    Date of(Instant t);

private:
    std::chrono::minutes offsetAt(std::chrono::sys_days day);

    TimeZone m_zone;
    std::map<std::chrono::sys_days, std::chrono::minutes> m_offsets; ///< of the zone, as a UTC day begins
};

}
