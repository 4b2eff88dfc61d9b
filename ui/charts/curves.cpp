// SPDX-License-Identifier: MIT
#include "ui/charts/curves.h"

#include <algorithm>
#include <QPainter>

namespace cradlepost {

void paintCurves(const Pencil& pencil, const PlotFrame& frame, const std::vector<CurveBand>& bands,
    const std::vector<Curve>& curves)
{
    const auto seen = [&](const QList<QPointF>& points) {
        QPolygonF line;
        line.reserve(points.size());
        for (const QPointF& point : points)
            line << pencil.seen(frame.at(point.x(), point.y()));
        return line;
    };
    QPainter& painter = pencil.painter();
    const double room = frame.markRoom();
    painter.save();
    painter.setClipRect(pencil.seen(frame.plot()).adjusted(-room, -room, room, room), Qt::IntersectClip);
    painter.setPen(Qt::NoPen);
    for (const CurveBand& band : bands) {
        QPolygonF area = seen(band.high);
        QPolygonF low = seen(band.low);
        std::reverse(low.begin(), low.end());
        painter.setBrush(band.fill);
        painter.drawPolygon(area << low);
    }
    painter.setBrush(Qt::NoBrush);
    for (const Curve& curve : curves) {
        painter.setPen(QPen(curve.colour, curve.width, curve.style, Qt::FlatCap, Qt::RoundJoin));
        painter.drawPolyline(seen(curve.points));
    }
    painter.restore();
}

}
