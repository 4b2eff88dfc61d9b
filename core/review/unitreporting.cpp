// SPDX-License-Identifier: MIT
#include "core/review/unitreporting.h"

#include <algorithm>

namespace cradlepost {

std::vector<UnitReporting> unitReporting(const DistrictHistory& history, const DistrictOptions& options)
{
    std::vector<UnitReporting> all;
    for (std::size_t i = 0; i < history.units.size(); ++i) {
        const DistrictUnit& unit = history.units[i];
        const UnitTallies& span = unit.span;
        UnitReporting one{.unit = i,
            .done = shareOf({.x = span.done, .n = span.due}),
            .late = shareOf({.x = span.late, .n = span.rounds() - span.paper}),
            .paper = span.paper,
            .amended = span.amended,
            .longestSilence = span.longestSilence,
            .silentDays = unit.silentDays,
            .lastRound = unit.lastRound,
            .questions = unit.questions};
        // Days count both ways: a silence may have begun before the span and go on to its end.
        one.isSilent = span.due > 0
            && (one.longestSilence >= options.silentDays || one.silentDays >= options.silentDays);
        one.isIncomplete = !one.isSilent && one.done.interval && one.done.interval->high < options.lowDone;
        one.isLate = one.late.interval && one.late.interval->low > options.oftenLate;
        all.push_back(std::move(one));
    }
    return all;
}

}
