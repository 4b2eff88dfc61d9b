// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/monthtables.h"
#include "ui/charts/charttable.h"
#include "ui/text/monthtext.h"
#include "ui/text/tabletext.h"

namespace cradlepost {

/** One review with everything that words and draws it. What it is made from must outlive it. */
class MonthScene
{
    Q_DECLARE_TR_FUNCTIONS(MonthScene)
public:
    MonthScene(const UnitHistory& history, const MonthReview& review, const Language& language,
        const TimeText& times);
    MonthScene(const MonthScene&) = delete;
    MonthScene& operator=(const MonthScene&) = delete;

    [[nodiscard]] const UnitHistory& history() const { return m_history; }
    [[nodiscard]] const MonthReview& review() const { return m_review; }
    [[nodiscard]] const TimeText& times() const { return m_times; }
    [[nodiscard]] const ItemNames& names() const { return m_names; }
    [[nodiscard]] const FigureText& figures() const { return m_figures; }
    [[nodiscard]] const MonthText& text() const { return m_text; }
    [[nodiscard]] const TableText& tableText() const { return m_tableText; }
    [[nodiscard]] const Language& language() const { return m_language; }
    [[nodiscard]] const QLocale& locale() const { return m_language.locale(); }
    [[nodiscard]] const std::vector<DataTable>& tables() const { return m_tables; }

    [[nodiscard]] QString itemName(std::size_t item) const;
    /** Name of a table of monthTables, worded; rows where the text column `where` is `is`, or all of them. */
    [[nodiscard]] ChartTable table(
        std::string_view id, std::string_view where = {}, std::string_view is = {}) const;
    /** A finding about this part, as a sentence; nothing when there is none. */
    [[nodiscard]] QString said(MonthPart part) const;
    /** "1 Oct to 31 Oct 2026" */
    [[nodiscard]] QString span(const ReviewSpan& span) const;

private:
    const UnitHistory& m_history;
    const MonthReview& m_review;
    const Language& m_language;
    const TimeText& m_times;
    ItemNames m_names;
    FigureText m_figures;
    MonthText m_text;
    TableText m_tableText;
    std::vector<DataTable> m_tables;
};

}
