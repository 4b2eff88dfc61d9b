// SPDX-License-Identifier: MIT
#include "ui/charts/survivaldrawing.h"
#include "ui/charts/curves.h"

#include <algorithm>

namespace cradlepost {

namespace {
constexpr double plotHeight = 170.0;
constexpr int mostBands = 3;
constexpr int bandAlpha = 40;

Qt::PenStyle dashOf(std::size_t curve)
{
    return curve == 0 ? Qt::SolidLine : curve == 1 ? Qt::DashLine : Qt::DotLine;
}

QColor colourOf(std::size_t curve, const Roles& roles)
{
    return curve == 0 ? roles.accent : curve == 1 ? roles.ink : roles.inkHint;
}

/// Steps as corners, from (0, first) to the last time that anything was seen.
template <class Value> QList<QPointF> corners(const SurvivalCurve& curve, double first, const Value& value)
{
    QList<QPointF> points{{0.0, first}};
    for (const SurvivalStep& step : curve.steps) {
        points << QPointF(step.time, points.back().y());
        points << QPointF(step.time, value(step));
    }
    points << QPointF(std::max(curve.end, points.back().x()), points.back().y());
    return points;
}

double shareAt(const SurvivalCurve& curve, double time)
{
    double share = 1.0;
    for (const SurvivalStep& step : curve.steps) {
        if (step.time > time)
            break;
        share = step.share;
    }
    return share;
}

std::vector<CurveBand> bandsOf(const SurvivalFigure& figure, const Roles& roles)
{
    std::vector<CurveBand> bands;
    for (std::size_t i = 0; i < figure.curves.size() && i < mostBands; ++i) {
        const SurvivalCurve& curve = figure.curves[i];
        const bool known = std::any_of(curve.steps.begin(), curve.steps.end(),
            [](const SurvivalStep& step) { return step.low && step.high; });
        QColor fill = colourOf(i, roles);
        fill.setAlpha(bandAlpha);
        if (known)
            bands.push_back({
                .low = corners(curve, 1.0, [](const SurvivalStep& s) { return s.low.value_or(s.share); }),
                .high = corners(curve, 1.0, [](const SurvivalStep& s) { return s.high.value_or(s.share); }),
                .fill = fill,
            });
    }
    return bands;
}

std::vector<Curve> curvesOf(const SurvivalFigure& figure, const Theme& theme)
{
    std::vector<Curve> curves;
    for (std::size_t i = 0; i < figure.curves.size(); ++i)
        curves.push_back({
            .points = corners(figure.curves[i], 1.0, [](const SurvivalStep& s) { return s.share; }),
            .colour = colourOf(i, theme.roles),
            .width = (i == 0 ? 2.4 : 2.0) * theme.px(1),
            .style = dashOf(i),
        });
    return curves;
}
}

int SurvivalDrawing::itemCount() const
{
    std::size_t count = 0;
    for (const SurvivalCurve& curve : figure().curves)
        count += curve.steps.size();
    return static_cast<int>(count);
}

QString SurvivalDrawing::itemText(int index) const
{
    auto at = static_cast<std::size_t>(index);
    for (const SurvivalCurve& curve : figure().curves) {
        if (at < curve.steps.size())
            return curve.steps[at].text;
        at -= curve.steps.size();
    }
    return {};
}

PlotSurround SurvivalDrawing::surround() const
{
    PlotSurround around{.across = figure().times, .up = figure().shares};
    const bool several = figure().curves.size() > 1;
    const bool hasRows = !figure().atRiskTitle.isEmpty();
    for (std::size_t i = 0; i < figure().curves.size(); ++i) {
        const SurvivalCurve& curve = figure().curves[i];
        if (several && !hasRows) // curves meet at their ends: a row with a sample names them better
            around.endNames.push_back(curve.name);
        if (curve.median && !curve.medianLabel.isEmpty())
            around.flags.push_back({*curve.median, curve.medianLabel, Qt::DashLine});
        if (hasRows)
            around.rows.push_back(
                {.name = several ? curve.name : QString(), .numbers = curve.atRisk, .hasSample = several});
    }
    around.rowsTitle = figure().atRiskTitle;
    return around;
}

int SurvivalDrawing::leastWidth(const Stage& stage) const { return PlotFrame::leastWidth(stage, surround()); }

int SurvivalDrawing::heightFor(int width, const Stage& stage) const
{
    const QMargins margins = PlotFrame::marginsOf(stage, width, surround());
    return margins.top() + margins.bottom() + stage.theme.px(plotHeight);
}

PlotFrame SurvivalDrawing::frame(const Stage& stage) const
{
    return {stage, QRect({}, stage.size), surround()};
}

std::vector<QRect> SurvivalDrawing::itemBoxes(const Stage& stage) const
{
    const PlotFrame plot = frame(stage);
    const int side = stage.theme.px(14);
    std::vector<QRect> boxes;
    for (const SurvivalCurve& curve : figure().curves) {
        for (const SurvivalStep& step : curve.steps) {
            const QPoint at = plot.at(step.time, step.share).toPoint();
            boxes.emplace_back(at.x() - side / 2, at.y() - side / 2, side, side);
        }
    }
    return boxes;
}

void SurvivalDrawing::paint(QPainter& painter, const Stage& stage)
{
    const Pencil pencil(painter, stage);
    const PlotFrame around = frame(stage);
    around.paint(pencil);
    around.paintFlags(pencil);
    paintCurves(pencil, around, bandsOf(figure(), stage.theme.roles), curvesOf(figure(), stage.theme));
    paintMarks(pencil, around);
}

void SurvivalDrawing::paintMarks(const Pencil& pencil, const PlotFrame& frame) const
{
    const double reach = pencil.stage().theme.px(4);
    std::vector<double> ends;
    for (std::size_t i = 0; i < figure().curves.size(); ++i) {
        const SurvivalCurve& curve = figure().curves[i];
        for (const double time : curve.censored) {
            const QPointF at = frame.at(time, shareAt(curve, time));
            pencil.line(at - QPointF(0, reach), at + QPointF(0, reach), colourOf(i, pencil.roles()),
                pencil.stage().theme.px(1) * 1.5);
        }
        ends.push_back(shareAt(curve, curve.end));
    }
    frame.paintEndNames(pencil, ends);
    const auto samples = frame.sampleBoxes();
    const auto curves = curvesOf(figure(), pencil.stage().theme);
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const double middle = samples[i].top() + samples[i].height() / 2.0;
        if (!samples[i].isEmpty())
            pencil.line({static_cast<double>(samples[i].left()), middle},
                {static_cast<double>(samples[i].left() + samples[i].width()), middle}, curves[i].colour,
                curves[i].width, curves[i].style);
    }
}

}
