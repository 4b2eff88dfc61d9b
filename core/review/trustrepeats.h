// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/selection.h"
#include "core/stats/repeats.h"

namespace cradlepost {

/** Whole rounds, answers and readings, that say word for word what another round of the span says. */
struct TrustRepeats
{
    std::int64_t compared = 0; ///< rounds with a reading
    std::int64_t repeating = 0; ///< rounds that an earlier one of the span says already
    std::optional<stats::RepeatedRounds> chance; ///< equal pairs against what the unit's own shares give
    std::optional<CannotSay>
        why; ///< TooFew; NoSpread: no readings, gaps that last make rounds alike by themselves
};

/**
 * Chances of outcomes and readings are those of the unit in the look-back and the span together, each item on
 * its own. Gaps and readings go on from one shift to the next, which makes neighbours more alike than this:
 * only an excess far beyond it is asked about.
 */
TrustRepeats trustRepeats(const Selection& selection);

}
