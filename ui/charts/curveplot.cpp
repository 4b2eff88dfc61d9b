// SPDX-License-Identifier: MIT
#include "ui/charts/curveplot.h"

#include <QAreaSeries>
#include <QChart>
#include <QGraphicsLayout>
#include <QGraphicsScene>
#include <QLegend>
#include <QLineSeries>
#include <QPainter>
#include <QValueAxis>

namespace cradlepost {

struct CurvePlot::Series
{
    QValueAxis* x;
    QValueAxis* y;
    std::vector<QAreaSeries*> bands;
    std::vector<QLineSeries*> lines;
};

namespace {
void take(QChart& chart, QAbstractSeries* series, QValueAxis* x, QValueAxis* y)
{
    chart.addSeries(series); // the chart owns it
    series->attachAxis(x);
    series->attachAxis(y);
}
}

CurvePlot::CurvePlot(int bands)
    : m_scene(std::make_unique<QGraphicsScene>())
    , m_chart(new QChart)
    , m_series(new Series{.x = new QValueAxis, .y = new QValueAxis})
{
    m_scene->addItem(m_chart);
    m_chart->legend()->hide();
    m_chart->setBackgroundVisible(false);
    m_chart->setMargins({});
    m_chart->layout()->setContentsMargins(0, 0, 0, 0);
    m_chart->addAxis(m_series->x, Qt::AlignBottom);
    m_chart->addAxis(m_series->y, Qt::AlignLeft);
    m_series->x->setVisible(false);
    m_series->y->setVisible(false);
    for (int i = 0; i < bands; ++i) { // before the lines, so that they lie below
        auto* high = new QLineSeries;
        auto* low = new QLineSeries;
        auto* band = new QAreaSeries(high, low);
        high->setParent(band);
        low->setParent(band);
        band->setPen(Qt::NoPen);
        take(*m_chart, band, m_series->x, m_series->y);
        m_series->bands.push_back(band);
    }
}

CurvePlot::~CurvePlot() = default;

void CurvePlot::setCurves(
    const Reach& reach, const std::vector<CurveBand>& bands, const std::vector<Curve>& curves)
{
    m_reach = reach;
    if (bands != m_bands)
        setBands(bands);
    if (curves != m_curves)
        setLines(curves);
}

void CurvePlot::setBands(const std::vector<CurveBand>& bands)
{
    m_bands = bands;
    Q_ASSERT(bands.size() <= m_series->bands.size());
    for (std::size_t i = 0; i < m_series->bands.size(); ++i) {
        QAreaSeries& area = *m_series->bands[i];
        const CurveBand band = i < bands.size() ? bands[i] : CurveBand{};
        area.upperSeries()->replace(band.high);
        area.lowerSeries()->replace(band.low);
        area.setBrush(band.fill);
        area.setVisible(!band.high.isEmpty());
    }
}

void CurvePlot::setLines(const std::vector<Curve>& curves)
{
    m_curves = curves;
    while (m_series->lines.size() < curves.size()) {
        m_series->lines.push_back(new QLineSeries);
        take(*m_chart, m_series->lines.back(), m_series->x, m_series->y);
    }
    for (std::size_t i = 0; i < m_series->lines.size(); ++i) {
        QLineSeries& line = *m_series->lines[i];
        const Curve curve = i < curves.size() ? curves[i] : Curve{};
        line.replace(curve.points);
        QPen pen(curve.colour, curve.width, curve.style, Qt::FlatCap, Qt::RoundJoin);
        line.setPen(pen);
        line.setVisible(!curve.points.isEmpty());
    }
}

void CurvePlot::paint(QPainter& painter, const QRectF& inner, double margin, bool mirrored)
{
    if (inner.width() < 1.0 || inner.height() < 1.0)
        return;
    const QRectF outer = inner.adjusted(-margin, -margin, margin, margin);
    const double byX = (m_reach.xTo - m_reach.xFrom) / inner.width() * margin;
    const double byY = (m_reach.yTo - m_reach.yFrom) / inner.height() * margin;
    m_series->x->setRange(m_reach.xFrom - byX, m_reach.xTo + byX);
    m_series->y->setRange(m_reach.yFrom - byY, m_reach.yTo + byY);
    m_series->x->setReverse(mirrored);
    const QRectF own({}, outer.size());
    m_scene->setSceneRect(own);
    m_chart->setGeometry(own);
    m_chart->setPlotArea(own);
    painter.save();
    painter.setBrush(Qt::NoBrush); // Qt Charts fills dashed lines with what brush it finds
    m_scene->render(&painter, outer, own, Qt::IgnoreAspectRatio);
    painter.restore();
}

}
