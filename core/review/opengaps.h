// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/selection.h"

namespace cradlepost {

struct OpenGap
{
    std::string item; ///< id
    std::optional<std::size_t> at; ///< position in MonthReview::items
    Severity severity = Severity::Minor;
    Instant opened;
    double hours = 0; ///< old at the end of the span
    int before = 0; ///< gaps of this item before it
    std::string owner; ///< as it is known today: role or initials; empty: nobody yet
    bool overdue = false;
};

/** Gaps open at the end of the span (or now), the oldest first; a filter of shifts does not cut them. */
struct OpenGaps
{
    std::vector<OpenGap> gaps;
    std::int64_t underDay = 0; ///< younger than 24 hours
    std::int64_t underWeek = 0; ///< one to seven days
    std::int64_t underMonth = 0; ///< seven to thirty days
    std::int64_t older = 0;
    std::int64_t withoutOwner = 0;
};

OpenGaps openGaps(const Selection& selection);

}
