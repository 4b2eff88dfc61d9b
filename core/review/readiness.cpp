// SPDX-License-Identifier: MIT
#include "core/review/readiness.h"

#include <algorithm>

namespace cradlepost {

ReadinessReview readinessOf(std::span<const ChosenRound> rounds, const ReviewOptions& options)
{
    ReadinessReview review;
    const auto n = static_cast<std::int64_t>(rounds.size());
    std::int64_t ready = 0;
    std::int64_t withGaps = 0;
    double sum = 0;
    for (const ChosenRound& round : rounds) {
        ready += round.state == Readiness::Ready ? 1 : 0;
        withGaps += round.state == Readiness::ReadyWithGaps ? 1 : 0;
        review.items += round.items;
        if (!round.hasIndex)
            continue;
        ++review.indexed;
        sum += round.index;
        review.lowestIndex = std::min(round.index, review.lowestIndex.value_or(1.0));
    }
    review.ready = shareOf({.x = ready, .n = n});
    review.readyWithGaps = shareOf({.x = withGaps, .n = n});
    review.noCriticalGap = shareOf({.x = ready + withGaps, .n = n});
    review.notReady = n - ready - withGaps;
    if (review.indexed > 0)
        review.meanIndex = sum / static_cast<double>(review.indexed);
    if (n < options.fewestRounds)
        review.why = n == 0 ? CannotSay::NoData : CannotSay::TooFew;
    return review;
}

}
