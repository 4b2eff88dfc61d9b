// SPDX-License-Identifier: MIT
#include "ui/report/district/districtscene.h"

#include "ui/report/reportabout.h"

#include <QDate>

namespace cradlepost {

DistrictScene::DistrictScene(
    const DistrictHistory& history, const DistrictReview& review, const Language& language)
    : m_wording{.lists = history.lists, .others = history.others}
    , m_review(review)
    , m_language(language)
    , m_times(language, history.zone)
    , m_names(m_wording, language)
    , m_figures(language)
    , m_text(language, m_names, review)
    , m_tableText(language, m_times, m_names)
    , m_tables(districtTables(review))
{
}

QString DistrictScene::itemName(std::size_t item) const { return m_names.item(m_review.items[item].id); }

ChartTable DistrictScene::table(std::string_view id) const
{
    return wordedTable(m_tableText, m_tables, id);
}

QString DistrictScene::month(std::chrono::year_month month) const
{
    return m_language.locale().toString(
        QDate(static_cast<int>(month.year()), static_cast<int>(static_cast<unsigned>(month.month())), 1),
        QStringLiteral("MMMM yyyy"));
}

QString DistrictScene::span() const
{
    const Date last = addDays(m_review.span.to, -1);
    const QString from = month(m_review.span.from.year() / m_review.span.from.month());
    const QString to = month(last.year() / last.month());
    //: a span of months
    return from == to ? from : tr("%1 to %2").arg(from, to);
}

}
