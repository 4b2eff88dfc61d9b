// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <QColor>
#include <QList>
#include <QPointF>
#include <vector>

class QChart;
class QGraphicsScene;
class QPainter;
class QRectF;

namespace cradlepost {

struct Curve
{
    QList<QPointF> points;
    QColor colour;
    double width = 1.0;
    Qt::PenStyle style = Qt::SolidLine;

    bool operator==(const Curve&) const = default;
};

/// What lies between two curves over the same x.
struct CurveBand
{
    QList<QPointF> low;
    QList<QPointF> high;
    QColor fill;

    bool operator==(const CurveBand&) const = default;
};

struct Reach
{
    double xFrom = 0.0;
    double xTo = 1.0;
    double yFrom = 0.0;
    double yTo = 1.0;

    bool operator==(const Reach&) const = default;
};

/// The curves of one plot, drawn by Qt Charts, and nothing but them: its axes cut labels, know no months and
/// do not mirror, so that all that is read stands around the curves in our own paint. One QChart is kept
/// and its points replaced: a QChart that is exchanged is not deleted by its view.
class CurvePlot
{
public:
    explicit CurvePlot(int bands); ///< at most so many bands
    ~CurvePlot();
    CurvePlot(const CurvePlot&) = delete;
    CurvePlot& operator=(const CurvePlot&) = delete;

    void setCurves(const Reach& reach, const std::vector<CurveBand>& bands, const std::vector<Curve>& curves);

    /// `reach` falls on `inner`, as seen; curves may lie up to `margin` beside it before they are clipped.
    void paint(QPainter& painter, const QRectF& inner, double margin, bool mirrored);

    const QChart& chart() const { return *m_chart; }

private:
    void setBands(const std::vector<CurveBand>& bands);
    void setLines(const std::vector<Curve>& curves);

    std::unique_ptr<QGraphicsScene> m_scene;
    QChart* m_chart; ///< the scene's
    Reach m_reach;
    std::vector<CurveBand> m_bands;
    std::vector<Curve> m_curves;
    struct Series;
    std::unique_ptr<Series> m_series;
};

}
