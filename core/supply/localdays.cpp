// SPDX-License-Identifier: MIT
#include "core/supply/localdays.h"

namespace cradlepost {

using namespace std::chrono;

Date LocalDays::of(Instant t)
{
    const auto day = floor<days>(t);
    const minutes offset = offsetAt(day);
    if (offset != offsetAt(day + days(1)))
        return m_zone.toLocal(t).date; // the clock changes on that day
    return floor<days>(t + offset);
}

minutes LocalDays::offsetAt(sys_days day)
{
    const auto [found, isNew] = m_offsets.try_emplace(day);
    if (isNew) {
        const LocalTime local = m_zone.toLocal(Instant(day));
        found->second = floor<minutes>(sys_days(local.date) + local.sinceMidnight - day);
    }
    return found->second;
}

}
