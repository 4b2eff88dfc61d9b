// SPDX-License-Identifier: MIT
#pragma once

#include "core/stats/controlchart.h"

#include <span>

namespace cradlepost::stats {

struct MovingRange
{
    std::size_t row = 0; ///< the later of its two rows
    double range = 0;
    std::optional<double> upper; ///< 3.267 times the mean moving range
    bool beyond = false; ///< strictly above it
};

struct XmrChart
{
    ControlChart values; ///< `dispersion` of a phase is its mean moving range
    std::vector<MovingRange> ranges; ///< within phases, none bridges a missing value
};

/**
 * Chart of individuals and their moving ranges: sigma = mean moving range / 1.128, limits mean +- 3 sigma,
 * upper limit of the ranges 3.267 times their mean (the table's constants). Unit of the values. Source:
 * NIST/SEMATECH e-Handbook 6.3.2.2.
 *
 * Edges: a missing value takes two moving ranges with it. No moving range in the baseline: no limits
 * (TooFewPoints). A mean moving range of 0: no limits (NoSpread). No value at all, or points in a phase whose
 * baseline has none, is Undefined. For shares it is fair only where n is steady.
 */
Result<XmrChart> xmrChart(std::span<const std::optional<double>> rows, const ChartOptions& options = {});

}
