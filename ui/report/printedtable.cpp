// SPDX-License-Identifier: MIT
#include "ui/report/printedtable.h"

#include "ui/report/reporttext.h"
#include "ui/text/language.h"

#include <cmath>
#include <QDate>
#include <QTime>

namespace cradlepost {

namespace {

QString dayText(Date day, const QLocale& locale)
{
    const QDate date(
        int(day.year()), static_cast<int>(unsigned(day.month())), static_cast<int>(unsigned(day.day())));
    return locale.toString(date, QStringLiteral("d MMM yyyy"));
}

/// A cell of a column, by what it holds.
struct Printing
{
    const std::string& table;
    const Column& column;
    const TablePrint& print;

    QString operator()(std::monostate) const { return QStringLiteral("–"); }
    QString operator()(std::int64_t number) const
    {
        if (column.kind == ColumnKind::Flag)
            return number != 0 ? ReportText::yes() : ReportText::no();
        return print.locale.toString(static_cast<qlonglong>(number));
    }
    QString operator()(double number) const
    {
        if (!std::isfinite(number))
            return (*this)(std::monostate());
        if (column.kind == ColumnKind::Share)
            return print.locale.toString(number * 100.0, 'f', column.decimals) + print.locale.percent();
        return print.locale.toString(number, 'f', column.decimals);
    }
    QString operator()(const std::string& text) const
    {
        return qs(column.kind == ColumnKind::Code ? codeWord(print.words, table, column, text) : text);
    }
    QString operator()(Date day) const { return dayText(day, print.locale); }
    QString operator()(Instant moment) const
    {
        const LocalTime wall = print.zone.toLocal(moment);
        const int minutes = static_cast<int>(wall.sinceMidnight.count());
        return dayText(wall.date, print.locale) + u' '
            + QTime(minutes / 60, minutes % 60).toString(QStringLiteral("HH:mm"));
    }
};

bool isNumeric(ColumnKind kind)
{
    return kind == ColumnKind::Count || kind == ColumnKind::Number || kind == ColumnKind::Share;
}

}

QString printedCell(const std::string& table, const Column& column, const Cell& cell, const TablePrint& print)
{
    return std::visit(Printing{table, column, print}, cell);
}

ChartTable printedTable(const DataTable& table, const TablePrint& print)
{
    ChartTable out;
    for (const Column& column : table.columns) {
        out.headers.append(qs(headingWord(print.words, table.id, column)));
        out.numbers.push_back(isNumeric(column.kind));
    }
    for (const std::vector<Cell>& row : table.rows) {
        QStringList cells;
        for (std::size_t i = 0; i < table.columns.size(); ++i)
            cells.append(printedCell(table.id, table.columns[i], i < row.size() ? row[i] : Cell(), print));
        out.rows.push_back(cells);
    }
    return out;
}

}
