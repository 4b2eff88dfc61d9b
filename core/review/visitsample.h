// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/districthistory.h"
#include "core/review/districtoptions.h"
#include "core/stats/lqas.h"

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

}
