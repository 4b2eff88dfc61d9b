// SPDX-License-Identifier: MIT
#include "tests/support/qstringprint.h"
#include "tests/ui/widgets/scenery.h"
#include "ui/widgets/inktext.h"

#include <doctest/doctest.h>
#include <QFontMetrics>
#include <QPainter>

using namespace cradlepost;

namespace {
QFont body() { return textFont(TextRole::Body, TextWeight::Regular, 1.0); }

/// Columns of the leftmost and the rightmost pixel that are not white.
std::pair<int, int> inked(const InkText& text, int width)
{
    QImage image(width, 200, QImage::Format_RGB32);
    image.fill(Qt::white);
    {
        QPainter painter(&image);
        painter.setPen(Qt::black);
        text.draw(painter, image.rect());
    }
    int left = width;
    int right = -1;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < width; ++x) {
            if (image.pixelColor(x, y) != QColor(Qt::white)) {
                left = std::min(left, x);
                right = std::max(right, x);
            }
        }
    }
    return {left, right};
}
}

TEST_CASE("a text that fits takes one line, and more lines where it does not")
{
    const InkText text(QStringLiteral("the warmer has been on"), body(), Qt::LeftToRight);
    const int line = text.height(1000);
    CHECK(line >= QFontMetrics(body()).height() - 1);
    CHECK(text.height(text.naturalWidth()) == line);
    CHECK(text.height(text.naturalWidth() - 4) >= 2 * line);
    CHECK(text.height(1000) == line);
    CHECK(text.widestWord() < text.naturalWidth() / 2);
}

TEST_CASE("bold spans are wider than the same words plain and leave no stars")
{
    const QString marked = QStringLiteral("on for **18 of 30 minutes**.");
    CHECK(plainText(marked) == QStringLiteral("on for 18 of 30 minutes."));
    const InkText bold(marked, body(), Qt::LeftToRight);
    const InkText plain(plainText(marked), body(), Qt::LeftToRight);
    const InkText stars(QStringLiteral("on for ##18 of 30 minutes##."), body(), Qt::LeftToRight);
    CHECK(bold.naturalWidth() > plain.naturalWidth());
    CHECK(bold.naturalWidth() < stars.naturalWidth());
}

TEST_CASE("a line break in the text is kept")
{
    const InkText two(QStringLiteral("one\ntwo"), body(), Qt::LeftToRight);
    const InkText one(QStringLiteral("one"), body(), Qt::LeftToRight);
    CHECK(two.height(1000) >= 2 * one.height(1000));
}

TEST_CASE("text begins at the left, or at the right in a mirrored window, on one line or on several")
{
    const QString words = QStringLiteral("the warmer has been on for a while");
    for (const int width : {600, 120}) {
        const auto [left, right] = inked(InkText(words, body(), Qt::LeftToRight), width);
        CHECK(left <= 3);
        const auto [leftMirrored, rightMirrored] = inked(InkText(words, body(), Qt::RightToLeft), width);
        CHECK(rightMirrored >= width - 5);
        CHECK(right >= 0);
        CHECK(leftMirrored < width);
    }
    const auto [left, right] = inked(InkText(words, body(), Qt::LeftToRight, Qt::AlignHCenter), 600);
    CHECK(std::abs(left - (599 - right)) <= 3);
}

TEST_CASE("initials and figures keep their order in a mirrored window")
{
    CHECK(textDirection(QStringLiteral("A. T."), Qt::RightToLeft) == Qt::LeftToRight);
    CHECK(textDirection(QString::fromUtf8("26.4 °C"), Qt::RightToLeft) == Qt::LeftToRight);
    CHECK(textDirection(QString::fromUtf8("جاهز"), Qt::RightToLeft) == Qt::RightToLeft);
    CHECK(textDirection(QString::fromUtf8("A. T. جاهز"), Qt::RightToLeft) == Qt::RightToLeft);
    CHECK(textDirection(QStringLiteral("19:54"), Qt::RightToLeft) == Qt::RightToLeft);
    CHECK(textDirection(QString::fromUtf8("جاهز"), Qt::LeftToRight) == Qt::RightToLeft);
    CHECK(textDirection(QStringLiteral("Ready"), Qt::LeftToRight) == Qt::LeftToRight);
}

TEST_CASE("an empty text takes no room")
{
    const InkText none(QString(), body(), Qt::LeftToRight);
    CHECK(none.isEmpty());
    CHECK(none.height(100) == 0);
    CHECK(none.naturalWidth() == 0);
    CHECK(none.widestWord() == 0);
}

TEST_CASE("a cache gives back the text it has shaped and forgets it when cleared")
{
    InkCache cache;
    const InkText& first = cache.text(QStringLiteral("Met"), body(), Qt::LeftToRight);
    CHECK(&cache.text(QStringLiteral("Met"), body(), Qt::LeftToRight) == &first);
    CHECK(&cache.text(QStringLiteral("Met"), body(), Qt::RightToLeft) != &first);
    CHECK(&cache.text(QStringLiteral("Gap"), body(), Qt::LeftToRight) != &first);
    cache.clear();
    CHECK_FALSE(cache.text(QStringLiteral("Met"), body(), Qt::LeftToRight).isEmpty());
}
