// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/selection.h"

namespace cradlepost {

/** Rounds entered faster than anyone can walk. */
struct TrustPace
{
    std::int64_t timed = 0; ///< rounds by screen
    /** Far below the unit's own pace in the span (stats::pace, from fewestRounds rounds on), or below the
     * floor.
     */
    std::int64_t tooFast = 0;
    std::int64_t belowFloor = 0; ///< among them: below items answered times the least seconds for one
    std::optional<double> medianSeconds; ///< from begin to finish; an interrupted round is longer
    std::optional<double> medianPerItem;
    std::vector<std::size_t> rounds; ///< too fast, positions in Selection::rounds()
    std::optional<CannotSay> why;
};

TrustPace trustPace(const Selection& selection);

}
