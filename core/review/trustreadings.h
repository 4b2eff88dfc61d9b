// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/selection.h"
#include "core/stats/terminaldigit.h"

namespace cradlepost {

/** Do the readings of one item look rounded, or never vary? */
struct TrustReading
{
    std::size_t item = 0; ///< position in MonthReview::items
    std::int64_t n = 0;
    Decimal step; ///< of the instrument
    /** Readings on a multiple of five steps (".0" and ".5" of a thermometer); one in five by chance. */
    Share onFives;
    /** Far more than one in five: Wilson's lower limit of 99.9 % is above 0.3, also without the commonest
     * value.
     */
    bool rounded = false;
    /** TooFew: below 25 readings; NoSpread: their middle nine tenths are less than eight steps wide. */
    std::optional<CannotSay> whyFives;
    /** Last digits, where the middle nine tenths of the readings are ten steps wide or more. */
    std::optional<stats::DigitPreference> digits;
    std::int64_t different = 0; ///< values that came up
    int longestRun = 0; ///< equal readings in a row
    bool neverVaries = false; ///< one value only, in twenty readings or more, though it varied before
};

std::vector<TrustReading> trustReadings(const Selection& selection);

}
