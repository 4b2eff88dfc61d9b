// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/selection.h"

namespace cradlepost {

struct LostItem
{
    std::size_t item = 0; ///< position in MonthReview::items
    Share gaps; ///< rounds with a gap, of rounds in which it applied and was looked at
    std::int64_t notChecked = 0; ///< rounds in which nobody looked: no part of the loss
    double weight = 0; ///< of its severity
    double loss = 0; ///< gaps times weight
    double share = 0; ///< of the whole loss
    double cumulated = 0; ///< share of this item and those above it
};

/** Items by lost readiness, the largest loss first; only items with a gap. */
struct LostReadiness
{
    std::vector<LostItem> items;
    double whole = 0; ///< sum of losses
    /** How many of the first items make up four fifths of the loss. */
    std::size_t vitalFew = 0;
    std::optional<CannotSay> why; ///< NoData: no rounds; NoSpread: not one gap
};

LostReadiness lostReadiness(const Selection& selection);

}
