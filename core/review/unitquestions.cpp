// SPDX-License-Identifier: MIT
#include "core/review/unitquestions.h"

namespace cradlepost {

Result<std::vector<MonthFinding>> unitQuestions(const UnitHistory& history, const ReviewSpan& span)
{
    return select(history, span).map([](const Selection& selection) {
        MonthReview review{.options = selection.options, .items = selection.items};
        review.readiness = readinessOf(selection.rounds(), selection.options);
        review.trust = trustReview(selection, doneCalendar(selection));
        return questionsOf(review);
    });
}

}
