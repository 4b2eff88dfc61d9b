// SPDX-License-Identifier: MIT
#include "ui/charts/histogramdrawing.h"

#include <algorithm>

namespace cradlepost {

namespace {
constexpr double plotHeight = 150.0;
constexpr double gapShare = 0.06; ///< of a bar's width, on each side

/// Bars as one outline that falls to the axis between them.
CurveBand barsOf(const HistogramFigure& figure, bool outside, const QColor& fill)
{
    CurveBand band{.fill = fill};
    for (const HistogramBar& bar : figure.bars) {
        if (bar.outside != outside)
            continue;
        const double gap = (bar.to - bar.from) * gapShare;
        const double foot = figure.counts.from;
        for (const QPointF& corner : {QPointF(bar.from + gap, foot), QPointF(bar.from + gap, bar.count),
                 QPointF(bar.to - gap, bar.count), QPointF(bar.to - gap, foot)})
            band.high << corner;
    }
    for (const QPointF& corner : band.high)
        band.low << QPointF(corner.x(), figure.counts.from);
    return band;
}

/// From the first limit to the last; empty with fewer than two.
CurveBand limitsBand(const HistogramFigure& figure, const QColor& fill)
{
    std::vector<double> limits;
    for (const HistogramGuide& guide : figure.guides) {
        if (guide.kind == HistogramGuide::Kind::Limit)
            limits.push_back(std::clamp(guide.at, figure.values.from, figure.values.to));
    }
    if (limits.size() < 2)
        return {.fill = fill};
    const auto [least, most] = std::minmax_element(limits.begin(), limits.end());
    return {.low = {{*least, figure.counts.from}, {*most, figure.counts.from}},
        .high = {{*least, figure.counts.to}, {*most, figure.counts.to}},
        .fill = fill};
}
}

int HistogramDrawing::itemCount() const { return static_cast<int>(figure().bars.size()); }

QString HistogramDrawing::itemText(int index) const
{
    return figure().bars[static_cast<std::size_t>(index)].text;
}

PlotSurround HistogramDrawing::surround() const
{
    PlotSurround around{.across = figure().values, .up = figure().counts};
    for (const HistogramGuide& guide : figure().guides) {
        const bool limit = guide.kind == HistogramGuide::Kind::Limit;
        around.flags.push_back({guide.at, guide.label, limit ? Qt::DashLine : Qt::SolidLine});
    }
    return around;
}

std::vector<CurveBand> HistogramDrawing::bands(const Roles& roles) const
{
    return {limitsBand(figure(), roles.accentWash), barsOf(figure(), false, roles.accent),
        barsOf(figure(), true, roles.warning)};
}

int HistogramDrawing::leastWidth(const Stage& stage) const
{
    return PlotFrame::leastWidth(stage, surround());
}

int HistogramDrawing::heightFor(int width, const Stage& stage) const
{
    const QMargins margins = PlotFrame::marginsOf(stage, width, surround());
    return margins.top() + margins.bottom() + stage.theme.px(plotHeight);
}

PlotFrame HistogramDrawing::frame(const Stage& stage) const
{
    return {stage, QRect({}, stage.size), surround()};
}

std::vector<QRect> HistogramDrawing::itemBoxes(const Stage& stage) const
{
    const PlotFrame plot = frame(stage);
    std::vector<QRect> boxes;
    for (const HistogramBar& bar : figure().bars) {
        const QRectF box(plot.at(bar.from, figure().counts.to), plot.at(bar.to, figure().counts.from));
        boxes.push_back(box.toRect());
    }
    return boxes;
}

void HistogramDrawing::paint(QPainter& painter, const Stage& stage)
{
    const Pencil pencil(painter, stage);
    const PlotFrame around = frame(stage);
    around.paint(pencil);
    paintCurves(pencil, around, bands(stage.theme.roles), {});
    around.paintFlags(pencil); // over the bars, which are read against the limits
}

}
