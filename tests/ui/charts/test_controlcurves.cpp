// SPDX-License-Identifier: MIT
#include "tests/ui/charts/samplecharts.h"
#include "ui/charts/controlcurves.h"
#include "ui/charts/controldrawing.h"
#include "ui/theme/theme.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {
ControlPoint at(double value, double reach, int phase = 0, bool inSpan = true)
{
    return {.value = value,
        .limits = ControlLimits{.centre = 0.5, .low = 0.5 - reach, .high = 0.5 + reach},
        .phase = phase,
        .inSpan = inSpan};
}

std::vector<Curve> curvesOf(const ControlSeries& series, const QColor& colour, const Theme& theme)
{
    std::vector<Curve> kept;
    for (const Curve& curve : controlCurves({&series}, theme)) {
        if (curve.colour == colour)
            kept.push_back(curve);
    }
    return kept;
}

/// Paints once, so that the curves are set.
}

TEST_CASE("limits that vary with n are steps, half a period to each side")
{
    const Theme theme = makeTheme(Scheme::Light);
    const ControlSeries series{.points = {at(0.5, 0.1), at(0.5, 0.2), at(0.5, 0.1)}};
    const auto limits = curvesOf(series, theme.roles.inkHint, theme);
    REQUIRE(limits.size() == 2);
    CHECK(limits[1].points
        == QList<QPointF>{{-0.5, 0.6}, {0.5, 0.6}, {0.5, 0.7}, {1.5, 0.7}, {1.5, 0.6}, {2.5, 0.6}});
    CHECK(limits[1].style == Qt::DashLine);
}

TEST_CASE("centre line and limits break where a phase begins")
{
    const Theme theme = makeTheme(Scheme::Light);
    const ControlSeries series{.points = {at(0.5, 0.1), at(0.5, 0.1), at(0.5, 0.1, 1)}};
    const auto centres = curvesOf(series, theme.roles.ink, theme);
    REQUIRE(centres.size() == 2);
    CHECK(centres[0].points.back().x() == doctest::Approx(1.5));
    CHECK(centres[1].points.front().x() == doctest::Approx(1.5));
}

TEST_CASE("the line has a gap where there is no data and is quiet before the span")
{
    const Theme theme = makeTheme(Scheme::Light);
    ControlSeries series{.points
        = {at(0.1, 0.1, 0, false), at(0.2, 0.1, 0, false), at(0.3, 0.1), {}, at(0.4, 0.1), at(0.5, 0.1)}};
    const auto strong = curvesOf(series, theme.roles.accent, theme);
    REQUIRE(strong.size() == 2);
    CHECK(strong[0].points == QList<QPointF>{{2, 0.3}});
    CHECK(strong[1].points == QList<QPointF>{{4, 0.4}, {5, 0.5}});
    const auto quiet = curvesOf(series, theme.roles.edge, theme);
    REQUIRE(quiet.size() == 1);
    CHECK(quiet[0].points == QList<QPointF>{{0, 0.1}, {1, 0.2}, {2, 0.3}}); // leads up to the span
}

TEST_CASE("two series are told apart without colour")
{
    const Theme theme = makeTheme(Scheme::Light);
    const ControlSeries one{.points = {at(0.1, 0.1), at(0.2, 0.1)}};
    const ControlSeries other{.points = {at(0.3, 0.1), at(0.4, 0.1)}};
    const auto curves = controlCurves({&one, &other}, theme);
    CHECK(curves[curves.size() - 2].style == Qt::SolidLine);
    CHECK(curves.back().style == Qt::DashLine);
}

TEST_CASE("points lie from left to right, labels below them do not touch and keep the last one")
{
    const Theme theme = makeTheme(Scheme::Light);
    const ChartContent content = sampleControl();
    ControlDrawing drawing;
    drawing.show(content.figure);
    const InkCache texts;
    const Stage stage{{600, 300}, theme, Qt::LeftToRight, texts};
    const auto boxes = drawing.itemBoxes(stage);
    for (std::size_t i = 1; i < boxes.size(); ++i)
        CHECK(boxes[i].left() > boxes[i - 1].left());
    const auto frames = drawing.frames(stage);
    const auto& labels = frames.front().acrossLabels();
    REQUIRE(labels.size() > 3);
    CHECK(labels.back().index == 25);
    for (std::size_t i = 0; i < labels.size(); ++i) {
        CHECK(labels[i].box.width() >= stage.widthOf(labels[i].text));
        CHECK((i == 0 || labels[i].box.left() > labels[i - 1].box.right()));
    }
}

TEST_CASE("panels of several series are of one height and share their labels below the last one")
{
    const Theme theme = makeTheme(Scheme::Light);
    const ChartContent content = sampleShiftControl();
    ControlDrawing drawing;
    drawing.show(content.figure);
    const InkCache texts;
    const Stage stage{{600, 400}, theme, Qt::LeftToRight, texts};
    const auto frames = drawing.frames(stage);
    REQUIRE(frames.size() == 2);
    CHECK(frames[0].plot().height() == doctest::Approx(frames[1].plot().height()));
    CHECK(frames[0].acrossLabels().empty());
    CHECK_FALSE(frames[1].acrossLabels().empty());
    CHECK(drawing.beside(3, Qt::Key_Down) == 29);
    CHECK(drawing.beside(29, Qt::Key_Up) == 3);
}
