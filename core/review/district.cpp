// SPDX-License-Identifier: MIT
#include "core/review/district.h"

namespace cradlepost {

DistrictReview reviewDistrict(const DistrictHistory& history, const DistrictOptions& options)
{
    DistrictReview review{.span = history.span,
        .before = history.before,
        .now = history.now,
        .level = history.level,
        .options = options,
        .units = history.units,
        .items = history.items,
        .months = history.months};
    review.funnel = unitFunnel(history, options);
    review.levels = unitsInLevels(history, options);
    review.shiftMixes = unitShiftMixes(history);
    review.itemMap = unitItems(history, options);
    review.reporting = unitReporting(history, options);
    review.changes = unitChanges(history, options);
    review.visits = visitNeeds(history,
        {.funnel = review.funnel, .changes = review.changes, .reporting = review.reporting}, options);
    review.sample = visitSample(history, options);
    if (!history.shelves.empty()) {
        if (auto plan = planTransfers(history.shelves, history.distances, options.transfers))
            review.transfers = std::move(*plan);
    }
    review.findings = findingsOf(review);
    return review;
}

}
