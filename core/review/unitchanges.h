// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/districthistory.h"
#include "core/review/districtoptions.h"
#include "core/stats/twoproportions.h"

namespace cradlepost {

/** A unit's share of shifts without a critical gap against the span before. */
struct UnitChange
{
    std::size_t unit = 0; ///< position in DistrictHistory::units
    Share before;
    Share after;
    /** After minus before: Newcombe's limits, widened by the root of `dispersion`. */
    std::optional<stats::Difference> difference;
    double dispersion = 1; ///< the larger carry-over of the two spans
    std::optional<double> pAdjusted; ///< pooled test, widened alike; Benjamini-Hochberg over the units
    bool fell = false; ///< at DistrictOptions::level
    bool rose = false;
    std::optional<CannotSay> why; ///< TooFew: fewer than fewestRounds in a span
};

/** In the order of the history. */
std::vector<UnitChange> unitChanges(const DistrictHistory& history, const DistrictOptions& options);

}
