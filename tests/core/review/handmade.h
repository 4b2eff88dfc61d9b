// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/month.h"

namespace cradlepost::test {

inline constexpr Date octoberFirst = std::chrono::year(2026) / 10 / 1;

/** A day of October 2026; negative or 0: before it. */
inline Date october(int day) { return addDays(octoberFirst, day - 1); }

/**
 * A history written by hand: a ward in UTC with two shifts of twelve hours and four items in two sections,
 * "clean" (critical) and "temperature" (major, 26 to 28 °C) in "room", "device" (major, function test) and
 * "paper" (minor) in "rest". Reviewed for October 2026, with the look-back before it; now is 1 November,
 * 07:00.
 */
struct HandMade
{
    HandMade();

    struct More
    {
        int after = 30; ///< minutes from the begin of the shift to the finish
        int seconds = 120; ///< that it took
        std::optional<double> temperature{};
        std::string actor = "AB";
        bool fromPaper = false;
        int amended = 0;
    };
    /** `shift` 0 is the day, 1 the night; rounds in order of time. */
    RoundFact& round(Date day, int shift, const std::string& outcomes, const More& more);
    RoundFact& round(Date day, int shift, const std::string& outcomes)
    {
        return round(day, shift, outcomes, {});
    }
    /** Hours from 1 October 07:00; no end: still open. */
    Gap& gap(const std::string& item, Severity severity, double opened, std::optional<double> closed);

    [[nodiscard]] Selection selection(
        const ReviewFilter& filter = {}, const ReviewOptions& options = {}) const;
    [[nodiscard]] MonthReview review(const ReviewOptions& options = {}) const;

    UnitHistory history;
    ReviewSpan span;
};

}
