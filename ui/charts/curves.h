// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/plotframe.h"

namespace cradlepost {

struct Curve
{
    QList<QPointF> points; ///< in the plot's numbers
    QColor colour;
    double width = 1.0;
    Qt::PenStyle style = Qt::SolidLine;
};

/// What lies between two curves over the same x.
struct CurveBand
{
    QList<QPointF> low;
    QList<QPointF> high;
    QColor fill;
};

/// The bands first, so that they lie below the curves. What reaches further beside the plot than a mark may is clipped.
void paintCurves(const Pencil& pencil, const PlotFrame& frame, const std::vector<CurveBand>& bands,
    const std::vector<Curve>& curves);

}
