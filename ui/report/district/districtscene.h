// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/districttables.h"
#include "ui/charts/charttable.h"
#include "ui/text/districttext.h"
#include "ui/text/tabletext.h"

namespace cradlepost {

/** One comparison of units with everything that words and draws it. What it is made from must outlive it. */
class DistrictScene
{
    Q_DECLARE_TR_FUNCTIONS(DistrictScene)
public:
    DistrictScene(const DistrictHistory& history, const DistrictReview& review, const Language& language);
    DistrictScene(const DistrictScene&) = delete;
    DistrictScene& operator=(const DistrictScene&) = delete;

    [[nodiscard]] const DistrictReview& review() const { return m_review; }
    [[nodiscard]] const std::string& level() const { return m_review.level; }
    [[nodiscard]] const Language& language() const { return m_language; }
    [[nodiscard]] const TimeText& times() const { return m_times; }
    [[nodiscard]] const ItemNames& names() const { return m_names; }
    [[nodiscard]] const FigureText& figures() const { return m_figures; }
    [[nodiscard]] const DistrictText& text() const { return m_text; }
    [[nodiscard]] const TableText& tableText() const { return m_tableText; }
    [[nodiscard]] const std::vector<DataTable>& tables() const { return m_tables; }

    [[nodiscard]] QString itemName(std::size_t item) const;
    /** A table of districtTables, worded. */
    [[nodiscard]] ChartTable table(std::string_view id) const;
    /** "October 2026", "August to October 2026" */
    [[nodiscard]] QString span() const;
    [[nodiscard]] QString month(std::chrono::year_month month) const;

private:
    UnitHistory m_wording; ///< only its checklists: items are worded by them
    const DistrictReview& m_review;
    const Language& m_language;
    TimeText m_times;
    ItemNames m_names;
    FigureText m_figures;
    DistrictText m_text;
    TableText m_tableText;
    std::vector<DataTable> m_tables;
};

}
