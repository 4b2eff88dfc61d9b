// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/selection.h"
#include "core/stats/logrank.h"

namespace cradlepost {

struct RestoreGroup
{
    std::optional<Severity> severity; ///< none: all gaps
    std::vector<stats::Duration> durations; ///< hours
    std::optional<stats::SurvivalCurve> curve; ///< hours; none without gaps
    std::int64_t mended = 0;
    std::int64_t open = 0; ///< at the end of the span
};

/** Time from when a round found a gap until one found it met again. */
struct RestoreReview
{
    RestoreGroup all;
    std::vector<RestoreGroup> bySeverity; ///< critical, major, minor
    std::optional<stats::LogRank> test; ///< of the severities
    std::optional<CannotSay> why; ///< no curve, or no median: see curve->median
    std::int64_t carriedIn = 0; ///< open when the span began: left out, their beginning lies before it
};

/**
 * Gaps that opened in the span; those not mended at its end (or now) are censored there, and those closed
 * because the item no longer applies are censored then. Median with its limits: see stats::kaplanMeier. Gaps
 * belong to the room, not to a shift: a filter of shifts does not cut them.
 */
RestoreReview restoreReview(const Selection& selection);

}
