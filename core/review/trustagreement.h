// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/selection.h"
#include "core/stats/agreement.h"

namespace cradlepost {

struct ItemAgreement
{
    std::size_t item = 0; ///< position in MonthReview::items
    std::int64_t both = 0; ///< looked at by both
    std::int64_t agreed = 0;
    std::int64_t roundMetCheckGap = 0; ///< the round says met, the spot check found a gap
    std::int64_t roundGapCheckMet = 0;
};

/** Rounds against independent spot checks of the same shift, met or gap, all items pooled. */
struct TrustAgreement
{
    std::int64_t checks = 0; ///< spot checks with a round of the same shift
    stats::Tally agreed; ///< of answers of both
    std::optional<stats::Agreement> kappa; ///< none when both used one answer throughout
    std::optional<stats::Agreement> ac1;
    std::optional<stats::AdjustedKappa> adjusted;
    std::vector<ItemAgreement> items; ///< that were looked at by both; most disagreement first
    std::optional<CannotSay> why; ///< NoData: no spot checks; TooFew: fewer than 30 answers
};

/** Assumes independent answers; those of one spot check share their hour, so the intervals are a little
 * narrow. */
TrustAgreement trustAgreement(const Selection& selection);

}
