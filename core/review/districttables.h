// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/datatable.h"
#include "core/review/district.h"

namespace cradlepost {

/**
 * Every figure of a comparison of units as plain tables, in full precision; what cannot be said is an empty
 * cell, with the code of CannotSay in a column `cannotSay` where there is one. Shares come with their counts
 * and 95 % limits. Ids are stable. "item" stands for item, section, severity where it says item*. In order:
 *
 * district-findings  place, code, part, question, units, items, x, n, share, low, high, beforeX, beforeN,
 *                    count, value
 * district-summary   figure, x, n, share, low, high, value, unit, cannotSay: no-critical-gap,
 *                    dispersion-none | dispersion-multiplicative | dispersion-additive (p of the test),
 *                    dispersion-phi, dispersion-tau, likelihood-multiplicative, likelihood-additive,
 *                    sample-size, sample-pass, sample-good-failed, sample-poor-passed
 * visits             place, unit, points, help
 * visit-reasons      unit, reason, points, items, names, count, hours, days, x, n, share, low, high, beforeX,
 *                    beforeN
 * visit-weights      weight, value
 * unit-visits        unit, visitedAt, sample, pass, looked, metOfLooked, decision, items
 * transfers          stockItem, fromUnit, toUnit, pieces, distance
 * stock-balance      stockItem, unit, usable, ownCover, lacks, spare, unmet
 * units              unit, level, band, few, x, n, share, low, high, innerLow, innerHigh, outerLow, outerHigh,
 *                    z, p, adjustedP, ready, itemsMet, items, itemsShare
 * funnel-curve       n, innerLow, innerHigh, outerLow, outerHigh
 * unit-levels        level, unit, x, n, share, low, high, othersX, othersN, othersShare, difference,
 *                    differenceLow, differenceHigh, adjustedP, band, cannotSay
 * unit-shift-mix     unit, observed, expected, ratio, ratioLow, ratioHigh
 * unit-changes       unit, beforeX, beforeN, beforeShare, afterX, afterN, afterShare, difference,
 *                    differenceLow, differenceHigh, dispersion, adjustedP, cannotSay
 * unit-months        unit, month, noCritical, rounds, noCriticalShare, itemsMet, items, itemsShare
 * unit-items         item*, unit, gaps, n, share
 * unit-reporting     unit, x, n, share, low, high (done of due), late, timed, lateShare, paper, amended,
 *                    longestSilence, silentDays, lastRound, questions, silent
 */
std::vector<DataTable> districtTables(const DistrictReview& review);

}
