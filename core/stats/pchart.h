// SPDX-License-Identifier: MIT
#pragma once

#include "core/stats/controlchart.h"

#include <span>

/**
 * Charts for a share of items. Each row is one period: x of n items. The centre is sum x / sum n over the
 * baseline (not the mean of the shares); sigma_i = sqrt(centre(1 - centre)/n_i); limits centre +- 3 sigma_i,
 * cut to [0, 1]. No unit.
 *
 * Edges: rows with n = 0 have no point. A centre of 0 or 1 has no limits (NoSpread). No observation at all is
 * Undefined, and so are points in a phase whose baseline has none. A fixed centre must lie in [0, 1].
 */
namespace cradlepost::stats {

/** p chart. Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.3.2. */
Result<ControlChart> pChart(std::span<const Tally> rows, const ChartOptions& options = {});

/**
 * p-prime chart: the limits are stretched by sigma z, the mean of |z_i - z_(i-1)| over the baseline divided
 * by 1.128 (the table's d2). With fewer than two baseline points it falls back to the p chart (TooFewPoints);
 * with all z equal it has no limits. A sigma z below 1 narrows the limits, as the source allows. Source:
 * Laney DB (2002) Quality Engineering 14:531-537.
 */
Result<ControlChart> pPrimeChart(std::span<const Tally> rows, const ChartOptions& options = {});

}
