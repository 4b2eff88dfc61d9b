// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/selection.h"

namespace cradlepost {

/** Rounds of one shift or one weekday. */
struct PatternGroup
{
    std::string shift; ///< code, by shift
    int weekday = 0; ///< 1 Monday to 7 Sunday, by weekday; else 0
    std::int64_t due = 0;
    std::int64_t done = 0;
    Share noCriticalGap; ///< of rounds done
    Share ready;
    stats::Tally items; ///< met of applicable
    std::optional<double> meanIndex;
};

/** Whether the groups differ in the share of items met. */
struct PatternTest
{
    double chiSquare = 0; ///< Pearson, of groups by met and not met
    int df = 0;
    double dispersion = 1; ///< see Spread; by weekday with the carry-over
    double p = 0; ///< of chiSquare / dispersion
    std::size_t worst = 0; ///< group with the lowest share of items met
    stats::Tally others; ///< items of all other groups
    double worstP = 0; ///< of the worst group against the others, adjusted for having picked it
    bool differs = false; ///< p and worstP at or below ReviewOptions::strictLevel
};

struct ShiftPatternReview
{
    std::vector<PatternGroup> groups;
    std::optional<PatternTest> test;
    std::optional<CannotSay> why; ///< no test: fewer than two groups with five rounds each
};

/**
 * By shift of the day. The test divides Pearson's chi-square by the spread between rounds of one group, since
 * the items of a round are not independent (McCullagh P, Nelder JA (1989) Generalized Linear Models, 2nd ed.,
 * 4.5), and adjusts one group against the rest for the number of groups (Bonferroni). It assumes that rounds
 * of a group are independent of one another. Gaps that last are shared by the shifts of a day, which makes
 * the test careful here; it is spoken of at a stricter level all the same.
 */
ShiftPatternReview byShift(const Selection& selection);
/**
 * By day of the week. A gap that lasts makes whole days worse, so that the chi-square is divided by the
 * carry-over from round to round too (see Spread).
 */
ShiftPatternReview byWeekday(const Selection& selection);

}
