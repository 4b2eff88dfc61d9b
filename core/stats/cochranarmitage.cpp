// SPDX-License-Identifier: MIT
#include "core/stats/cochranarmitage.h"

#include "core/stats/check.h"
#include "core/stats/distributions.h"

#include <cmath>

namespace cradlepost::stats {

Result<ShareTrend> cochranArmitage(std::span<const ScoredTally> groups)
{
    Tally all;
    double scoreSum = 0;
    for (std::size_t i = 0; i < groups.size(); ++i) {
        const auto row = "row " + std::to_string(i + 1) + ": ";
        if (auto sound = checkTally(groups[i].tally); !sound)
            return wrong(row + sound.error().message);
        if (!(std::abs(groups[i].score) < 1e100))
            return wrong(row + "the score is not a number of sensible size");
        all.x += groups[i].tally.x;
        all.n += groups[i].tally.n;
        if (all.n > maxCount)
            return wrong(row + "the sum of n is beyond 2^53");
        scoreSum += groups[i].score * static_cast<double>(groups[i].tally.n);
    }
    if (all.n == 0)
        return undefined("nothing observed, so there is no trend");
    if (all.x == 0 || all.x == all.n)
        return undefined("all or none are events, so there is no trend to test");
    const double n = static_cast<double>(all.n);
    const double p = static_cast<double>(all.x) / n;
    const double mean = scoreSum / n;
    double t = 0;
    double spread = 0;
    double size = 0;
    for (const auto& group : groups) {
        const double distance = group.score - mean;
        const double count = static_cast<double>(group.tally.n);
        // Sum n_i(s_i - mean) is 0, so the mean may be taken off the scores: it spares digits.
        t += distance * (static_cast<double>(group.tally.x) - count * p);
        spread += count * distance * distance;
        size += count * group.score * group.score;
    }
    if (spread <= size * 1e-24)
        return undefined("all observations share one score, so there is no trend to test");
    const double z = t / std::sqrt(p * (1 - p) * spread);
    return ShareTrend{.z = z, .chiSquare = z * z, .p = normalTwoSided(z)};
}

}
