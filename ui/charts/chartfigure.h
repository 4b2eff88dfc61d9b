// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/curvefigures.h"
#include "ui/charts/listfigures.h"

#include <Qt>
#include <variant>

class QPainter;
class QRectF;

namespace cradlepost {

struct Theme;

using ChartFigure = std::variant<ControlFigure, SurvivalFigure, HistogramFigure, FunnelFigure, BarsFigure,
    ShareRowsFigure, CalendarFigure, MapFigure, SmallMultiplesFigure>;

/// Nothing to draw; the drawing then says so in words.
bool isEmpty(const ChartFigure& figure);

/// Height that the figure wants at this width, in the units of the theme's fonts (pixels at text size 1).
int chartHeight(const ChartFigure& figure, int width, const Theme& theme,
    Qt::LayoutDirection direction = Qt::LeftToRight);

/// Least width at which nothing touches.
int chartLeastWidth(
    const ChartFigure& figure, const Theme& theme, Qt::LayoutDirection direction = Qt::LeftToRight);

/// Paints into `rect` as vectors, no background. One unit of the painter is one pixel of the theme's fonts:
/// scale the painter for paper (at 96 units an inch text is 13 units high). Needs a QGuiApplication, for
/// its fonts; offscreen will do.
void paintChart(QPainter& painter, const QRectF& rect, const ChartFigure& figure, const Theme& theme,
    Qt::LayoutDirection direction = Qt::LeftToRight);

}
