// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/calendar.h"

#include <string>
#include <vector>

namespace cradlepost {

/** Days under review, by the date on which a shift starts. */
struct ReviewSpan
{
    Date from;
    Date to; ///< exclusive

    static ReviewSpan ofMonth(std::chrono::year_month month);
    [[nodiscard]] bool contains(Date day) const { return from <= day && day < to; }
    [[nodiscard]] int days() const { return daysBetween(from, to); }
    bool operator==(const ReviewSpan&) const = default;
};

/** How many weeks before the span a review looks back. */
inline constexpr int weeksBefore = 26;

/** Monday of the ISO week of a day (ISO 8601). */
Date mondayOf(Date day);

/** First day that a review of `span` reads: the Monday `weeksBefore` weeks before the week of its first day.
 */
Date lookBack(const ReviewSpan& span);

/** What of it is looked at; an empty list means all. */
struct ReviewFilter
{
    std::vector<std::string> shifts; ///< codes
    std::vector<std::string> sections; ///< ids
    std::vector<std::string> items; ///< ids; with sections given, only items that lie in them
    bool operator==(const ReviewFilter&) const = default;

    [[nodiscard]] bool takesShift(const std::string& code) const;
    [[nodiscard]] bool takesItem(const std::string& section, const std::string& item) const;
};

}
