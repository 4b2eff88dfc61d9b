// SPDX-License-Identifier: MIT
#pragma once

#include "core/exchange/tables.h"
#include "ui/charts/charttable.h"

#include <QLocale>

namespace cradlepost {

/// How figures are printed for a reader.
struct TablePrint
{
    TableWords words;
    QLocale locale = {};
    TimeZone zone = TimeZone::utc();
};

/// Figures in words, as pages and reports show them: shares in percent, decimals as the column says, days and
/// moments as the reader writes them, a dash where a figure cannot be said. The same columns and rows.
ChartTable printedTable(const DataTable& table, const TablePrint& print);

/// One cell of it.
QString printedCell(
    const std::string& table, const Column& column, const Cell& cell, const TablePrint& print);

}
