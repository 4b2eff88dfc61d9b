// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <optional>
#include <span>
#include <vector>

namespace cradlepost::stats {

struct PacePoint
{
    double seconds = 0;
    std::optional<double> z; ///< robust z of ln(seconds); none at 0 seconds or when the spread is 0
    bool belowFloor = false;
    bool tooFast = false; ///< z below -3, or below the floor
};

struct Pace
{
    double medianLog = 0;
    double deviationLog
        = 0; ///< median absolute deviation of ln(seconds), not scaled; 0: only the floor judges
    std::vector<PacePoint> points;
};

/**
 * Rounds entered faster than anyone can walk: z = (ln t - median)/(1.4826 MAD), flagged below -3 or when t is
 * strictly below `floorSeconds` (items times the least seconds for each; 0: no floor). Active seconds, so
 * that a round that was interrupted and resumed counts the time at work. t = 0 is left out of median and MAD
 * and is flagged.
 *
 * No rounds, or none above 0 seconds, is Undefined. Source: the 1.4826 MAD scale of Hampel FR (1974, from
 * memory) J Am Stat Assoc 69:383-393; the cut at 3 is common practice, no source.
 */
Result<Pace> pace(std::span<const double> seconds, double floorSeconds = 0);

}
