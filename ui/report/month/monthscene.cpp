// SPDX-License-Identifier: MIT
#include "ui/report/month/monthscene.h"

#include "ui/report/reportabout.h"

namespace cradlepost {

MonthScene::MonthScene(
    const UnitHistory& history, const MonthReview& review, const Language& language, const TimeText& times)
    : m_history(history)
    , m_review(review)
    , m_language(language)
    , m_times(times)
    , m_names(history, language)
    , m_figures(language)
    , m_text(language, times, m_names, review)
    , m_tableText(language, times, m_names)
    , m_tables(monthTables(review))
{
}

QString MonthScene::itemName(std::size_t item) const { return m_names.item(m_review.items[item].id); }

ChartTable MonthScene::table(std::string_view id, std::string_view where, std::string_view is) const
{
    return wordedTable(m_tableText, m_tables, id, where, is);
}

QString MonthScene::said(MonthPart part) const
{
    for (const MonthFinding& finding : m_review.findings) {
        if (finding.part == part)
            return m_text.sentence(finding);
    }
    return {};
}

QString MonthScene::span(const ReviewSpan& span) const
{
    //: a span of days: %1 the first, %2 the last day, %3 the year of the last
    return tr("%1 to %2 %3")
        .arg(m_times.day(span.from), m_times.day(addDays(span.to, -1)),
            QString::number(static_cast<int>(addDays(span.to, -1).year())));
}

}
