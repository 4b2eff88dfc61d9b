// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/selection.h"
#include "core/stats/xmrchart.h"

namespace cradlepost {

struct ReadingPoint
{
    const Shift* shift = nullptr; ///< in the history
    Decimal value;
    bool beyond = false; ///< outside the limits in force then
};

struct ReadingBin
{
    double low = 0; ///< inclusive
    double high = 0; ///< exclusive
    std::int64_t count = 0;
};

/** The measured values of one item. */
struct ReadingReview
{
    std::size_t item = 0; ///< position in MonthReview::items
    std::string unit;
    int decimals = 1;
    std::optional<Decimal> low; ///< the limit set in force at the end of the span
    std::optional<Decimal> high;
    std::string limitSet; ///< its id
    std::vector<ReadingPoint> points; ///< of the span, in order of time
    Share outside; ///< of the readings
    std::int64_t below = 0;
    std::int64_t above = 0;
    std::optional<double> median;
    Decimal
        step; ///< as fine as the instrument shows: what all readings of look-back and span are multiples of
    std::vector<ReadingBin> bins; ///< a whole number of steps wide, without holes
    std::optional<stats::XmrChart> chart; ///< rows are `points`
    std::optional<CannotSay> why; ///< no chart
};

/**
 * One for each chosen measure item with a reading in the span. The chart (see stats::xmrChart) assumes that
 * readings are independent; neighbouring shifts share their weather, so its limits are too narrow rather than
 * too wide, and no sentence is made from them: sentences come from the limits in force.
 */
std::vector<ReadingReview> readingReviews(const Selection& selection);

}
