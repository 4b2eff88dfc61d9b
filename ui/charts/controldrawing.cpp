// SPDX-License-Identifier: MIT
#include "ui/charts/controldrawing.h"
#include "ui/charts/controlcurves.h"

#include <algorithm>

namespace cradlepost {

namespace {
constexpr double plotHeight = 170.0;
constexpr double panelHeight = 96.0;

/// Where a series' name goes: beside its last point that has data.
double lastValue(const ControlSeries& series)
{
    for (auto point = series.points.rbegin(); point != series.points.rend(); ++point) {
        if (point->value)
            return *point->value;
    }
    return 0.0;
}

void paintPoints(const Pencil& pencil, const PlotFrame& frame, const ControlSeries& series)
{
    const Roles& roles = pencil.roles();
    const Theme& theme = pencil.stage().theme;
    for (std::size_t i = 0; i < series.points.size(); ++i) {
        const ControlPoint& point = series.points[i];
        if (!point.value)
            continue;
        const QPointF at = frame.at(static_cast<double>(i), *point.value);
        const PointShape shape = point.signal
            ? (point.paper ? PointShape::HollowDiamond : PointShape::Diamond)
            : (point.paper ? PointShape::Ring : PointShape::Disc);
        const QColor colour = point.signal ? roles.warning : point.inSpan ? roles.accent : roles.edge;
        pencil.point(at, shape, theme.px(point.inSpan || point.paper ? 8 : 6), colour);
    }
}
}

bool ControlDrawing::isApart() const
{
    return figure().arrangement == ControlFigure::Arrangement::Apart && figure().series.size() > 1;
}

std::size_t ControlDrawing::panelCount() const { return isApart() ? figure().series.size() : 1; }

std::size_t ControlDrawing::periods() const
{
    std::size_t most = 0;
    for (const ControlSeries& series : figure().series)
        most = std::max(most, series.points.size());
    return most;
}

int ControlDrawing::itemCount() const { return static_cast<int>(figure().series.size() * periods()); }

QString ControlDrawing::itemText(int index) const
{
    const auto at = static_cast<std::size_t>(index);
    const ControlSeries& series = figure().series[at / periods()];
    const std::size_t point = at % periods();
    return point < series.points.size() ? series.points[point].text : QString();
}

int ControlDrawing::beside(int index, Qt::Key key) const
{
    const int count = static_cast<int>(periods());
    if (count == 0 || index < 0)
        return index;
    const int period = index % count;
    switch (key) {
    case Qt::Key_Left:
        return period > 0 ? index - 1 : index;
    case Qt::Key_Right:
        return period + 1 < count ? index + 1 : index;
    case Qt::Key_Up:
        return index >= count ? index - count : index;
    case Qt::Key_Down:
        return index + count < itemCount() ? index + count : index;
    default:
        return index;
    }
}

std::vector<const ControlSeries*> ControlDrawing::seriesOf(std::size_t panel) const
{
    if (isApart())
        return {&figure().series[panel]};
    std::vector<const ControlSeries*> all;
    for (const ControlSeries& series : figure().series)
        all.push_back(&series);
    return all;
}

PlotSurround ControlDrawing::surround(std::size_t panel) const
{
    PlotSurround around{.up = figure().values, .keepLastLabel = true};
    around.across.title = figure().periods;
    around.across.from = -0.5;
    around.across.to = static_cast<double>(periods()) - 0.5;
    if (!figure().series.empty()) {
        const auto& points = figure().series.front().points;
        for (std::size_t i = 0; i < points.size(); ++i)
            around.across.ticks.push_back({.at = static_cast<double>(i), .label = points[i].label});
    }
    for (const ControlMark& mark : figure().marks)
        around.flags.push_back({.at = mark.before - 0.5, .label = panel == 0 ? mark.label : QString()});
    if (isApart()) {
        const QString& name = figure().series[panel].name;
        const QString& unit = figure().values.title;
        around.up.title = panel > 0 || unit.isEmpty() ? name : QString(name % QStringLiteral(" · ") % unit);
        around.hidesAcross = panel + 1 < panelCount();
    } else if (figure().series.size() > 1) {
        for (const ControlSeries& series : figure().series)
            around.endNames.push_back(series.name);
    }
    return around;
}

int ControlDrawing::leastWidth(const Stage& stage) const { return PlotFrame::leastWidth(stage, surround(0)); }

int ControlDrawing::heightFor(int width, const Stage& stage) const
{
    int height = 0;
    for (std::size_t panel = 0; panel < panelCount(); ++panel) {
        const QMargins margins = PlotFrame::marginsOf(stage, width, surround(panel));
        height += margins.top() + margins.bottom() + stage.theme.px(isApart() ? panelHeight : plotHeight);
    }
    return height + stage.theme.space(Space::Near) * static_cast<int>(panelCount() - 1);
}

std::vector<PlotFrame> ControlDrawing::frames(const Stage& stage) const
{
    const int count = static_cast<int>(panelCount());
    const int gap = stage.theme.space(Space::Near);
    std::vector<int> around;
    int fixed = gap * (count - 1);
    for (std::size_t panel = 0; panel < panelCount(); ++panel) {
        const QMargins margins = PlotFrame::marginsOf(stage, stage.size.width(), surround(panel));
        around.push_back(margins.top() + margins.bottom());
        fixed += around.back();
    }
    const int plot = std::max(1, (stage.size.height() - fixed) / count); // panels on one scale are one height
    std::vector<PlotFrame> frames;
    int top = 0;
    for (std::size_t panel = 0; panel < panelCount(); ++panel) {
        frames.emplace_back(stage, QRect(0, top, stage.size.width(), around[panel] + plot), surround(panel));
        top += around[panel] + plot + gap;
    }
    return frames;
}

std::vector<QRect> ControlDrawing::itemBoxes(const Stage& stage) const
{
    const auto panels = frames(stage);
    std::vector<QRect> boxes;
    for (std::size_t s = 0; s < figure().series.size(); ++s) {
        const PlotFrame& frame = panels[isApart() ? s : 0];
        const auto& points = figure().series[s].points;
        const int side = stage.theme.px(16);
        for (std::size_t i = 0; i < periods(); ++i) {
            const bool drawn = i < points.size() && points[i].value;
            const double y = drawn ? *points[i].value : figure().values.from;
            const QPoint at = frame.at(static_cast<double>(i), y).toPoint();
            boxes.emplace_back(at.x() - side / 2, at.y() - side / 2, side, side);
        }
    }
    return boxes;
}

void ControlDrawing::paint(QPainter& painter, const Stage& stage)
{
    const Pencil pencil(painter, stage);
    const auto panels = frames(stage);
    for (std::size_t panel = 0; panel < panels.size(); ++panel)
        paintPanel(pencil, panels[panel], panel);
}

void ControlDrawing::paintPanel(const Pencil& pencil, const PlotFrame& frame, std::size_t panel) const
{
    const auto series = seriesOf(panel);
    frame.paint(pencil);
    frame.paintFlags(pencil);
    paintCurves(pencil, frame, {}, controlCurves(series, pencil.stage().theme));
    std::vector<double> ends;
    for (const ControlSeries* one : series) {
        paintPoints(pencil, frame, *one);
        ends.push_back(lastValue(*one));
    }
    frame.paintEndNames(pencil, ends);
}

}
