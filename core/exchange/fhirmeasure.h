// SPDX-License-Identifier: MIT
#pragma once

#include "core/exchange/fhirparts.h"
#include "core/review/month.h"

namespace cradlepost::fhir {

/**
 * What a month is measured by, two Measures: `month-shares` (scoring proportion: done, in-time, ready,
 * ready-with-gaps, no-critical-gap, items-met, and items-seen-met with one stratum an item) and
 * `month-values` (continuous-variable: mean-index, median-hours-to-restore). Populations are told by codes.
 */
std::vector<Resource> measures();

/**
 * The month of one unit by these Measures, two MeasureReports of type summary. What cannot be said has its
 * counts and no score. The period ends with the month, or with the day of the review when that comes first.
 */
std::vector<Resource> measureReports(const UnitHistory& history, const MonthReview& review);

}
