// SPDX-License-Identifier: MIT
#include "tests/ui/charts/samplecharts.h"
#include "ui/charts/barsdrawing.h"
#include "ui/charts/calendardrawing.h"
#include "ui/charts/funneldrawing.h"
#include "ui/charts/mapdrawing.h"
#include "ui/charts/pencil.h"
#include "ui/charts/survivaldrawing.h"

#include <cmath>
#include <doctest/doctest.h>
#include <QImage>
#include <QPainter>
#include <set>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {
/// A mark alone on a sheet, as the pixels that are not the sheet.
QImage markImage(const CalendarShift& shift)
{
    QImage image(32, 36, QImage::Format_RGB32);
    image.fill(lightRoles().sheet);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    const Theme theme = makeTheme(Scheme::Light);
    const InkCache texts;
    const Stage stage{image.size(), theme, Qt::LeftToRight, texts};
    paintShiftMark(Pencil(painter, stage), QRectF(2, 2, 28, 28), shift);
    return image;
}

/// Black where there is a mark, in whatever colour.
int inked(const QImage& image, const QPoint& at) { return qGray(image.pixel(at)) < 200 ? 1 : 0; }

int ring(const QImage& image)
{
    int count = 0;
    for (int step = 0; step < 64; ++step) {
        const double angle = step * 6.2831853 / 64;
        const double radius = 28 * 0.27;
        count
            += inked(image, QPointF(16 + radius * std::cos(angle), 16 + radius * std::sin(angle)).toPoint());
    }
    return count;
}
}

TEST_CASE("every number on the map can be read on its shade, in both schemes")
{
    for (const Roles& roles : {lightRoles(), darkRoles()}) {
        for (int percent = 0; percent <= 100; percent += 5) {
            CAPTURE(percent);
            CHECK(contrastRatio(roles.ink, mapShade(roles, percent / 100.0)) >= 4.5);
        }
        CHECK(mapShade(roles, 0.0) == roles.sheet);
        CHECK(mapShade(roles, 7.0) == mapShade(roles, 1.0));
    }
}

TEST_CASE("a shift from paper is a closed ring, a missing one a row of dots, a done one a disc")
{
    const QImage paper = markImage({ShiftDone::Paper});
    const QImage missing = markImage({ShiftDone::Missing});
    const QImage inTime = markImage({ShiftDone::InTime});
    CHECK(inked(paper, {16, 16}) == 0);
    CHECK(inked(missing, {16, 16}) == 0);
    CHECK(inked(inTime, {16, 16}) == 1);
    CHECK(ring(paper) == 64);
    CHECK(ring(missing) < 45);
    CHECK(markImage({ShiftDone::InTime, true}) != inTime);
    CHECK(markImage({ShiftDone::NotDue, true}) == markImage({ShiftDone::NotDue}));
}

TEST_CASE("bars stand beside their names, below them when the room is narrow")
{
    const Theme theme = makeTheme(Scheme::Light);
    const InkCache texts;
    const ChartContent content = sampleBars(Wording::Hindi);
    BarsDrawing drawing;
    drawing.show(content.figure);
    const Stage stage{{700, 0}, theme, Qt::LeftToRight, texts};
    for (const auto& row : drawing.rows(stage, 700)) {
        CHECK(row.bar.left() > row.name.right());
        CHECK(row.text.left() > row.bar.right());
        CHECK(row.cumulated.left() > row.text.right());
    }
    const int least = drawing.leastWidth(stage);
    for (const auto& row : drawing.rows(stage, least)) {
        CHECK(row.bar.top() > row.name.bottom() - 2);
        CHECK(row.bar.width() > 20);
        CHECK(row.text.right() < least);
    }
}

TEST_CASE("units outside the limits keep their names, and no name lies on a point")
{
    const Theme theme = makeTheme(Scheme::Light);
    const InkCache texts;
    ChartContent content = sampleFunnel();
    auto& figure = std::get<FunnelFigure>(content.figure);
    for (int i = 0; i < 12; ++i) // a crowd
        figure.points.push_back({.n = 60.0 + i, .value = 0.8, .name = QStringLiteral("Crowd %1").arg(i)});
    FunnelDrawing drawing;
    drawing.show(content.figure);
    const Stage stage{{500, 400}, theme, Qt::LeftToRight, texts};
    const auto frame = drawing.frame(stage);
    const auto names = drawing.names(stage, frame);
    std::set<std::size_t> named;
    for (const PlacedText& name : names)
        named.insert(name.index);
    for (std::size_t i = 0; i < figure.points.size(); ++i) {
        if (figure.points[i].outside)
            CHECK(named.contains(i));
    }
    CHECK(names.size() < figure.points.size());
    for (const PlacedText& name : names) {
        for (const FunnelPoint& point : figure.points)
            CHECK_FALSE(name.box.contains(frame.at(point.n, point.value).toPoint()));
    }
}

TEST_CASE("numbers at risk stand below their own tick")
{
    const Theme theme = makeTheme(Scheme::Light);
    const InkCache texts;
    const ChartContent content = sampleSurvival();
    SurvivalDrawing drawing;
    drawing.show(content.figure);
    const Stage stage{{600, 420}, theme, Qt::LeftToRight, texts};
    const auto frame = drawing.frame(stage);
    const auto& ticks = std::get<SurvivalFigure>(content.figure).times.ticks;
    REQUIRE_FALSE(frame.acrossLabels().empty());
    for (const PlacedText& label : frame.acrossLabels()) {
        const double tick = frame.at(ticks[label.index].at, 0.0).x();
        CHECK(std::abs(label.box.center().x() - tick) < label.box.width());
    }
    const auto samples = frame.sampleBoxes();
    REQUIRE(samples.size() == 3);
    for (std::size_t i = 0; i < samples.size(); ++i) {
        CHECK_FALSE(samples[i].isEmpty());
        CHECK(samples[i].right() < frame.plot().left());
        CHECK(samples[i].top() > frame.acrossLabels().front().box.bottom());
        if (i > 0)
            CHECK(samples[i].top() > samples[i - 1].bottom());
    }
}

TEST_CASE("curves without rows below are named at their ends, and names at one height move apart")
{
    const Theme theme = makeTheme(Scheme::Light);
    const InkCache texts;
    const Stage stage{{600, 420}, theme, Qt::LeftToRight, texts};
    auto figure = std::get<SurvivalFigure>(sampleSurvival().figure);
    figure.atRiskTitle.clear();
    const ChartFigure shown = figure; // the drawing looks at it
    SurvivalDrawing drawing;
    drawing.show(shown);
    const auto names = drawing.frame(stage).endNames({0.5, 0.5, 0.5});
    REQUIRE(names.size() == 3);
    for (std::size_t i = 0; i < names.size(); ++i) {
        for (std::size_t j = i + 1; j < names.size(); ++j)
            CHECK_FALSE(names[i].box.intersects(names[j].box));
    }
}
