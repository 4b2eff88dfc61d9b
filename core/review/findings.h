// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/calendar.h"
#include "core/review/share.h"
#include "core/stats/tally.h"

#include <string>
#include <vector>

namespace cradlepost {

struct MonthReview;

/** What a sentence says. The comment names the members of MonthFinding that it fills. */
enum class MonthFindingCode {
    NothingDone, ///< no round in the span: done
    TooLittle, ///< too few rounds to speak of: done
    HowReady, ///< done, ready, noCriticalGap, index; the first sentence
    Fell, ///< the weekly chart signalled: group (shift code, empty: all), day (began), day2 (signalled),
          ///< before, after
    Rose, ///< as Fell
    NoChange, ///< the weekly chart had limits and no rule signalled: count (weeks that set them)
    Incomplete, ///< fewer rounds than due: done
    LostMost, ///< items (up to three), value (share of what was lost), share (first item's gaps)
    ShiftDiffers, ///< group (shift code), before (others' items met), after (its items met), value (p)
    WeekdayDiffers, ///< weekday, before, after, value (p)
    ReadingsOutside, ///< items (one), share (outside), low/high as the tables say, value (median)
    EquipmentDown, ///< items (one), value (share of time available), hours (down), count (failures)
    TimeToRestore, ///< hours (median), hoursInterval, share (mended of opened)
    CriticalOpen, ///< critical gaps open at the end: count, items (up to three, oldest first), hours (the
                  ///< oldest)
    ChangeBetter, ///< change, before, after, value (difference), interval
    ChangeWorse, ///< as ChangeBetter
    ChangeOpen, ///< the interval holds 0: as ChangeBetter
    AskRepeats, ///< rounds that say what an earlier one says: share, value (expected equal pairs), count
                ///< (seen)
    AskPace, ///< rounds too fast to have been walked: share, value (median seconds an item)
    AskRounding, ///< items (one), share (on fives)
    AskSameReading, ///< items (one), count (readings)
    AskLate, ///< share (late of rounds by screen)
    AskAgreement, ///< before (agreed of compared), value (AC1), interval, items (that disagree most, up to
                  ///< three)
};

const char* codeName(MonthFindingCode code);

/** The chart or table that a sentence links to. */
enum class MonthPart {
    Done,
    Readiness,
    Course,
    Lost,
    ItemWeeks,
    ByShift,
    ByWeekday,
    Readings,
    Restore,
    OpenGaps,
    Availability,
    Trust,
    Changes,
};

const char* codeName(MonthPart part);

/** One sentence, as a code with its values; ui/text makes the words. What a code does not fill stays empty.
 */
struct MonthFinding
{
    MonthFindingCode code = MonthFindingCode::TooLittle;
    MonthPart part = MonthPart::Readiness;
    bool isQuestion = false; ///< about trust: to be asked, not told
    bool claimsChange = false; ///< says that something differs more than by chance
    std::string group; ///< shift code; empty: all shifts
    int weekday = 0; ///< 1 Monday to 7 Sunday
    std::vector<std::string> items; ///< ids
    std::optional<std::size_t> change; ///< position in UnitHistory::changes
    std::optional<Date> day;
    std::optional<Date> day2;
    Share done; ///< rounds done of due
    Share ready; ///< shifts Ready
    Share noCriticalGap; ///< shifts Ready or Ready with gaps
    std::optional<double> index; ///< mean readiness index, 0 to 1
    Share share;
    stats::Tally before;
    stats::Tally after;
    std::optional<double> value;
    std::optional<stats::Interval> interval; ///< of value
    std::optional<double> hours;
    std::optional<double> hoursLow; ///< limit of hours
    std::optional<double> hoursHigh;
    std::int64_t count = 0;
};

/** How many sentences stand at the top. */
inline constexpr std::size_t mostFindings = 6;

/**
 * All findings of a review, the weightiest first; the first one says how ready the room was, or that there is
 * too little to say. The first `mostFindings` are the sentences at the top.
 */
std::vector<MonthFinding> findingsOf(const MonthReview& review);

/** The questions among them alone; needs items, readiness and trust of the review only. */
std::vector<MonthFinding> questionsOf(const MonthReview& review);

}
