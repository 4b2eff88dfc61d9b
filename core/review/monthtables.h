// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/datatable.h"
#include "core/review/comparison.h"
#include "core/review/month.h"

namespace cradlepost {

/**
 * Every figure of a review as plain tables, in full precision; what cannot be said is an empty cell, with the
 * code of CannotSay in a column `cannotSay` where there is one. Shares come with their counts and 95 % limits
 * (`low`, `high`). Ids are stable. "item" stands for item, section, severity where it says item*. In order:
 *
 * findings           place, code, part, question, group, weekday, items, day, doneX, doneN, beforeX, beforeN,
 *                    afterX, afterN, x, n, share, low, high, value, valueLow, valueHigh, hours, count
 * summary            figure, x, n, share, low, high, value, unit, cannotSay: done, ready, ready-with-gaps,
 *                    no-critical-gap, items-met, mean-index, lowest-index, not-ready
 * done               date, shift, begins, ends, state, readiness, amended
 * lost-readiness     item*, gaps, n, share, low, high, notChecked, weight, loss, lossShare, cumulated
 * item-weeks         item*, week, gaps, n, share
 * course             measure, shift, week, inSpan, due, done, x, n, share, centre, low, high, z
 * course-limits      measure, shift, phaseFrom, phaseTo, centre, dispersion, baselineWeeks, state,
 *                    limitsFromSpan
 * course-signals     measure, shift, rule, side, from, at
 * course-changes     measure, shift, side, began, signalled, rule, beforeX, beforeN, sinceX, sinceN, goesOn
 * by-shift           shift, due, done, noCritical, noCriticalShare, low, high, ready, itemsMet, items,
 *                    itemsShare, meanIndex
 * by-weekday         weekday (1 Monday), then as by-shift
 * pattern-tests      pattern, chiSquare, df, dispersion, p, worst, worstP, differs, cannotSay
 * readings           item, date, shift, value, outside, centre, low, high, beyondChart
 * reading-summary    item, unit, limitSet, limitLow, limitHigh, outside, n, share, low, high, below, above,
 *                    median, step, cannotSay
 * reading-histogram  item, from, to, count
 * restore            severity ("all" too), hours, atRisk, mended, survival, low, high
 * restore-summary    severity, n, mended, open, medianHours, low, high, logRank, df, p, carriedIn, cannotSay
 * open-gaps          item, severity, opened, hours, before, owner, overdue
 * availability       item, hours, downHours, share, failures, hoursBetween, longestDown, downAtEnd
 * trust              as summary: complete, in-time, looked-at, amended, amended-late, recorded-late, paper,
 *                    too-fast, below-floor, median-seconds, median-seconds-per-item, repeating, equal-pairs,
 *                    equal-pairs-expected, equal-pairs-chance, spot-checks, agreed, kappa, ac1,
 * adjusted-kappa trust-readings     item, step, onFives, n, share, low, high, rounded, cannotSay, chiSquare,
 * p, v, different, longestRun, neverVaries trust-agreement    item, both, agreed, roundMetCheckGap,
 * roundGapCheckMet changes            title, from, until, items, beforeFrom, afterTo (last day),
 * roundsBefore, roundsAfter, beforeX, beforeN, afterX, afterN, difference, low, high, dispersion, cannotSay
 */
std::vector<DataTable> monthTables(const MonthReview& review);

/**
 * compared           figure, firstX, firstN, firstShare, secondX, secondN, secondShare, difference, low, high
 * compared-items     item*, firstGaps, firstN, secondGaps, secondN, difference, low, high,
 * adjustedP
 */
std::vector<DataTable> comparisonTables(const SpanComparison& comparison);

}
