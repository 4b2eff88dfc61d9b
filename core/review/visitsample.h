// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/districthistory.h"
#include "core/review/districtoptions.h"
#include "core/stats/lqas.h"

#include <string_view>

namespace cradlepost {

/** How many items to look at on a visit, picked by lot from the checklist, and what to make of it. */
struct VisitSample
{
    std::int64_t lot = 0; ///< items of the checklist
    stats::LqasRule rule; ///< n items; with d or more met the room reaches the standard; both risks
    double good = 0; ///< share of items met that should pass
    double poor = 0; ///< share that should not
};

/**
 * The smallest sample that keeps both risks (core/stats/lqas.h), for the items of the latest checklist as a
 * finite lot; nothing when there is no checklist or no such sample.
 */
std::optional<VisitSample> visitSample(const DistrictHistory& history, const DistrictOptions& options);

/**
 * `n` of `lot` positions picked by lot, rising: the same for the same `seed` on every machine. n <= lot.
 * Source: the shuffle of R. A. Fisher and F. Yates as D. E. Knuth gives it (The Art of Computer Programming
 * 2, 3.4.2 P); the numbers are those of SplitMix64 (G. L. Steele, D. Lea, C. H. Flood 2014).
 */
std::vector<std::size_t> drawSample(std::size_t lot, std::size_t n, std::string_view seed);

}
