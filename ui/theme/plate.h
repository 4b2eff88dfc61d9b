// SPDX-License-Identifier: MIT
#pragma once

#include <QRectF>

class QColor;
class QPainter;

namespace cradlepost {

struct Theme;

inline constexpr double cornerRadius = 6.0;
inline constexpr double focusRingWidth = 2.0;

/// The ring around what the keyboard is at, drawn just inside `rect`.
void paintFocusRing(QPainter& painter, const QRectF& rect, const Theme& theme, double radius = cornerRadius);

/// A filled shape with a one pixel border; an invalid border colour leaves it out.
void paintPlate(QPainter& painter, const QRectF& rect, const QColor& fill, const QColor& border,
    double radius = cornerRadius);

}
