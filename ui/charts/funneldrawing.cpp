// SPDX-License-Identifier: MIT
#include "ui/charts/funneldrawing.h"

#include <algorithm>

namespace cradlepost {

namespace {
constexpr double plotHeight = 300.0;

Curve limitCurve(const std::vector<QPointF>& points, bool outer, const Theme& theme)
{
    return {.points = QList<QPointF>(points.begin(), points.end()),
        .colour = theme.roles.inkHint,
        .width = 1.2 * theme.px(1),
        .style = outer ? Qt::SolidLine : Qt::DashLine};
}

QRect boxAround(const QPointF& at, int side)
{
    const QPoint middle = at.toPoint();
    return {middle.x() - side / 2, middle.y() - side / 2, side, side};
}

/// Beside a point on either side, above, below.
std::vector<QRect> placesBeside(const QRect& point, const QSize& size)
{
    const int middle = point.center().y() - size.height() / 2;
    const int centre = point.center().x() - size.width() / 2;
    return {QRect({point.right() + 3, middle}, size), QRect({point.left() - 2 - size.width(), middle}, size),
        QRect({centre, point.top() - 1 - size.height()}, size), QRect({centre, point.bottom() + 2}, size)};
}
}

int FunnelDrawing::itemCount() const { return static_cast<int>(figure().points.size()); }

QString FunnelDrawing::itemText(int index) const
{
    return figure().points[static_cast<std::size_t>(index)].text;
}

PlotSurround FunnelDrawing::surround() const
{
    PlotSurround around{.across = figure().numbers, .up = figure().values};
    for (const FunnelLimit& limit : figure().limits)
        around.endNames.push_back(limit.label);
    around.endNames.push_back(figure().centre ? figure().centreLabel : QString());
    return around;
}

std::vector<Curve> FunnelDrawing::curves(const Theme& theme) const
{
    std::vector<Curve> curves;
    for (const FunnelLimit& limit : figure().limits) {
        curves.push_back(limitCurve(limit.low, limit.outer, theme));
        curves.push_back(limitCurve(limit.high, limit.outer, theme));
    }
    if (figure().centre)
        curves.push_back(
            {.points = {{figure().numbers.from, *figure().centre}, {figure().numbers.to, *figure().centre}},
                .colour = theme.roles.ink,
                .width = 1.4 * theme.px(1)});
    return curves;
}

std::vector<double> FunnelDrawing::ends() const
{
    std::vector<double> ends;
    for (const FunnelLimit& limit : figure().limits)
        ends.push_back(limit.high.empty() ? figure().values.to : limit.high.back().y());
    ends.push_back(figure().centre.value_or(figure().values.to));
    return ends;
}

int FunnelDrawing::leastWidth(const Stage& stage) const { return PlotFrame::leastWidth(stage, surround()); }

int FunnelDrawing::heightFor(int width, const Stage& stage) const
{
    const QMargins margins = PlotFrame::marginsOf(stage, width, surround());
    return margins.top() + margins.bottom() + stage.theme.px(plotHeight);
}

PlotFrame FunnelDrawing::frame(const Stage& stage) const
{
    return {stage, QRect({}, stage.size), surround()};
}

std::vector<QRect> FunnelDrawing::itemBoxes(const Stage& stage) const
{
    const PlotFrame plot = frame(stage);
    std::vector<QRect> boxes;
    for (const FunnelPoint& point : figure().points)
        boxes.push_back(boxAround(plot.at(point.n, point.value), stage.theme.px(16)));
    return boxes;
}

std::vector<PlacedText> FunnelDrawing::names(const Stage& stage, const PlotFrame& frame) const
{
    const auto& points = figure().points;
    std::vector<QRect> taken;
    for (const PlacedText& end : frame.endNames(ends()))
        taken.push_back(end.box);
    const std::size_t first = taken.size();
    for (const FunnelPoint& point : points)
        taken.push_back(boxAround(frame.at(point.n, point.value), stage.theme.px(12)));
    std::vector<std::size_t> order;
    for (const bool outside : {true, false}) {
        for (std::size_t i = 0; i < points.size(); ++i) {
            if (points[i].outside == outside && !points[i].name.isEmpty())
                order.push_back(i);
        }
    }
    const QRect room({}, stage.size);
    std::vector<PlacedText> placed;
    for (const std::size_t i : order) {
        const int width = std::min(stage.widthOf(points[i].name), room.width() / 2);
        const auto places = placesBeside(taken[first + i], {width, stage.heightOf(points[i].name, width)});
        auto free = std::find_if(places.begin(), places.end(), [&](const QRect& place) {
            return room.contains(place) && std::none_of(taken.begin(), taken.end(), [&](const QRect& t) {
                return t.intersects(place);
            });
        });
        if (free == places.end() && points[i].outside)
            free = std::find_if(
                places.begin(), places.end(), [&](const QRect& place) { return room.contains(place); });
        if (free == places.end())
            continue;
        taken.push_back(*free);
        placed.push_back({*free, points[i].name, i});
    }
    return placed;
}

void FunnelDrawing::paint(QPainter& painter, const Stage& stage)
{
    const Pencil pencil(painter, stage);
    const PlotFrame around = frame(stage);
    around.paint(pencil);
    paintCurves(pencil, around, {}, curves(stage.theme));
    around.paintEndNames(pencil, ends());
    paintPoints(pencil, around);
}

void FunnelDrawing::paintPoints(const Pencil& pencil, const PlotFrame& frame) const
{
    const Roles& roles = pencil.roles();
    for (const PlacedText& name : names(pencil.stage(), frame)) {
        pencil.fill(name.box, roles.sheet); // no line strikes a name out
        pencil.write(name.box, name.text, roles.ink);
    }
    for (const FunnelPoint& point : figure().points) {
        const PointShape shape = point.outside ? PointShape::Diamond
            : point.few                        ? PointShape::Ring
                                               : PointShape::Disc;
        pencil.point(frame.at(point.n, point.value), shape, pencil.stage().theme.px(9),
            point.outside ? roles.warning : roles.accent);
    }
}

}
