// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/selection.h"
#include "core/stats/pchart.h"
#include "core/stats/twoproportions.h"

namespace cradlepost {

/** What a weekly chart shows. */
enum class CourseMeasure {
    ItemsMet, ///< share of applicable items met: the one that sentences are made from
    NoCriticalGap, ///< share of shifts Ready or Ready with gaps
    Ready, ///< share of shifts Ready
};

const char* codeName(CourseMeasure measure);

struct CourseWeek
{
    Date monday; ///< of the ISO week; the first and last week hold only days of look-back and span
    bool inSpan = false; ///< has a day of the span
    std::int64_t due = 0;
    std::int64_t done = 0;
    stats::Tally tally; ///< of the measure
};

/** A change that the chart's rules found in the span. */
struct CourseChange
{
    int side = 0; ///< +1 rose, -1 fell
    stats::SignalRule rule = stats::SignalRule::BeyondLimit; ///< that signalled first
    Date signalled; ///< Monday of the week that signalled first
    /** Monday of the first week of the unbroken run on that side of the centre that holds the signal. */
    Date began;
    stats::Tally before; ///< weeks that set the limits and lie before `began`
    stats::Tally since; ///< from `began` to the end of the run
    bool goesOn = false; ///< the run reaches the last week of the span
};

/** One weekly p' chart; see stats::pPrimeChart. */
struct CourseChart
{
    CourseMeasure measure = CourseMeasure::ItemsMet;
    std::string shift; ///< code; empty: all shifts
    std::vector<CourseWeek> weeks; ///< the rows of the chart
    std::optional<stats::ControlChart> chart; ///< none: see why
    std::optional<CannotSay> why; ///< no limits: nothing can signal
    bool limitsFromSpan = false; ///< too few weeks before it: its own weeks set the limits, no change is told
    std::vector<CourseChange> changes; ///< the first fall and the first rise that end or go on in the span
};

struct CourseMark
{
    std::size_t change = 0; ///< position in UnitHistory::changes
    Date monday; ///< week in which it started
};

struct ReadinessCourse
{
    /** For each measure the chart of all shifts, then one a shift code where there are several. */
    std::vector<CourseChart> charts;
    std::vector<CourseMark> marks; ///< change ideas that started in the weeks shown

    [[nodiscard]] const CourseChart* chart(CourseMeasure measure, std::string_view shift = {}) const;
};

/**
 * Weeks of the span and up to `weeksBefore` before it. The weeks before the span set the limits, the weeks of
 * the span are judged by them. Assumes that weeks are independent given their spread; since gaps last, they
 * are not quite: the rules of ReviewOptions are set for that, and the false-alarm test states what is left.
 */
ReadinessCourse readinessCourse(const Selection& selection);

/** The chart of given weekly rows: what readinessCourse draws, open to figures from elsewhere. */
CourseChart courseChart(
    std::vector<CourseWeek> weeks, const ReviewOptions& options, std::span<const Date> phaseStarts = {});

}
