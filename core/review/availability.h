// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/selection.h"

namespace cradlepost {

/** How long one thing stood without an open gap, by what rounds and checks saw. */
struct Availability
{
    std::size_t item = 0; ///< position in MonthReview::items
    double hours = 0; ///< of the span until its end or now
    double downHours = 0; ///< with an open gap
    double share = 1; ///< available
    int failures = 0; ///< gaps that opened in the span
    std::optional<double> hoursBetween; ///< up-time a failure; none without a failure
    std::optional<double> longestDown; ///< hours within the span
    bool downAtEnd = false;
};

/**
 * Equipment: items of kind steps, since and cylinder that a round of the span looked at; least available
 * first. Gaps belong to the room, not to a shift: a filter of shifts does not cut them.
 */
std::vector<Availability> availability(const Selection& selection);

}
