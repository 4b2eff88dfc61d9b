// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/readiness.h"
#include "core/stats/twoproportions.h"

namespace cradlepost {

struct ComparedSpan
{
    ReviewSpan span;
    Share done; ///< of due
    ReadinessReview readiness;
};

struct ComparedItem
{
    ReviewItem item;
    stats::Tally first; ///< gaps of rounds looked at
    stats::Tally second;
    std::optional<stats::Difference> difference; ///< second minus first
    std::optional<double> adjustedP; ///< Fisher's exact p, Benjamini-Hochberg over the items
};

/** Two spans with the same filter; differences are second minus first. */
struct SpanComparison
{
    ComparedSpan first;
    ComparedSpan second;
    std::optional<stats::Difference> ready;
    std::optional<stats::Difference> noCriticalGap;
    std::optional<double> index; ///< of the means
    std::vector<ComparedItem> items; ///< the smallest adjusted p first
    std::optional<CannotSay> why; ///< a span with fewer than fewestRounds
};

/** `first` and `second` may come from different stretches of history; see unitHistory. */
SpanComparison compareSpans(const Selection& first, const Selection& second);

}
