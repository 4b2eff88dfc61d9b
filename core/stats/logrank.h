// SPDX-License-Identifier: MIT
#pragma once

#include "core/stats/survival.h"

#include <vector>

namespace cradlepost::stats {

struct LogRankGroup
{
    std::int64_t n = 0;
    double observed = 0; ///< events
    double expected = 0; ///< events, if all groups had one curve
};

struct LogRank
{
    std::vector<LogRankGroup> groups; ///< in the order of the input
    double variance = 0; ///< of observed - expected of the first group
    double chiSquare = 0;
    int df = 0;
    double p = 0;
};

/**
 * Compares whole curves of two or more groups: at each event time the events of a group are hypergeometric
 * given the totals; chi-square = (O - E)' V^-1 (O - E) over all groups but the last. A time with one duration
 * left adds no variance. Groups without durations are left out of the degrees of freedom.
 *
 * Undefined with fewer than two groups that hold durations, and when no event falls where two groups are at
 * risk. Source: Mantel N (1966, from memory) Cancer Chemotherapy Reports 50:163-170; Peto R, Peto J (1972,
 * from memory) J Royal Stat Soc A 135:185-207.
 */
Result<LogRank> logRank(std::span<const std::vector<Duration>> groups);

}
