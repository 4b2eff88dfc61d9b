// SPDX-License-Identifier: MIT
#include "core/stats/pace.h"

#include "core/stats/check.h"
#include "core/stats/orderstats.h"

#include <cmath>

namespace cradlepost::stats {

Result<Pace> pace(std::span<const double> seconds, double floorSeconds)
{
    CRADLEPOST_TRY(checkNotNegative(seconds, "the time"));
    if (!std::isfinite(floorSeconds) || floorSeconds < 0)
        return wrong("a floor is at least 0 seconds, not " + shortest(floorSeconds));
    std::vector<double> logs;
    logs.reserve(seconds.size());
    for (const double t : seconds) {
        if (t > 0)
            logs.push_back(std::log(t));
    }
    if (logs.empty())
        return undefined("no round took any time, so there is no pace");
    Pace result;
    result.medianLog = *median(logs);
    result.deviationLog = *medianDeviation(logs);
    result.points.reserve(seconds.size());
    for (const double t : seconds) {
        PacePoint point{.seconds = t, .z = {}};
        if (t > 0 && result.deviationLog > 0)
            point.z = (std::log(t) - result.medianLog) / (1.4826 * result.deviationLog);
        point.belowFloor = t <= 0 || t < floorSeconds;
        point.tooFast = point.belowFloor || (point.z && *point.z < -3);
        result.points.push_back(point);
    }
    return result;
}

}
