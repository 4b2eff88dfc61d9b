// SPDX-License-Identifier: MIT
#include "ui/charts/pencil.h"

#include <QPainter>

namespace cradlepost {

Pencil::Pencil(QPainter& painter, const Stage& stage)
    : m_painter(painter)
    , m_stage(stage)
{
}

QRectF Pencil::seen(const QRectF& box) const
{
    return isMirrored() ? QRectF(m_stage.size.width() - box.right(), box.top(), box.width(), box.height())
                        : box;
}

QPointF Pencil::seen(const QPointF& point) const
{
    return isMirrored() ? QPointF(m_stage.size.width() - point.x(), point.y()) : point;
}

void Pencil::write(const QRect& box, const QString& text, const QColor& colour, Place place, TextRole role,
    TextWeight weight) const
{
    if (text.isEmpty())
        return;
    const Qt::Alignment alignment = place == Place::Leading ? Qt::AlignLeft
        : place == Place::Middle                            ? Qt::AlignHCenter
                                                            : Qt::AlignRight;
    m_painter.setPen(colour);
    m_stage.ink(text, role, weight, alignment).drawMiddle(m_painter, seen(QRectF(box)).toRect());
}

void Pencil::line(
    const QPointF& from, const QPointF& to, const QColor& colour, double width, Qt::PenStyle style) const
{
    m_painter.setPen(QPen(colour, width, style, Qt::FlatCap));
    m_painter.drawLine(seen(from), seen(to));
}

void Pencil::fill(const QRectF& box, const QBrush& brush, double radius) const
{
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(brush);
    if (radius > 0.0)
        m_painter.drawRoundedRect(seen(box), radius, radius);
    else
        m_painter.drawRect(seen(box));
}

void Pencil::point(const QPointF& at, PointShape shape, double size, const QColor& colour) const
{
    const bool hollow = shape == PointShape::Ring || shape == PointShape::HollowDiamond;
    const bool round = shape == PointShape::Disc || shape == PointShape::Ring;
    const double stroke = hollow ? std::max(1.5, size / 5.0) : 0.0;
    const double reach = (round ? size / 2.0 : size * 0.68) - stroke / 2.0;
    const QPointF middle = seen(at);
    m_painter.setPen(
        hollow ? QPen(colour, stroke, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin) : QPen(Qt::NoPen));
    m_painter.setBrush(hollow ? roles().sheet : colour);
    if (round)
        m_painter.drawEllipse(middle, reach, reach);
    else
        m_painter.drawPolygon(QPolygonF({middle + QPointF(0, -reach), middle + QPointF(reach, 0),
            middle + QPointF(0, reach), middle + QPointF(-reach, 0)}));
}

void Pencil::mark(const QRectF& box, Mark mark) const { paintMark(m_painter, seen(box), mark, roles()); }

}
