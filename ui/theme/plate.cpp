// SPDX-License-Identifier: MIT
#include "ui/theme/plate.h"
#include "ui/theme/theme.h"

#include <QPainter>

namespace cradlepost {

void paintFocusRing(QPainter& painter, const QRectF& rect, const Theme& theme, double radius)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme.roles.accent, focusRingWidth));
    const double inset = focusRingWidth / 2.0;
    painter.drawRoundedRect(rect.adjusted(inset, inset, -inset, -inset), radius, radius);
    painter.restore();
}

void paintPlate(
    QPainter& painter, const QRectF& rect, const QColor& fill, const QColor& border, double radius)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(fill.isValid() ? QBrush(fill) : QBrush(Qt::NoBrush));
    painter.setPen(border.isValid() ? QPen(border, 1.0) : QPen(Qt::NoPen));
    const double inset = border.isValid() ? 0.5 : 0.0;
    painter.drawRoundedRect(rect.adjusted(inset, inset, -inset, -inset), radius, radius);
    painter.restore();
}

}
