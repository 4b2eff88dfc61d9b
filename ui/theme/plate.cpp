// SPDX-License-Identifier: MIT
#include "ui/theme/plate.h"
#include "ui/theme/theme.h"

#include <algorithm>
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
    painter.setPen(Qt::NoPen);
    const auto put = [&](double inset, const QColor& colour) {
        painter.setBrush(colour.isValid() ? QBrush(colour) : QBrush(Qt::NoBrush));
        const double round = std::max(0.0, radius - inset);
        painter.drawRoundedRect(rect.adjusted(inset, inset, -inset, -inset), round, round);
    };
    if (border.isValid() && fill.isValid() && fill.alpha() == 255) { // one plate on another: a line around it costs four times as much
        put(0.0, border);
        put(1.0, fill);
    } else if (border.isValid()) {
        painter.setPen(QPen(border, 1.0));
        put(0.5, fill);
    } else {
        put(0.0, fill);
    }
    painter.restore();
}

}
