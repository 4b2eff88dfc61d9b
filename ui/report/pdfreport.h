// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "ui/report/reportdocument.h"

#include <QByteArray>

namespace cradlepost {

/// A file that lies inside the PDF: letters of some scripts cannot be copied out of a PDF's text.
struct PdfAttachment
{
    QString name; ///< "figures.csv"
    QByteArray content;
    QString type; ///< "text/csv"
};

/// A4, the answer first, charts as vectors, fonts embedded, always the light theme. Fails with
/// InvalidArgument when a compact document is longer than its page; the message says by how much.
Result<QByteArray> pdfOf(const ReportDocument& document, const std::vector<PdfAttachment>& attachments);

/// The same as a file, whole or not at all. Errors also as writeWholeFile.
Result<void> writePdf(
    const ReportDocument& document, const std::vector<PdfAttachment>& attachments, const QString& path);

}
