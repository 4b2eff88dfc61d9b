// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/datatable.h"
#include "ui/text/figuretext.h"
#include "ui/text/itemnames.h"
#include "ui/text/timetext.h"

#include <QStringList>

namespace cradlepost {

/** The tables of figures in the reader's language: titles, headings, cells. The figures stay what they are.
 */
class TableText
{
    Q_DECLARE_TR_FUNCTIONS(TableText)
public:
    /** All must outlive it. */
    TableText(const Language& language, const TimeText& times, const ItemNames& names)
        : m_times(times)
        , m_names(names)
        , m_figures(language)
    {
    }

    [[nodiscard]] static QString title(const std::string& table);
    /** With the unit: "Median (h)". */
    [[nodiscard]] static QString heading(const Column& column);
    [[nodiscard]] QStringList headings(const DataTable& table) const;
    /** Empty for what cannot be said. */
    [[nodiscard]] QString cell(const Column& column, const Cell& cell) const;
    /** A stable code of a column in words; the code itself when it has none. */
    [[nodiscard]] QString word(const Column& column, const std::string& code) const;
    [[nodiscard]] QStringList row(const DataTable& table, std::size_t row) const;

private:
    /** Names of stock, parted by "; ". */
    [[nodiscard]] QString shelves(const std::string& names) const;

    const TimeText& m_times;
    const ItemNames& m_names;
    FigureText m_figures;
};

}
