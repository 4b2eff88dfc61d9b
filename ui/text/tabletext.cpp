// SPDX-License-Identifier: MIT
#include "ui/text/tabletext.h"

#include "ui/text/codetext.h"
#include "ui/text/monthtext.h"

#include <map>

namespace cradlepost {

namespace {

/** A text that is looked up when it is asked for: the language may change in between. */
struct Named
{
    const char* id;
    const char* text;
};

QString lookUp(const Named* begin, const Named* end, const std::string& id, const char* context)
{
    for (const Named* at = begin; at != end; ++at) {
        if (id == at->id)
            return QCoreApplication::translate(context, at->text);
    }
    return qs(id);
}

constexpr Named titles[] = {
    {"summary", QT_TRANSLATE_NOOP("TableText", "Summary")},
    {"distance", QT_TRANSLATE_NOOP("TableText", "Distance")},
    {"done", QT_TRANSLATE_NOOP("TableText", "Rounds, shift by shift")},
    {"course", QT_TRANSLATE_NOOP("TableText", "Week by week")},
    {"course-limits", QT_TRANSLATE_NOOP("TableText", "Limits of the weekly charts")},
    {"course-signals", QT_TRANSLATE_NOOP("TableText", "Signals of the weekly charts")},
    {"course-changes", QT_TRANSLATE_NOOP("TableText", "Changes in the weekly charts")},
    {"lost-readiness", QT_TRANSLATE_NOOP("TableText", "Items by lost readiness")},
    {"item-weeks", QT_TRANSLATE_NOOP("TableText", "Items by week")},
    {"by-shift", QT_TRANSLATE_NOOP("TableText", "By shift")},
    {"by-weekday", QT_TRANSLATE_NOOP("TableText", "By weekday")},
    {"pattern-tests", QT_TRANSLATE_NOOP("TableText", "Tests of shifts and weekdays")},
    {"readings", QT_TRANSLATE_NOOP("TableText", "Readings")},
    {"reading-summary", QT_TRANSLATE_NOOP("TableText", "Readings against their limits")},
    {"reading-histogram", QT_TRANSLATE_NOOP("TableText", "How often each value was read")},
    {"restore", QT_TRANSLATE_NOOP("TableText", "Gaps still open after so many hours")},
    {"restore-summary", QT_TRANSLATE_NOOP("TableText", "Time to mend")},
    {"open-gaps", QT_TRANSLATE_NOOP("TableText", "Gaps still open")},
    {"availability", QT_TRANSLATE_NOOP("TableText", "Equipment")},
    {"trust", QT_TRANSLATE_NOOP("TableText", "Trust in the entries")},
    {"trust-readings", QT_TRANSLATE_NOOP("TableText", "How readings are written")},
    {"trust-agreement", QT_TRANSLATE_NOOP("TableText", "Agreement with spot checks")},
    {"changes", QT_TRANSLATE_NOOP("TableText", "Change ideas")},
    {"findings", QT_TRANSLATE_NOOP("TableText", "Findings")},
    {"compared", QT_TRANSLATE_NOOP("TableText", "Two spans compared")},
    {"compared-items", QT_TRANSLATE_NOOP("TableText", "Items in two spans")},
    {"district-findings", QT_TRANSLATE_NOOP("TableText", "Findings of the district")},
    {"district-summary", QT_TRANSLATE_NOOP("TableText", "Summary of the district")},
    {"visits", QT_TRANSLATE_NOOP("TableText", "Visits")},
    {"visit-reasons", QT_TRANSLATE_NOOP("TableText", "Why a visit")},
    {"visit-sample", QT_TRANSLATE_NOOP("TableText", "Items picked by lot")},
    {"visit-weights", QT_TRANSLATE_NOOP("TableText", "Weights of visits, in points")},
    {"unit-visits", QT_TRANSLATE_NOOP("TableText", "Visits and what they decided")},
    {"transfers", QT_TRANSLATE_NOOP("TableText", "Transfers that would help")},
    {"stock-balance", QT_TRANSLATE_NOOP("TableText", "Stock lacking and to spare")},
    {"units", QT_TRANSLATE_NOOP("TableText", "Units side by side")},
    {"funnel-curve", QT_TRANSLATE_NOOP("TableText", "Limits of the funnel")},
    {"unit-levels", QT_TRANSLATE_NOOP("TableText", "Units within their level")},
    {"unit-shift-mix",
        QT_TRANSLATE_NOOP("TableText", "Critical gaps against what the shifts worked lead to expect")},
    {"unit-changes", QT_TRANSLATE_NOOP("TableText", "Units against the span before")},
    {"unit-months", QT_TRANSLATE_NOOP("TableText", "Units by month")},
    {"unit-items", QT_TRANSLATE_NOOP("TableText", "Items by unit")},
    {"unit-reporting", QT_TRANSLATE_NOOP("TableText", "Reporting by unit")},
};

constexpr Named headingsOfColumns[] = {
    {"above", QT_TRANSLATE_NOOP("TableText", "Above")},
    {"actor", QT_TRANSLATE_NOOP("TableText", "Who")},
    {"adjustedP", QT_TRANSLATE_NOOP("TableText", "p, adjusted")},
    {"afterN", QT_TRANSLATE_NOOP("TableText", "After: of")},
    {"afterShare", QT_TRANSLATE_NOOP("TableText", "After")},
    {"afterX", QT_TRANSLATE_NOOP("TableText", "After: met")},
    {"agreed", QT_TRANSLATE_NOOP("TableText", "Agreed")},
    {"amended", QT_TRANSLATE_NOOP("TableText", "Amended")},
    {"at", QT_TRANSLATE_NOOP("TableText", "Until")},
    {"atRisk", QT_TRANSLATE_NOOP("TableText", "Still open")},
    {"band", QT_TRANSLATE_NOOP("TableText", "Against the district")},
    {"baselineWeeks", QT_TRANSLATE_NOOP("TableText", "Weeks that set the limits")},
    {"before", QT_TRANSLATE_NOOP("TableText", "Times before")},
    {"beforeN", QT_TRANSLATE_NOOP("TableText", "Before: of")},
    {"beforeShare", QT_TRANSLATE_NOOP("TableText", "Before")},
    {"beforeX", QT_TRANSLATE_NOOP("TableText", "Before: met")},
    {"began", QT_TRANSLATE_NOOP("TableText", "Began")},
    {"begins", QT_TRANSLATE_NOOP("TableText", "Begins")},
    {"below", QT_TRANSLATE_NOOP("TableText", "Below")},
    {"beyondChart", QT_TRANSLATE_NOOP("TableText", "Beyond the chart's limits")},
    {"both", QT_TRANSLATE_NOOP("TableText", "Seen by both")},
    {"cannotSay", QT_TRANSLATE_NOOP("TableText", "Why nothing is said")},
    {"carriedIn", QT_TRANSLATE_NOOP("TableText", "Open before the span")},
    {"centre", QT_TRANSLATE_NOOP("TableText", "Centre")},
    {"chiSquare", QT_TRANSLATE_NOOP("TableText", "Chi-square")},
    {"code", QT_TRANSLATE_NOOP("TableText", "Finding")},
    {"count", QT_TRANSLATE_NOOP("TableText", "Count")},
    {"cumulated", QT_TRANSLATE_NOOP("TableText", "So far")},
    {"date", QT_TRANSLATE_NOOP("TableText", "Day")},
    {"day", QT_TRANSLATE_NOOP("TableText", "Day")},
    {"days", QT_TRANSLATE_NOOP("TableText", "Days in a row")},
    {"decision", QT_TRANSLATE_NOOP("TableText", "Decided")},
    {"df", QT_TRANSLATE_NOOP("TableText", "Degrees of freedom")},
    {"difference", QT_TRANSLATE_NOOP("TableText", "Difference")},
    {"differenceHigh", QT_TRANSLATE_NOOP("TableText", "Difference: upper limit")},
    {"differenceLow", QT_TRANSLATE_NOOP("TableText", "Difference: lower limit")},
    {"different", QT_TRANSLATE_NOOP("TableText", "Different values")},
    {"differs", QT_TRANSLATE_NOOP("TableText", "Stands out")},
    {"dispersion", QT_TRANSLATE_NOOP("TableText", "Dispersion")},
    {"done", QT_TRANSLATE_NOOP("TableText", "Done")},
    {"downAtEnd", QT_TRANSLATE_NOOP("TableText", "Still out of use")},
    {"downHours", QT_TRANSLATE_NOOP("TableText", "Out of use")},
    {"due", QT_TRANSLATE_NOOP("TableText", "Due")},
    {"ends", QT_TRANSLATE_NOOP("TableText", "Ends")},
    {"expected", QT_TRANSLATE_NOOP("TableText", "Expected")},
    {"failures", QT_TRANSLATE_NOOP("TableText", "Times out of use")},
    {"few", QT_TRANSLATE_NOOP("TableText", "Too few rounds")},
    {"figure", QT_TRANSLATE_NOOP("TableText", "Figure")},
    {"firstGaps", QT_TRANSLATE_NOOP("TableText", "First: gaps")},
    {"firstN", QT_TRANSLATE_NOOP("TableText", "First: of")},
    {"firstShare", QT_TRANSLATE_NOOP("TableText", "First")},
    {"firstX", QT_TRANSLATE_NOOP("TableText", "First: count")},
    {"from", QT_TRANSLATE_NOOP("TableText", "From")},
    {"fromUnit", QT_TRANSLATE_NOOP("TableText", "From unit")},
    {"gaps", QT_TRANSLATE_NOOP("TableText", "Rounds with a gap")},
    {"goesOn", QT_TRANSLATE_NOOP("TableText", "Goes on")},
    {"group", QT_TRANSLATE_NOOP("TableText", "Shift")},
    {"help", QT_TRANSLATE_NOOP("TableText", "For whom")},
    {"high", QT_TRANSLATE_NOOP("TableText", "High")},
    {"hours", QT_TRANSLATE_NOOP("TableText", "Hours")},
    {"hoursBetween", QT_TRANSLATE_NOOP("TableText", "Between failures")},
    {"innerHigh", QT_TRANSLATE_NOOP("TableText", "95%, upper")},
    {"innerLow", QT_TRANSLATE_NOOP("TableText", "95%, lower")},
    {"inSpan", QT_TRANSLATE_NOOP("TableText", "In the span")},
    {"item", QT_TRANSLATE_NOOP("TableText", "Item")},
    {"items", QT_TRANSLATE_NOOP("TableText", "Items")},
    {"itemsMet", QT_TRANSLATE_NOOP("TableText", "Items met")},
    {"itemsShare", QT_TRANSLATE_NOOP("TableText", "Share of items met")},
    {"lacks", QT_TRANSLATE_NOOP("TableText", "Lacks")},
    {"lastRound", QT_TRANSLATE_NOOP("TableText", "Last round")},
    {"late", QT_TRANSLATE_NOOP("TableText", "Late")},
    {"lateShare", QT_TRANSLATE_NOOP("TableText", "Late, share")},
    {"level", QT_TRANSLATE_NOOP("TableText", "Level")},
    {"limitHigh", QT_TRANSLATE_NOOP("TableText", "Upper limit")},
    {"limitLow", QT_TRANSLATE_NOOP("TableText", "Lower limit")},
    {"limitSet", QT_TRANSLATE_NOOP("TableText", "Limits")},
    {"limitsFromSpan", QT_TRANSLATE_NOOP("TableText", "Limits from the span itself")},
    {"logRank", QT_TRANSLATE_NOOP("TableText", "Log-rank chi-square")},
    {"longestDown", QT_TRANSLATE_NOOP("TableText", "Longest out of use")},
    {"longestRun", QT_TRANSLATE_NOOP("TableText", "Longest run of equals")},
    {"longestSilence", QT_TRANSLATE_NOOP("TableText", "Longest silence, days")},
    {"looked", QT_TRANSLATE_NOOP("TableText", "Looked at")},
    {"loss", QT_TRANSLATE_NOOP("TableText", "Loss")},
    {"lossShare", QT_TRANSLATE_NOOP("TableText", "Share of the loss")},
    {"low", QT_TRANSLATE_NOOP("TableText", "Low")},
    {"meanIndex", QT_TRANSLATE_NOOP("TableText", "Mean index")},
    {"measure", QT_TRANSLATE_NOOP("TableText", "Measure")},
    {"median", QT_TRANSLATE_NOOP("TableText", "Median")},
    {"medianHours", QT_TRANSLATE_NOOP("TableText", "Median")},
    {"mended", QT_TRANSLATE_NOOP("TableText", "Mended")},
    {"metOfLooked", QT_TRANSLATE_NOOP("TableText", "Met")},
    {"month", QT_TRANSLATE_NOOP("TableText", "Month")},
    {"n", QT_TRANSLATE_NOOP("TableText", "Of")},
    {"names", QT_TRANSLATE_NOOP("TableText", "Stock items")},
    {"neverVaries", QT_TRANSLATE_NOOP("TableText", "Never varies")},
    {"noCritical", QT_TRANSLATE_NOOP("TableText", "Without a critical gap")},
    {"noCriticalShare", QT_TRANSLATE_NOOP("TableText", "Share without a critical gap")},
    {"notChecked", QT_TRANSLATE_NOOP("TableText", "Not checked")},
    {"observed", QT_TRANSLATE_NOOP("TableText", "Seen")},
    {"onFives", QT_TRANSLATE_NOOP("TableText", "On .0 and .5")},
    {"open", QT_TRANSLATE_NOOP("TableText", "Still open")},
    {"opened", QT_TRANSLATE_NOOP("TableText", "Opened")},
    {"othersN", QT_TRANSLATE_NOOP("TableText", "Others: of")},
    {"othersShare", QT_TRANSLATE_NOOP("TableText", "Others")},
    {"othersX", QT_TRANSLATE_NOOP("TableText", "Others")},
    {"outerHigh", QT_TRANSLATE_NOOP("TableText", "99.8%, upper")},
    {"outerLow", QT_TRANSLATE_NOOP("TableText", "99.8%, lower")},
    {"outside", QT_TRANSLATE_NOOP("TableText", "Outside")},
    {"overdue", QT_TRANSLATE_NOOP("TableText", "Overdue")},
    {"owner", QT_TRANSLATE_NOOP("TableText", "Who")},
    {"ownCover", QT_TRANSLATE_NOOP("TableText", "Keeps for itself")},
    {"p", QT_TRANSLATE_NOOP("TableText", "p")},
    {"paper", QT_TRANSLATE_NOOP("TableText", "From paper")},
    {"part", QT_TRANSLATE_NOOP("TableText", "Part")},
    {"pass", QT_TRANSLATE_NOOP("TableText", "Needed to reach it")},
    {"pattern", QT_TRANSLATE_NOOP("TableText", "Compared by")},
    {"phaseFrom", QT_TRANSLATE_NOOP("TableText", "Limits from")},
    {"phaseTo", QT_TRANSLATE_NOOP("TableText", "Limits to")},
    {"pieces", QT_TRANSLATE_NOOP("TableText", "Pieces")},
    {"place", QT_TRANSLATE_NOOP("TableText", "No.")},
    {"points", QT_TRANSLATE_NOOP("TableText", "Points")},
    {"question", QT_TRANSLATE_NOOP("TableText", "A question")},
    {"questions", QT_TRANSLATE_NOOP("TableText", "Questions")},
    {"ratio", QT_TRANSLATE_NOOP("TableText", "Seen to expected")},
    {"ratioHigh", QT_TRANSLATE_NOOP("TableText", "Upper limit")},
    {"ratioLow", QT_TRANSLATE_NOOP("TableText", "Lower limit")},
    {"readiness", QT_TRANSLATE_NOOP("TableText", "Verdict")},
    {"ready", QT_TRANSLATE_NOOP("TableText", "Ready")},
    {"reason", QT_TRANSLATE_NOOP("TableText", "Reason")},
    {"rounded", QT_TRANSLATE_NOOP("TableText", "Looks rounded")},
    {"roundGapCheckMet", QT_TRANSLATE_NOOP("TableText", "Round gap, check met")},
    {"roundMetCheckGap", QT_TRANSLATE_NOOP("TableText", "Round met, check gap")},
    {"rounds", QT_TRANSLATE_NOOP("TableText", "Rounds")},
    {"roundsAfter", QT_TRANSLATE_NOOP("TableText", "Rounds after")},
    {"roundsBefore", QT_TRANSLATE_NOOP("TableText", "Rounds before")},
    {"rule", QT_TRANSLATE_NOOP("TableText", "Rule")},
    {"sample", QT_TRANSLATE_NOOP("TableText", "Sample")},
    {"secondGaps", QT_TRANSLATE_NOOP("TableText", "Second: gaps")},
    {"secondN", QT_TRANSLATE_NOOP("TableText", "Second: of")},
    {"secondShare", QT_TRANSLATE_NOOP("TableText", "Second")},
    {"secondX", QT_TRANSLATE_NOOP("TableText", "Second: count")},
    {"section", QT_TRANSLATE_NOOP("TableText", "Section")},
    {"severity", QT_TRANSLATE_NOOP("TableText", "Severity")},
    {"share", QT_TRANSLATE_NOOP("TableText", "Share")},
    {"shift", QT_TRANSLATE_NOOP("TableText", "Shift")},
    {"side", QT_TRANSLATE_NOOP("TableText", "Direction")},
    {"signalled", QT_TRANSLATE_NOOP("TableText", "Signalled")},
    {"silent", QT_TRANSLATE_NOOP("TableText", "Silent")},
    {"silentDays", QT_TRANSLATE_NOOP("TableText", "Days since the last round")},
    {"sinceN", QT_TRANSLATE_NOOP("TableText", "Since: of")},
    {"sinceX", QT_TRANSLATE_NOOP("TableText", "Since: met")},
    {"spare", QT_TRANSLATE_NOOP("TableText", "To spare")},
    {"state", QT_TRANSLATE_NOOP("TableText", "State")},
    {"step", QT_TRANSLATE_NOOP("TableText", "Step of the instrument")},
    {"stockItem", QT_TRANSLATE_NOOP("TableText", "Stock item")},
    {"survival", QT_TRANSLATE_NOOP("TableText", "Share still open")},
    {"title", QT_TRANSLATE_NOOP("TableText", "What is tried")},
    {"beforeFrom", QT_TRANSLATE_NOOP("TableText", "Before: from")},
    {"afterTo", QT_TRANSLATE_NOOP("TableText", "After: to")},
    {"timed", QT_TRANSLATE_NOOP("TableText", "On screen")},
    {"to", QT_TRANSLATE_NOOP("TableText", "To")},
    {"toUnit", QT_TRANSLATE_NOOP("TableText", "To unit")},
    {"unit", QT_TRANSLATE_NOOP("TableText", "Unit")},
    {"units", QT_TRANSLATE_NOOP("TableText", "Units")},
    {"unmet", QT_TRANSLATE_NOOP("TableText", "Still lacking")},
    {"until", QT_TRANSLATE_NOOP("TableText", "Until")},
    {"usable", QT_TRANSLATE_NOOP("TableText", "In date")},
    {"v", QT_TRANSLATE_NOOP("TableText", "Size of the effect")},
    {"value", QT_TRANSLATE_NOOP("TableText", "Value")},
    {"visitedAt", QT_TRANSLATE_NOOP("TableText", "Visited")},
    {"week", QT_TRANSLATE_NOOP("TableText", "Week from")},
    {"weekday", QT_TRANSLATE_NOOP("TableText", "Weekday")},
    {"weight", QT_TRANSLATE_NOOP("TableText", "Weight")},
    {"worst", QT_TRANSLATE_NOOP("TableText", "Lowest")},
    {"worstP", QT_TRANSLATE_NOOP("TableText", "p of the lowest")},
    {"x", QT_TRANSLATE_NOOP("TableText", "Count")},
    {"z", QT_TRANSLATE_NOOP("TableText", "Distance (sigma)")},
};

/** Dates as they sort, the same in every language: tables are read by machines too. */
QString isoDay(Date date) { return qs(toIso(date)); }

}

QString TableText::title(const std::string& table)
{
    return lookUp(std::begin(titles), std::end(titles), table, "TableText");
}

QString TableText::heading(const Column& column)
{
    const QString name
        = lookUp(std::begin(headingsOfColumns), std::end(headingsOfColumns), column.id, "TableText");
    return column.unit.empty() ? name : QStringLiteral("%1 (%2)").arg(name, qs(column.unit));
}

QStringList TableText::headings(const DataTable& table) const
{
    QStringList all;
    for (const Column& column : table.columns)
        all.append(heading(column));
    return all;
}

QString TableText::word(const Column& column, const std::string& code) const
{
    if (column.id == "item" || column.id == "items") {
        QStringList names;
        for (const QString& id : qs(code).split(QLatin1Char(' '), Qt::SkipEmptyParts))
            names.append(m_names.item(id.toStdString()));
        return m_figures.list(names);
    }
    if (column.id == "section")
        return m_names.section(code);
    if (column.id == "shift" || column.id == "group")
        return code.empty() ? MonthText::shifts(code) : TimeText::shiftName(code);
    return CodeText::word(code);
}

QString TableText::shelves(const std::string& names) const
{
    QStringList all;
    for (const QString& name : qs(names).split(QStringLiteral("; "), Qt::SkipEmptyParts))
        all.append(m_names.shelf(name.toStdString()));
    return all.join(QStringLiteral("; "));
}

QString TableText::cell(const Column& column, const Cell& cell) const
{
    if (std::holds_alternative<std::monostate>(cell))
        return {};
    if (const auto* text = std::get_if<std::string>(&cell)) {
        if (column.id == "stockItem" || column.id == "names")
            return shelves(*text);
        return column.kind == ColumnKind::Code ? word(column, *text) : qs(*text);
    }
    if (const auto* day = std::get_if<Date>(&cell))
        return isoDay(*day);
    if (const auto* at = std::get_if<Instant>(&cell))
        return isoDay(m_times.zone().toLocal(*at).date) + QLatin1Char(' ') + m_times.clock(*at);
    if (const auto* whole = std::get_if<std::int64_t>(&cell)) {
        if (column.kind == ColumnKind::Flag)
            return *whole != 0 ? tr("yes") : tr("no");
        if (column.id == "weekday")
            return *whole > 0 ? MonthText::weekdays(static_cast<int>(*whole)) : QString();
        return m_figures.count(*whole);
    }
    const double value = std::get<double>(cell);
    if (column.kind == ColumnKind::Share)
        return m_figures.percent(value, column.decimals);
    return m_figures.number(value, column.decimals);
}

QStringList TableText::row(const DataTable& table, std::size_t row) const
{
    QStringList cells;
    for (std::size_t i = 0; i < table.columns.size(); ++i)
        cells.append(cell(table.columns[i], table.rows[row][i]));
    return cells;
}

}
