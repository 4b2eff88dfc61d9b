// SPDX-License-Identifier: MIT
#include "ui/charts/chartsaving.h"
#include "ui/charts/chartsheet.h"
#include "ui/output/output.h"

#include <algorithm>
#include <cerrno>
#include <QBuffer>
#include <QFileInfo>
#include <QImage>
#include <QPainter>
#include <QSaveFile>

namespace cradlepost {

namespace {
constexpr int sharpness = 2;

tl::unexpected<Error> writeFailure(const QSaveFile& file, int systemError)
{
    const bool full = file.error() == QFileDevice::ResourceError || systemError == ENOSPC
        || systemError == EDQUOT || systemError == EFBIG;
    const bool closed = file.error() == QFileDevice::PermissionsError || systemError == EROFS
        || systemError == EACCES || systemError == EPERM;
    const auto code = full      ? ErrorCode::DiskFull
        : closed                ? ErrorCode::ReadOnly
        : systemError == ENOENT ? ErrorCode::NotFound
                                : ErrorCode::Io;
    return fail(
        code, "cannot write " + file.fileName().toStdString() + ": " + file.errorString().toStdString());
}

Result<void> writeWhole(const QString& path, const QByteArray& bytes)
{
    QSaveFile file(path);
    errno = 0;
    if (!file.open(QIODevice::WriteOnly))
        return writeFailure(file, errno);
    if (file.write(bytes) != bytes.size() || !file.flush() || !file.commit())
        return writeFailure(file, errno);
    return {};
}

/// The sheet with its padding, at the origin.
struct Picture
{
    const ChartContent& content;
    const Theme& theme;
    Qt::LayoutDirection direction;
    int padding;
    QSize size;

    void paint(QPainter& painter) const
    {
        painter.fillRect(QRect({}, size), theme.roles.sheet);
        const QRect inner = QRect({}, size).adjusted(padding, padding, -padding, -padding);
        paintChartSheet(painter, inner, content, theme, direction);
    }
};

Picture pictureOf(const ChartContent& content, int width, const Theme& theme, Qt::LayoutDirection direction)
{
    const int padding = theme.space(Space::Apart);
    const int least = chartLeastWidth(content.figure, theme, direction) + 2 * padding;
    const int wide = std::max(width, least);
    const int height = chartSheetHeight(content, wide - 2 * padding, theme, direction) + 2 * padding;
    return {content, theme, direction, padding, {wide, height}};
}

QByteArray pngOf(const Picture& picture)
{
    QImage image(picture.size * sharpness, QImage::Format_ARGB32_Premultiplied);
    image.setDevicePixelRatio(sharpness);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    picture.paint(painter);
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    image.save(&buffer, "PNG");
    return bytes;
}

Result<QByteArray> svgOf(const Picture& picture)
{
    const auto to = output();
    if (!to)
        return tl::unexpected(to.error());
    return (*to)->svg({.size = picture.size, .title = picture.content.title, .description = picture.content.smallPrint},
        [&](QPainter& painter) { picture.paint(painter); });
}
}

Result<void> saveChart(const ChartContent& content, const QString& path, int width, const Theme& theme,
    Qt::LayoutDirection direction)
{
    const QString ending = QFileInfo(path).suffix().toLower();
    if (ending == QLatin1String("csv"))
        return writeWhole(path, csvOf(content.table));
    if (ending == QLatin1String("png"))
        return writeWhole(path, pngOf(pictureOf(content, width, theme, direction)));
    if (ending == QLatin1String("svg"))
        return svgOf(pictureOf(content, width, theme, direction)).and_then([&](const QByteArray& bytes) {
            return writeWhole(path, bytes);
        });
    return fail(
        ErrorCode::InvalidArgument, "a chart is saved as .png, .svg or .csv, not as " + path.toStdString());
}

}
