// SPDX-License-Identifier: MIT
#include "ui/report/writereport.h"

#include "core/exchange/tablescsv.h"
#include "core/exchange/tablesjson.h"
#include "core/exchange/tablesxlsx.h"
#include "core/exchange/wholefile.h"
#include "ui/report/htmlreport.h"
#include "ui/report/pdfreport.h"

#include <QFileInfo>

namespace cradlepost {

QStringList reportEndings()
{
    return {QStringLiteral("pdf"), QStringLiteral("html"), QStringLiteral("xlsx"), QStringLiteral("csv"),
        QStringLiteral("json")};
}

Result<void> writeReport(const ReportDocument& document, const ReportTables& tables, const QString& path)
{
    const QString ending = QFileInfo(path).suffix().toLower();
    if (ending == QLatin1String("pdf"))
        return writePdf(document,
            {{.name = QStringLiteral("figures.csv"),
                .content = QByteArray::fromStdString(csvOfTables(tables.book)),
                .type = QStringLiteral("text/csv")}},
            path);
    if (ending == QLatin1String("html"))
        return writeHtml(document, path);
    if (ending == QLatin1String("xlsx"))
        return writeXlsx(tables.book, tables.words, path.toStdString());
    if (ending == QLatin1String("csv"))
        return writeWholeFile(path.toStdString(), csvOfTables(tables.book));
    if (ending == QLatin1String("json"))
        return writeWholeFile(path.toStdString(), jsonOfTables(tables.book));
    return fail(ErrorCode::InvalidArgument,
        "a report is written as .pdf, .html, .xlsx, .csv or .json, not as " + path.toStdString());
}

}
