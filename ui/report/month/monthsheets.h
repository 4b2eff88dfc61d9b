// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/chartsaving.h"
#include "ui/report/month/monthscene.h"

namespace cradlepost {

// Each part of a month's review as it is drawn, on the page and in the report alike: the title says what was
// found, the table behind it holds the figures.

/** Rounds done against due, day by shift. */
ChartContent doneSheet(const MonthScene& scene);
/** Share of items met, or of shifts ready, week by week. */
ChartContent courseSheet(const MonthScene& scene, CourseMeasure measure);
/** Where readiness is lost. */
ChartContent lostSheet(const MonthScene& scene);
ChartContent itemWeeksSheet(const MonthScene& scene);
/** By shift and by weekday. */
ChartContent patternSheet(const MonthScene& scene);
/** One measured item as a chart of individuals. */
ChartContent readingSheet(const MonthScene& scene, const ReadingReview& reading);
ChartContent histogramSheet(const MonthScene& scene, const ReadingReview& reading);
/** How long gaps stay open. */
ChartContent restoreSheet(const MonthScene& scene);
ChartContent openGapsSheet(const MonthScene& scene);
ChartContent availabilitySheet(const MonthScene& scene);
/** Can the entries be trusted: shares, each with what to ask. */
ChartContent trustSheet(const MonthScene& scene);
/** Before and after each change idea. */
ChartContent changesSheet(const MonthScene& scene);

/** One sheet of a part; readings have two for each item. */
struct MonthSheet
{
    MonthPart part = MonthPart::Done;
    ChartContent content;
};

/** All of them, in the order in which a page shows them. */
std::vector<MonthSheet> monthSheets(const MonthScene& scene);

}
