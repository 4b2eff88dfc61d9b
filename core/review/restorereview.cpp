// SPDX-License-Identifier: MIT
#include "core/review/restorereview.h"

namespace cradlepost {

namespace {

stats::Duration lasted(const Gap& gap, Instant end)
{
    const bool closed = gap.closedAt && *gap.closedAt <= end;
    const auto until = closed ? *gap.closedAt : end;
    const std::chrono::duration<double, std::ratio<3600>> hours = until - gap.openedAt;
    return {.time = std::max(0.0, hours.count()), .ended = closed && !gap.closedAsNotApplicable};
}

void add(RestoreGroup& group, const Gap& gap, Instant end)
{
    const stats::Duration duration = lasted(gap, end);
    group.durations.push_back(duration);
    group.mended += duration.ended ? 1 : 0;
    group.open += !gap.closedAt || *gap.closedAt > end ? 1 : 0;
}

void draw(RestoreGroup& group)
{
    if (auto curve = stats::kaplanMeier(group.durations))
        group.curve = std::move(*curve);
}

}

RestoreReview restoreReview(const Selection& selection)
{
    RestoreReview review;
    for (const Severity severity : {Severity::Critical, Severity::Major, Severity::Minor})
        review.bySeverity.push_back({.severity = severity});
    const Instant begin = selection.begin();
    const Instant end = selection.end();
    for (const Gap* gap : selection.gaps()) {
        if (gap->openedAt < begin) {
            ++review.carriedIn;
            continue;
        }
        add(review.all, *gap, end);
        add(review.bySeverity[static_cast<std::size_t>(gap->severity)], *gap, end);
    }
    draw(review.all);
    std::vector<std::vector<stats::Duration>> groups;
    for (RestoreGroup& group : review.bySeverity) {
        draw(group);
        groups.push_back(group.durations);
    }
    if (auto test = stats::logRank(groups))
        review.test = std::move(*test);
    if (!review.all.curve)
        review.why = CannotSay::NoData;
    else if (!review.all.curve->median)
        review.why = CannotSay::TooFew;
    return review;
}

}
