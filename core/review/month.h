// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/availability.h"
#include "core/review/changereview.h"
#include "core/review/findings.h"
#include "core/review/itemweeks.h"
#include "core/review/lostreadiness.h"
#include "core/review/opengaps.h"
#include "core/review/readiness.h"
#include "core/review/readinesscourse.h"
#include "core/review/readingreview.h"
#include "core/review/restorereview.h"
#include "core/review/shiftpattern.h"
#include "core/review/trust.h"

namespace cradlepost {

/** One unit over one span. It keeps pointers into the history (ReadingPoint::shift), which must outlive it.
 */
struct MonthReview
{
    std::string unit; ///< id
    ReviewSpan span;
    ReviewFilter filter;
    ReviewOptions options;
    Instant now;
    std::vector<ReviewItem> items; ///< that the parts point to
    DoneCalendar calendar;
    ReadinessReview readiness;
    ReadinessCourse course;
    LostReadiness lost;
    ItemWeeks itemWeeks;
    ShiftPatternReview byShift;
    ShiftPatternReview byWeekday;
    std::vector<ReadingReview> readings;
    RestoreReview restore;
    OpenGaps openGaps;
    std::vector<Availability> availability;
    TrustReview trust;
    std::vector<ChangeIdea> changes; ///< what ChangeEffect and CourseMark point to
    std::vector<ChangeEffect> changeEffects;
    std::vector<MonthFinding> findings; ///< see findingsOf
};

/** Fails as select() does. */
Result<MonthReview> reviewMonth(const UnitHistory& history, const ReviewSpan& span,
    const ReviewFilter& filter = {}, const ReviewOptions& options = {});

}
