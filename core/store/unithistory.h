// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/history.h"
#include "core/review/span.h"
#include "core/store/store.h"

namespace cradlepost {

/**
 * What a review of `span` reads of a unit, with the weeks before it (lookBack). A round is due in each shift
 * of the pattern in force from the day on which the unit took up its first checklist for shift rounds; shifts
 * that begin after `now` are left out. Fails when the unit is not known.
 */
Result<UnitHistory> unitHistory(
    const Store& store, const std::string& unit, const ReviewSpan& span, Instant now);

/** How far back rounds, and shifts due, are read. */
struct RoundsWish
{
    Date from;
    Date dueFrom; ///< not before `from`; older rounds come without outcomes and readings
};

/**
 * The same without gaps, change ideas and other checks, and from other days on. Enough for tallies, and for
 * unitQuestions when both days lie at the look-back of the span or before it.
 */
Result<UnitHistory> unitRounds(const Store& store, const std::string& unit, const RoundsWish& wish,
    const ReviewSpan& span, Instant now);

}
