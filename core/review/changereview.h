// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/selection.h"
#include "core/stats/twoproportions.h"

namespace cradlepost {

/** Before and after a change idea. */
struct ChangeEffect
{
    std::size_t change = 0; ///< position in UnitHistory::changes
    Date before; ///< first day that counts before
    Date from; ///< first day that counts after
    Date to; ///< exclusive
    std::int64_t roundsBefore = 0;
    std::int64_t roundsAfter = 0;
    stats::Tally metBefore; ///< of the items named, or all: met of looked at
    stats::Tally metAfter;
    /**
     * After minus before: Newcombe's limits, their distance from the estimate times the root of `dispersion`,
     * since a gap lasts over several rounds.
     */
    std::optional<stats::Difference> difference;
    /** How many times wider the variance is than of independent answers; see Spread. */
    double dispersion = 1;
    std::optional<CannotSay> why; ///< fewer than fewestRounds on a side
    [[nodiscard]] bool better() const { return difference && difference->interval.low > 0; }
    [[nodiscard]] bool worse() const { return difference && difference->interval.high < 0; }
};

/** Ideas tried in the span. Shows that something changed then, not that the idea did it. */
std::vector<ChangeEffect> changeEffects(const Selection& selection);

}
