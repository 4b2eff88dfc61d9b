// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/history.h"
#include "core/review/selection.h"
#include "core/review/visitresult.h"
#include "core/supply/transfer.h"

namespace cradlepost {

/** Months of the series of a unit: a year up to the last month of the span. */
inline constexpr int seriesMonths = 12;

/** What a unit did in one span, over its shift rounds. */
class UnitTallies
{
public:
    std::int64_t due = 0; ///< shifts with a round due that are over, or whose round is done
    std::int64_t done = 0; ///< of those due
    std::int64_t ready = 0;
    std::int64_t readyWithGaps = 0;
    std::int64_t notReady = 0;
    stats::Tally items; ///< met of applicable
    std::int64_t late = 0; ///< by screen, later in the shift than ReviewOptions::inTimeShare
    std::int64_t paper = 0;
    std::int64_t amended = 0; ///< rounds
    int longestSilence = 0; ///< most days in a row on which a round was due and none was done
    std::int64_t pairs = 0; ///< rounds that follow another one of the span ...
    std::int64_t clearPairs = 0; ///< ... both without a critical gap

    [[nodiscard]] std::int64_t rounds() const { return ready + readyWithGaps + notReady; }
    [[nodiscard]] stats::Tally noCriticalGap() const { return {.x = ready + readyWithGaps, .n = rounds()}; }
    /**
     * By how much the variance of the share without a critical gap grows since neighbouring rounds are alike:
     * (1 + r)/(1 - r), r their correlation between 0 and 0.95; see Spread::carryOver.
     */
    [[nodiscard]] double carryOver() const;
    /** Takes in the verdict of the next round, in order of time. */
    void add(Readiness state);

private:
    std::optional<bool> m_lastClear;
};

/** A calendar month of a unit's series. */
struct UnitMonth
{
    stats::Tally noCriticalGap; ///< of rounds done; n = 0: no data, never 0 %
    stats::Tally items; ///< met of applicable
};

/** Rounds of one shift of the day: units differ in which shifts they report. */
struct UnitShift
{
    std::string shift; ///< code
    stats::Tally noCriticalGap;
};

/** A gap open at the end of the span. */
struct StandingGap
{
    std::string item; ///< id
    Severity severity = Severity::Minor;
    double hours = 0; ///< old at the end of the span
};

struct DistrictUnit
{
    std::string id;
    std::string name;
    std::string level; ///< of the facility; may be empty
    UnitTallies span;
    UnitTallies before; ///< the span of as many days, or months, before
    std::vector<UnitMonth> months; ///< seriesMonths, the last one that of the span's last day
    std::vector<UnitShift> shifts; ///< of the span
    std::vector<stats::Tally> gaps; ///< of rounds that looked, by position in DistrictHistory::items
    std::vector<StandingGap> open; ///< the oldest first
    std::optional<Instant> lastRound; ///< finish of the last one up to the end of the span
    double silentDays = 0; ///< from its last round, or the first shift due, to the end of the span or now
    /** Questions about the entries of the span, as the month's review asks them; nothing: not looked into. */
    std::optional<std::int64_t> questions;
    std::vector<VisitResult> visits; ///< of the year up to the end of the span, in order of time
};

/** What a comparison of units reads. */
struct DistrictHistory
{
    ReviewSpan span;
    ReviewSpan before;
    Instant now;
    TimeZone zone = TimeZone::utc(); ///< of the first unit: for times of the whole
    std::vector<std::chrono::year_month> months; ///< of the series
    std::vector<ReviewItem> items; ///< in the order of the latest checklist, older ones after them
    std::vector<ChecklistInForce> lists; ///< for the wording of items, the latest last
    std::vector<std::shared_ptr<const Checklist>> others; ///< of the other checks: their gaps stand open too
    std::vector<DistrictUnit> units; ///< by name
    std::string level; ///< that they were cut to; empty: all
    std::vector<UnitShelves> shelves; ///< of `now`, a unit each in the same order; empty: not looked into
    DistanceTable distances;
};

/** The span before: as many whole months when it is of whole months, else as many days. */
ReviewSpan spanBefore(const ReviewSpan& span);
/** Only the units of that level stay; an empty one keeps all. */
void keepLevel(DistrictHistory& history, const std::string& level);
/** The levels of the units, each once, sorted; units without one are left out. */
std::vector<std::string> levelsOf(const DistrictHistory& history);
/** The months of a series that ends with the span. */
std::vector<std::chrono::year_month> seriesOf(const ReviewSpan& span);

}
