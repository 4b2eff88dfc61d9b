// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/exchange/tables.h"
#include "ui/report/reportdocument.h"

namespace cradlepost {

/// The figures of a report and the reader's words for their ids.
struct ReportTables
{
    TableBook book;
    TableWords words;
};

/// Endings that writeReport knows, without the point, in the order in which they are offered.
QStringList reportEndings();

/// Writes the report by the ending of `path`, in any case of letters: .pdf (with the figures as CSV inside),
/// .html, .xlsx, .csv, .json. A file of that name is replaced whole or not at all. Errors: InvalidArgument
/// for another ending and for a compact document that is longer than its page; NotFound, ReadOnly, DiskFull,
/// Io. PDF and HTML need a QApplication, offscreen will do.
Result<void> writeReport(const ReportDocument& document, const ReportTables& tables, const QString& path);

}
