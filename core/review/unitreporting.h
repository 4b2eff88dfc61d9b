// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/districthistory.h"
#include "core/review/districtoptions.h"

namespace cradlepost {

/** Who reported, how completely, how late. */
struct UnitReporting
{
    std::size_t unit = 0; ///< position in DistrictHistory::units
    Share done; ///< of rounds due
    Share late; ///< of rounds by screen
    std::int64_t paper = 0;
    std::int64_t amended = 0;
    int longestSilence = 0; ///< days in a row
    double silentDays = 0; ///< since the last round, at the end of the span
    std::optional<Instant> lastRound;
    std::optional<std::int64_t> questions; ///< about the entries; nothing: not looked into
    bool isSilent = false; ///< a silence of DistrictOptions::silentDays or more
    bool isIncomplete = false; ///< not silent, and done below lowDone by the upper limit
    bool isLate = false; ///< late above oftenLate by the lower limit
};

/** In the order of the history. */
std::vector<UnitReporting> unitReporting(const DistrictHistory& history, const DistrictOptions& options);

}
