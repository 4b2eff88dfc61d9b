// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/datatable.h"
#include "core/review/comparison.h"
#include "core/review/month.h"

namespace cradlepost {

/**
 * Every figure of a review as plain tables, in full precision; what cannot be said is an empty cell, with the
 * code of CannotSay in a column `cannotSay` where there is one. Shares come with their counts (`x`, `n`) and
 * 95 % limits (`low`, `high`). Ids are stable; columns in this order:
 *
 * summary            one row a figure: figure, x, n, share, low, high, value, unit, cannotSay
 * done               date, shift, begins, ends, state, readiness, amended
 * course             measure, shift, week, inSpan, due, done, x, n, share, centre, low, high, z
 * course-limits      measure, shift, phaseFrom, phaseTo, centre, dispersion, baselineWeeks, state,
 * limitsFromSpan course-signals     measure, shift, rule, side, from, at course-changes     measure, shift,
 * side, began, signalled, rule, beforeX, beforeN, sinceX, sinceN, goesOn lost-readiness     item, section,
 * severity, gaps, n, share, low, high, notChecked, weight, loss, lossShare, cumulated item-weeks item,
 * section, week, gaps, n, share by-shift           shift, due, done, noCritical, noCriticalShare, low, high,
 * ready, itemsMet, items, itemsShare, meanIndex by-weekday         weekday (1 Monday), then as by-shift
 * pattern-tests      pattern, chiSquare, df, dispersion, p, worst, worstP, differs, cannotSay
 * readings           item, date, shift, value, outside, centre, low, high, beyondChart
 * reading-summary    item, unit, limitSet, limitLow, limitHigh, n, outside, share, low, high, below, above,
 * median, step, cannotSay reading-histogram  item, from, to, count restore            severity ("all" too),
 * hours, atRisk, mended, survival, low, high restore-summary    severity, n, mended, open, medianHours, low,
 * high, logRank, df, p, carriedIn open-gaps          item, severity, opened, hours, before, owner, overdue
 * availability       item, hours, downHours, share, failures, hoursBetween, longestDown, downAtEnd
 * trust              one row a figure: figure, x, n, share, low, high, value, unit, cannotSay
 * trust-readings     item, n, step, onFives, share, low, high, rounded, chiSquare, p, v, different,
 * longestRun, neverVaries trust-agreement    item, both, agreed, roundMetCheckGap, roundGapCheckMet changes
 * text, from, until, roundsBefore, roundsAfter, beforeX, beforeN, afterX, afterN, difference, low, high,
 * dispersion, cannotSay findings           code, part, question, group, weekday, items, day, x, n, value,
 * low, high, hours, count
 */
std::vector<DataTable> monthTables(const MonthReview& review);

/**
 * compared           figure, firstX, firstN, firstShare, secondX, secondN, secondShare, difference, low, high
 * compared-items     item, section, severity, firstGaps, firstN, secondGaps, secondN, difference, low, high,
 * adjustedP
 */
std::vector<DataTable> comparisonTables(const SpanComparison& comparison);

}
