// SPDX-License-Identifier: MIT
#include "tests/support/readonlyplace.h"
#include "tests/ui/charts/samplecharts.h"
#include "tests/ui/charts/textrecorder.h"
#include "ui/theme/theme.h"

#include <doctest/doctest.h>
#include <QDir>
#include <QFile>
#include <QImage>
#include <QTemporaryDir>
#include <QXmlStreamReader>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {
struct SvgParts
{
    int texts = 0;
    int images = 0;
    int shapes = 0;
    QString words;
    bool sound = false;
};

SvgParts partsOf(const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return {};
    QXmlStreamReader xml(&file);
    SvgParts parts;
    while (!xml.atEnd()) {
        if (xml.readNext() == QXmlStreamReader::StartElement) {
            const auto name = xml.name();
            parts.texts += name == QLatin1String("text") ? 1 : 0;
            parts.images += name == QLatin1String("image") ? 1 : 0;
            parts.shapes += name == QLatin1String("path") || name == QLatin1String("polyline") ? 1 : 0;
        } else if (xml.isCharacters()) {
            parts.words += xml.text();
        }
    }
    parts.sound = !xml.hasError();
    return parts;
}

QByteArray contentOf(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}
}

TEST_CASE("every chart is saved as SVG of shapes and letters, with no picture inside")
{
    const QTemporaryDir folder;
    const Theme theme = makeTheme(Scheme::Light);
    for (const ChartContent& content : sampleCharts()) {
        CAPTURE(content.fileName.toStdString());
        const QString path = folder.filePath(QString(content.fileName % QStringLiteral(".SVG")));
        REQUIRE(saveChart(content, path, 700, theme));
        const SvgParts parts = partsOf(path);
        CHECK(parts.sound);
        CHECK(parts.images == 0);
        CHECK(parts.texts > 5);
        CHECK(parts.shapes > 2);
        CHECK(parts.words.contains(content.title));
        CHECK(parts.words.contains(content.smallPrint));
    }
}

TEST_CASE("a PNG is twice as sharp as the screen and not blank")
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("chart.png"));
    REQUIRE(saveChart(sampleControl(), path, 700, makeTheme(Scheme::Light)));
    const QImage image(path);
    REQUIRE(image.width() == 1400);
    CHECK(image.height() > 400);
    int accent = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x)
            accent += image.pixelColor(x, y) == lightRoles().accent ? 1 : 0;
    }
    CHECK(accent > 500);
}

TEST_CASE("a CSV holds the table behind the chart")
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("chart.csv"));
    const ChartContent content = sampleBars();
    REQUIRE(saveChart(content, path, 700, makeTheme(Scheme::Light)));
    CHECK(contentOf(path) == csvOf(content.table));
}

TEST_CASE("what cannot be saved says why, and leaves what was there")
{
    const QTemporaryDir folder;
    const Theme theme = makeTheme(Scheme::Light);
    const auto wrong = saveChart(sampleBars(), folder.filePath(QStringLiteral("chart.bmp")), 700, theme);
    REQUIRE_FALSE(wrong);
    CHECK(wrong.error().code == ErrorCode::InvalidArgument);
    const auto nowhere = saveChart(sampleBars(), folder.filePath(QStringLiteral("no/chart.csv")), 700, theme);
    REQUIRE_FALSE(nowhere);
    CHECK(nowhere.error().code == ErrorCode::NotFound);
    CHECK(QDir(folder.path()).isEmpty());
}

TEST_CASE("a folder closed to writing is named as such")
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("chart.csv"));
    REQUIRE(saveChart(sampleBars(), path, 700, makeTheme(Scheme::Light)));
    const QByteArray before = contentOf(path);
    const ClosedFolder closed(folder.path().toStdString());
    if (!closed.isClosed()) {
        MESSAGE("this file system cannot close a folder to root");
        return;
    }
    const auto refused = saveChart(sampleShares(), path, 700, makeTheme(Scheme::Light));
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == ErrorCode::ReadOnly);
    CHECK(contentOf(path) == before);
}

TEST_CASE("a full disk is named as such, and half a file is not left behind")
{
    const QTemporaryDir folder;
    const SmallDisk disk(folder.path().toStdString(), 8);
    if (!disk.isThere()) {
        MESSAGE("no small disk may be mounted here");
        return;
    }
    const auto full = saveChart(
        sampleControl(), folder.filePath(QStringLiteral("chart.png")), 700, makeTheme(Scheme::Light));
    REQUIRE_FALSE(full);
    CHECK(full.error().code == ErrorCode::DiskFull);
    CHECK(QDir(folder.path()).isEmpty());
}
