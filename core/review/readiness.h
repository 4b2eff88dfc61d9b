// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/selection.h"

namespace cradlepost {

/** How ready the room was, over rounds done: a round not done is no data, never 0. Two measures, apart. */
struct ReadinessReview
{
    Share ready; ///< shifts Ready
    Share readyWithGaps; ///< shifts Ready with gaps
    Share noCriticalGap; ///< both together: shifts that were not Not ready
    std::int64_t notReady = 0;

    std::optional<double> meanIndex; ///< readiness index, 0 to 1, mean over rounds
    std::optional<double> lowestIndex;
    std::int64_t indexed = 0; ///< rounds with an index

    stats::Tally items; ///< pooled: met of applicable
    std::optional<CannotSay> why; ///< NoData: no round; TooFew: fewer than ReviewOptions::fewestRounds
};

ReadinessReview readinessOf(std::span<const ChosenRound> rounds, const ReviewOptions& options);

}
