// SPDX-License-Identifier: MIT
#include "tests/ui/widgets/scenery.h"
#include "ui/widgets/outcomemark.h"

#include <doctest/doctest.h>
#include <set>

using namespace cradlepost;

namespace {
/// The mark in black on white, so that only its shape is left, at the size of the strip.
QImage shapeOf(Mark mark, int side)
{
    Roles black;
    black.accent = black.warning = black.amber = black.inkSoft = black.inkHint = Qt::black;
    const QImage image = markPixmap(mark, side, 1.0, black).toImage();
    return image.convertToFormat(QImage::Format_Alpha8);
}

double inkShare(const QImage& shape)
{
    double sum = 0.0;
    for (int y = 0; y < shape.height(); ++y) {
        for (int x = 0; x < shape.width(); ++x)
            sum += shape.pixelColor(x, y).alphaF();
    }
    return sum / (shape.width() * shape.height());
}

/// Mean difference of two shapes, 0 to 1.
double apart(const QImage& one, const QImage& other)
{
    double sum = 0.0;
    for (int y = 0; y < one.height(); ++y) {
        for (int x = 0; x < one.width(); ++x)
            sum += std::abs(one.pixelColor(x, y).alphaF() - other.pixelColor(x, y).alphaF());
    }
    return sum / (one.width() * one.height());
}
}

TEST_CASE("the six marks differ in shape alone, also at their smallest")
{
    for (const int side : {13, 15, 32}) {
        for (const Mark one : allMarks) {
            CHECK(inkShare(shapeOf(one, side)) > 0.05);
            for (const Mark other : allMarks) {
                if (one != other)
                    CHECK(apart(shapeOf(one, side), shapeOf(other, side)) > 0.06);
            }
        }
    }
}

TEST_CASE("each mark has a word of its own, and the widget says it")
{
    std::set<QString> words;
    for (const Mark mark : allMarks) {
        const OutcomeMark widget(mark);
        CHECK_FALSE(OutcomeMark::word(mark).isEmpty());
        CHECK(widget.accessibleName() == OutcomeMark::word(mark));
        words.insert(OutcomeMark::word(mark));
    }
    CHECK(words.size() == std::size(allMarks));
    OutcomeMark widget(Mark::Met);
    widget.setMark(Mark::Gap);
    CHECK(widget.accessibleName() == OutcomeMark::word(Mark::Gap));
}

TEST_CASE("a mark grows with the text and is sharp on dense screens")
{
    const Scenery twice(2.0);
    CHECK(OutcomeMark(Mark::Met).sizeHint() == QSize(32, 32));
    const QPixmap dense = markPixmap(Mark::Met, 16, 2.0, lightRoles());
    CHECK(dense.size() == QSize(32, 32));
    CHECK(dense.deviceIndependentSize() == QSizeF(16, 16));
    CHECK_FALSE(markIcon(Mark::Late, 16, lightRoles()).isNull());
}
