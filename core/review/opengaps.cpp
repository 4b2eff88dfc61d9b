// SPDX-License-Identifier: MIT
#include "core/review/opengaps.h"

#include <algorithm>

namespace cradlepost {

OpenGaps openGaps(const Selection& selection)
{
    OpenGaps open;
    const Instant end = selection.end();
    for (const Gap* gap : selection.gaps()) {
        if (gap->closedAt && *gap->closedAt <= end)
            continue;
        const std::chrono::duration<double, std::ratio<3600>> age = end - gap->openedAt;
        open.gaps.push_back({.item = gap->item,
            .at = selection.itemAt(gap->item),
            .severity = gap->severity,
            .opened = gap->openedAt,
            .hours = age.count(),
            .before = gap->nth - 1,
            .owner = gap->owner,
            .overdue = gap->due < end});
        constexpr double day = 24;
        open.underDay += age.count() < day ? 1 : 0;
        open.underWeek += age.count() >= day && age.count() < 7 * day ? 1 : 0;
        open.underMonth += age.count() >= 7 * day && age.count() < 30 * day ? 1 : 0;
        open.older += age.count() >= 30 * day ? 1 : 0;
        open.withoutOwner += gap->owner.empty() ? 1 : 0;
    }
    std::stable_sort(open.gaps.begin(), open.gaps.end(),
        [](const OpenGap& a, const OpenGap& b) { return a.opened < b.opened; });
    return open;
}

}
