// SPDX-License-Identifier: MIT
#include "core/review/month.h"

namespace cradlepost {

namespace {

MonthReview reviewOf(const Selection& selection)
{
    MonthReview review{.unit = selection.history->unit,
        .span = selection.span,
        .filter = selection.filter,
        .options = selection.options,
        .now = selection.history->now,
        .items = selection.items};
    review.calendar = doneCalendar(selection);
    review.readiness = readinessOf(selection.rounds(), selection.options);
    review.course = readinessCourse(selection);
    review.lost = lostReadiness(selection);
    review.itemWeeks = itemWeeks(selection);
    review.byShift = byShift(selection);
    review.byWeekday = byWeekday(selection);
    review.readings = readingReviews(selection);
    review.restore = restoreReview(selection);
    review.openGaps = openGaps(selection);
    review.availability = availability(selection);
    review.trust = trustReview(selection, review.calendar);
    review.changes = selection.history->changes;
    review.changeEffects = changeEffects(selection);
    review.findings = findingsOf(review);
    return review;
}

}

Result<MonthReview> reviewMonth(const UnitHistory& history, const ReviewSpan& span,
    const ReviewFilter& filter, const ReviewOptions& options)
{
    return select(history, span, filter, options).map(reviewOf);
}

}
