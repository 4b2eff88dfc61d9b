// SPDX-License-Identifier: MIT
#pragma once

#include "core/stats/tally.h"

#include <optional>

namespace cradlepost {

/** Why a figure is missing. */
enum class CannotSay {
    NoData, ///< nothing was seen
    TooFew, ///< seen too seldom
    NoSpread, ///< all the same: nothing to measure chance by
    NotApplicable, ///< the question does not arise here
};

const char* codeName(CannotSay why);

/** x of n with its interval; never a bare percentage. */
struct Share
{
    stats::Tally tally;
    std::optional<stats::Interval> interval; ///< Wilson, 95 %; none when n = 0

    [[nodiscard]] std::optional<double> value() const;
};

/** With its interval; 0 <= x <= n. */
Share shareOf(stats::Tally tally);

inline stats::Tally operator+(stats::Tally a, stats::Tally b) { return {.x = a.x + b.x, .n = a.n + b.n}; }
inline stats::Tally& operator+=(stats::Tally& a, stats::Tally b) { return a = a + b; }

}
