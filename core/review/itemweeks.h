// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/selection.h"

namespace cradlepost {

/** Gaps by item and week: rows as `items`, columns as `weeks`. */
struct ItemWeeks
{
    std::vector<Date> weeks; ///< Mondays of the ISO weeks of the span, cut to it
    std::vector<std::size_t> items; ///< positions in MonthReview::items, in the order of the checklist
    std::vector<std::vector<stats::Tally>> cells; ///< gaps of rounds in which it was looked at; n = 0: none
};

ItemWeeks itemWeeks(const Selection& selection);

}
