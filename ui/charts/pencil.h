// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/drawing.h"
#include "ui/widgets/outcomemark.h"

namespace cradlepost {

/// Where in its box a text stands, as read.
enum class Place { Leading, Middle, Trailing };

enum class PointShape { Disc, Ring, Diamond, HollowDiamond };

/// Paints what was laid out left to right; mirrors it when the stage runs right to left.
class Pencil
{
public:
    Pencil(QPainter& painter, const Stage& stage);

    const Stage& stage() const { return m_stage; }
    const Roles& roles() const { return m_stage.theme.roles; }
    QPainter& painter() const { return m_painter; }
    bool isMirrored() const { return m_stage.direction == Qt::RightToLeft; }

    QRectF seen(const QRectF& box) const; ///< mirrored when the stage is
    QPointF seen(const QPointF& point) const;

    /// In the middle of the box's height; wraps, is never cut.
    void write(const QRect& box, const QString& text, const QColor& colour, Place place = Place::Leading,
        TextRole role = TextRole::Small, TextWeight weight = TextWeight::Regular) const;
    void line(const QPointF& from, const QPointF& to, const QColor& colour, double width = 1.0,
        Qt::PenStyle style = Qt::SolidLine) const;
    void fill(const QRectF& box, const QBrush& brush, double radius = 0.0) const;
    /// `size` of the disc's box; the diamond stands out a little more. Hollow shapes are filled with the
    /// sheet.
    void point(const QPointF& at, PointShape shape, double size, const QColor& colour) const;
    void mark(const QRectF& box, Mark mark) const;

private:
    QPainter& m_painter;
    const Stage& m_stage;
};

}
