// SPDX-License-Identifier: MIT
#include "ui/report/pdfreport.h"

#include "core/exchange/wholefile.h"
#include "ui/report/reportpages.h"

#include <QBuffer>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>

namespace cradlepost {

namespace {
constexpr int resolution = 1200; ///< dots an inch: the grid that curves and letters lie on

void setUp(QPdfWriter& writer, const ReportDocument& document)
{
    writer.setResolution(resolution);
    writer.setPageLayout(
        QPageLayout(QPageSize(QPageSize::A4), QPageLayout::Portrait, QMarginsF(), QPageLayout::Millimeter));
    writer.setCreator(QStringLiteral("Cradlepost"));
    writer.setTitle(QStringList{document.title, document.place, document.span}.join(QStringLiteral(" · ")));
}

Error tooLong(double millimetres)
{
    return {.code = ErrorCode::InvalidArgument,
        .message
        = "the page is " + std::to_string(static_cast<int>(millimetres) + 1) + " mm too long for one sheet",
        .hint = {}};
}
}

Result<QByteArray> pdfOf(const ReportDocument& document, const std::vector<PdfAttachment>& attachments)
{
    const ReportPages pages(document);
    if (document.compact && pages.count() > 1)
        return tl::unexpected(tooLong(pages.millimetresTooLong()));
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    setUp(writer, document);
    for (const PdfAttachment& attachment : attachments)
        writer.addFileAttachment(attachment.name, attachment.content, attachment.type);
    QPainter painter(&writer);
    const double scale = resolution / pages.paper().unitsPerInch();
    for (int page = 0; page < pages.count(); ++page) {
        if (page > 0)
            writer.newPage();
        painter.resetTransform();
        painter.scale(scale, scale);
        pages.paint(painter, page);
    }
    painter.end();
    return bytes;
}

Result<void> writePdf(
    const ReportDocument& document, const std::vector<PdfAttachment>& attachments, const QString& path)
{
    const auto bytes = pdfOf(document, attachments);
    if (!bytes)
        return tl::unexpected(bytes.error());
    return writeWholeFile(path.toStdString(), {bytes->constData(), static_cast<std::size_t>(bytes->size())});
}

}
