// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/share.h"

#include <string>
#include <vector>

namespace cradlepost {

struct DistrictReview;

/** What a sentence says. The comment names the members of DistrictFinding that it fills. */
enum class DistrictFindingCode {
    SeeFirst, ///< units (one), value (points): its reasons stand in DistrictReview::visits
    NobodyFirst, ///< no unit has a reason to be seen first
    NothingDone, ///< no unit has a round: count (rounds due)
    Lower, ///< units clearly lower than the district: units, share (of the district)
    Higher, ///< as Lower
    NotToldApart, ///< count (units that chance alone may part), share (of the district)
    TooFew, ///< units with too few rounds to say: units, share (of the first)
    Silent, ///< units without rounds for days: units (the longest first), count (days of the first)
    Incomplete, ///< units with too few of the rounds due: units, share (of the first)
    Late, ///< units that record late: units, share (of the first)
    Fell, ///< units (one), before, share
    Rose, ///< as Fell
    OftenMissing, ///< an item often missing in several units: items (one), units, share (over all units)
    AskEntries, ///< units whose entries raise questions: units (most first), count (questions of the first)
    CouldMove, ///< stock that one unit could give another: units (takers, each once), count (items)
    NotReached, ///< units whose last visit of the year did not reach the standard: units
};

const char* codeName(DistrictFindingCode code);

/** The chart or table that a sentence links to. */
enum class DistrictPart { Funnel, SideBySide, Months, Items, Reporting, Changes, Visits, Stock };

const char* codeName(DistrictPart part);

struct DistrictFinding
{
    DistrictFindingCode code = DistrictFindingCode::NothingDone;
    DistrictPart part = DistrictPart::Funnel;
    bool isQuestion = false; ///< about trust: to be asked, not told
    std::vector<std::size_t> units; ///< positions in DistrictReview::units
    std::vector<std::string> items; ///< ids
    Share share;
    Share before;
    std::int64_t count = 0;
    double value = 0;
};

/** How many sentences stand at the top. */
inline constexpr std::size_t mostDistrictFindings = 7;

/** The first one answers which unit to see first, or says that there is nothing to go by. */
std::vector<DistrictFinding> findingsOf(const DistrictReview& review);

}
