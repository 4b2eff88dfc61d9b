// SPDX-License-Identifier: MIT
#include "ui/charts/controlcurves.h"
#include "ui/theme/theme.h"

namespace cradlepost {

namespace {
enum class Level { Centre, Low, High };

std::optional<double> levelOf(const ControlPoint& point, Level level)
{
    if (!point.limits)
        return std::nullopt;
    switch (level) {
    case Level::Centre:
        return point.limits->centre;
    case Level::Low:
        return point.limits->low;
    case Level::High:
        return point.limits->high;
    }
    return std::nullopt;
}

/// Appends what was gathered as a curve, and starts anew.
void finish(std::vector<Curve>& curves, Curve& running)
{
    if (!running.points.isEmpty())
        curves.push_back(running);
    running.points.clear();
}

/// A level reaches half a period to each side of its point, so that limits that vary with n are steps.
void addLevel(std::vector<Curve>& curves, const ControlSeries& series, Level level, Curve pen)
{
    int phase = 0;
    for (std::size_t i = 0; i < series.points.size(); ++i) {
        const ControlPoint& point = series.points[i];
        const auto height = levelOf(point, level);
        if (!height || point.phase != phase)
            finish(curves, pen);
        phase = point.phase;
        if (!height)
            continue;
        const auto x = static_cast<double>(i);
        pen.points << QPointF(x - 0.5, *height) << QPointF(x + 0.5, *height);
    }
    finish(curves, pen);
}

void addLine(std::vector<Curve>& curves, const ControlSeries& series, Curve strong, Curve quiet)
{
    for (std::size_t i = 0; i < series.points.size(); ++i) {
        const ControlPoint& point = series.points[i];
        if (!point.value) {
            finish(curves, strong);
            finish(curves, quiet);
            continue;
        }
        const QPointF at(static_cast<double>(i), *point.value);
        if (point.inSpan) {
            if (!quiet.points.isEmpty()) { // the quiet line leads up to the first strong point
                quiet.points << at;
                finish(curves, quiet);
            }
            strong.points << at;
        } else {
            if (!strong.points.isEmpty())
                quiet.points << strong.points.back();
            finish(curves, strong);
            quiet.points << at;
        }
    }
    finish(curves, strong);
    finish(curves, quiet);
}
}

std::vector<Curve> controlCurves(const std::vector<const ControlSeries*>& series, const Theme& theme)
{
    const double unit = theme.px(1);
    const Roles& roles = theme.roles;
    std::vector<Curve> curves;
    for (const ControlSeries* one : series) {
        addLevel(curves, *one, Level::Low, {.colour = roles.inkHint, .width = unit, .style = Qt::DashLine});
        addLevel(curves, *one, Level::High, {.colour = roles.inkHint, .width = unit, .style = Qt::DashLine});
        addLevel(curves, *one, Level::Centre, {.colour = roles.ink, .width = 1.4 * unit});
    }
    for (std::size_t i = 0; i < series.size(); ++i) {
        const Qt::PenStyle style = i == 0 ? Qt::SolidLine : i == 1 ? Qt::DashLine : Qt::DotLine;
        addLine(curves, *series[i], {.colour = roles.accent, .width = 2.0 * unit, .style = style},
            {.colour = roles.edge, .width = 1.4 * unit, .style = style});
    }
    return curves;
}

}
