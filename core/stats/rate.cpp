// SPDX-License-Identifier: MIT
#include "core/stats/rate.h"

#include "core/stats/check.h"
#include "core/stats/distributions.h"

#include <cmath>

namespace cradlepost::stats {

Result<Interval> garwood(std::int64_t count, double level)
{
    CRADLEPOST_TRY(checkLevel(level));
    if (count < 0 || count > maxCount)
        return wrong("a count cannot be " + std::to_string(count));
    const double tail = (1 - level) / 2;
    const double x = static_cast<double>(count);
    if (count == 0)
        return Interval{.low = 0, .high = -std::log(tail)};
    return Interval{.low = gammaQuantile(tail, x, 1), .high = gammaUpperQuantile(tail, x + 1, 1)};
}

Result<Rate> exactRate(std::int64_t count, double exposure, double level)
{
    const auto interval = garwood(count, level);
    if (!interval)
        return tl::unexpected(interval.error());
    if (!isExposure(exposure))
        return wrong("an exposure must be above 0, not " + shortest(exposure));
    if (exposure <= 0)
        return undefined("without exposure there is no rate");
    return Rate{.estimate = static_cast<double>(count) / exposure,
        .interval = {.low = interval->low / exposure, .high = interval->high / exposure}};
}

}
