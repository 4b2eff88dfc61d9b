// SPDX-License-Identifier: MIT
#pragma once

#include "core/stats/twoproportions.h"

#include <optional>

namespace cradlepost {

/**
 * First minus second with Newcombe's limits, their distance from the estimate times the root of `dispersion`,
 * within [-1, 1]: for rounds that are alike from one shift to the next. Nothing when a side saw nothing.
 */
std::optional<stats::Difference> widenedDifference(
    stats::Tally first, stats::Tally second, double dispersion);

/** Two-sided p of the pooled test with z over the root of `dispersion`; 1 when both sides are all or none. */
std::optional<double> widenedP(stats::Tally first, stats::Tally second, double dispersion);

}
