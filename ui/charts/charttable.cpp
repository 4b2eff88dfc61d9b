// SPDX-License-Identifier: MIT
#include "ui/charts/charttable.h"
#include "core/base/csv.h"

#include <QRegularExpression>
#include <string>

namespace cradlepost {

namespace {
/// Names come from checklists that others wrote; a spreadsheet must not run them.
std::string harmless(const QString& cell)
{
    static const QRegularExpression formula(QStringLiteral("^[=+@\\t\\r]|^-(?![0-9.,]+[^A-Za-z(]*$)"));
    return (formula.match(cell).hasMatch() ? QString(u'\'' + cell) : cell).toStdString();
}

void append(std::string& out, const QStringList& cells)
{
    std::vector<std::string> fields;
    for (const QString& cell : cells)
        fields.push_back(harmless(cell));
    appendCsvLine(out, fields);
}
}

QByteArray csvOf(const ChartTable& table)
{
    std::string out;
    append(out, table.headers);
    for (const QStringList& row : table.rows)
        append(out, row);
    return QByteArray::fromStdString(out);
}

}
