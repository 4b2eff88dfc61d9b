// SPDX-License-Identifier: MIT
#include "ui/charts/curves.h"

#include "ui/theme/theme.h"

#include <doctest/doctest.h>
#include <QImage>
#include <QPainter>

using namespace cradlepost;

namespace {
const QColor paper(Qt::white);
const QColor ink(Qt::black);
const QColor fill(200, 0, 0);

/// A plot of 0 to 10 both ways with what is painted in it.
struct Painted
{
    Painted(const std::vector<CurveBand>& bands, const std::vector<Curve>& curves,
        Qt::LayoutDirection direction = Qt::LeftToRight)
        : stage {{400, 240}, theme, direction, texts}
        , frame(stage, QRect({}, stage.size),
              {.across = {.from = 0.0, .to = 10.0}, .up = {.from = 0.0, .to = 10.0}})
        , image(stage.size, QImage::Format_RGB32)
    {
        image.fill(paper);
        QPainter painter(&image);
        painter.setBrush(Qt::green); // what another drawing left
        paintCurves(Pencil(painter, stage), frame, bands, curves);
    }

    QColor at(double x, double y) const { return image.pixelColor(frame.at(x, y).toPoint()); }
    bool has(const QColor& colour, const QRect& room) const
    {
        for (int y = room.top(); y <= room.bottom(); ++y) {
            for (int x = room.left(); x <= room.right(); ++x) {
                if (image.rect().contains(x, y) && image.pixelColor(x, y) == colour)
                    return true;
            }
        }
        return false;
    }

    const Theme theme = makeTheme(Scheme::Light);
    const InkCache texts;
    const Stage stage;
    const PlotFrame frame;
    QImage image;
};

const Curve level {.points = {{1, 5}, {4, 5}}, .colour = ink, .width = 3.0};
}

TEST_CASE("a curve lies where the frame puts its points")
{
    const Painted plot({}, {level});
    CHECK(plot.at(1.1, 5) == ink);
    CHECK(plot.at(3.9, 5) == ink);
    CHECK(plot.at(0.8, 5) == paper);
    CHECK(plot.at(4.2, 5) == paper);
    CHECK(plot.at(2, 5.4) == paper);
}

TEST_CASE("a mirrored plot is the mirror image")
{
    const Painted plain({}, {level});
    const Painted mirrored({}, {level}, Qt::RightToLeft);
    const QRectF inner = plain.frame.plot();
    const int middle = plain.stage.size.width() / 2;
    const QRect left(0, 0, middle, plain.stage.size.height());
    const QRect right(middle + 1, 0, middle, plain.stage.size.height());
    REQUIRE(inner.width() > 100);
    CHECK(plain.has(ink, left));
    CHECK_FALSE(plain.has(ink, right));
    CHECK(mirrored.has(ink, right));
    CHECK_FALSE(mirrored.has(ink, left));
}

TEST_CASE("a dashed curve has gaps and is not filled with the brush that the painter came with")
{
    const Curve peak {.points = {{0, 0}, {5, 10}, {10, 0}}, .colour = ink, .width = 2.0, .style = Qt::DashLine};
    const Painted plot({}, {peak});
    CHECK(plot.at(5, 4) == paper);
    int painted = 0;
    for (int i = 0; i <= 400; ++i)
        painted += plot.at(i * 5.0 / 400, i * 10.0 / 400) == paper ? 0 : 1;
    CHECK(painted > 100);
    CHECK(painted < 380);
}

TEST_CASE("a band fills what lies between its curves, under the lines")
{
    const CurveBand band {.low = {{0, 2}, {10, 2}}, .high = {{0, 8}, {10, 8}}, .fill = fill};
    const Painted plot({band}, {level});
    CHECK(plot.at(7, 5) == fill);
    CHECK(plot.at(7, 2.4) == fill);
    CHECK(plot.at(7, 1.5) == paper);
    CHECK(plot.at(7, 8.5) == paper);
    CHECK(plot.at(2, 5) == ink);
}

TEST_CASE("what reaches far beside the plot is clipped, marks at its edge are not")
{
    const Curve high {.points = {{2, 12}, {8, 12}}, .colour = ink, .width = 3.0};
    const Curve across {.points = {{5, -30}, {5, 30}}, .colour = ink, .width = 3.0};
    const Painted far({}, {high});
    CHECK_FALSE(far.has(ink, far.image.rect()));
    const Painted cut({}, {across});
    const double room = cut.frame.markRoom();
    const QRect seen = cut.frame.plot().adjusted(-room, -room, room, room).toAlignedRect();
    CHECK(cut.at(5, 10) == ink);
    CHECK(cut.at(5, 0) == ink);
    CHECK_FALSE(cut.has(ink, QRect(0, seen.bottom() + 2, 400, 240)));
}
