// SPDX-License-Identifier: MIT
#pragma once

#include "core/stats/controlchart.h"

#include <span>

namespace cradlepost::stats {

/** Events in an exposure: gaps in bed-days, breakdowns in running hours. Both at least 0. */
struct EventCount
{
    std::int64_t events = 0;
    double exposure = 0; ///< may be fractional
};

/**
 * u chart: centre = sum events / sum exposure over the baseline; limits centre +- 3 sqrt(centre/exposure_i),
 * the lower cut at 0. Unit: events per unit of exposure. Source: NIST/SEMATECH e-Handbook 6.3.3.1; Montgomery
 * DC, Introduction to Statistical Quality Control.
 *
 * Edges: a row with exposure 0 has no point and must have no event. A centre of 0 has no limits (NoSpread).
 * No exposure at all is Undefined. A fixed centre must be at least 0.
 */
Result<ControlChart> uChart(std::span<const EventCount> rows, const ChartOptions& options = {});

}
