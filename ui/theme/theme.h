// SPDX-License-Identifier: MIT
#pragma once

#include "ui/theme/roles.h"
#include "ui/theme/type.h"

#include <QPalette>

class QApplication;
class QWidget;

namespace cradlepost {

enum class Scheme { Light, Dark };
enum class SchemeChoice { FollowSystem, Light, Dark };

/// Gaps between things, in pixels at text size 1.
enum class Space { Tight = 4, Close = 8, Near = 12, Apart = 16, Wide = 24 };

/// Everything the window needs to know to paint itself.
struct Theme
{
    Scheme scheme = Scheme::Light;
    double textScale = 1.0; ///< 1..2
    Roles roles = lightRoles();
    HouseFonts fonts = houseFonts(1.0); ///< of textScale

    const QFont& font(TextRole role, TextWeight weight = TextWeight::Regular) const;

    /// Length that grows with the text: marks, bars, columns.
    int px(double designPixels) const;

    /// White space grows half as fast as text, so that a page at twice the size still fits a ward PC.
    int space(Space space) const;
};

Theme makeTheme(Scheme scheme, double textScale = 1.0);

/// `system` is the palette before applyTheme: Qt 6.4 does not report the desktop's scheme, its window colour
/// does.
Scheme decideScheme(SchemeChoice choice, const QPalette& system);

QPalette paletteOf(const Theme& theme);

/// Sets style, palette, font; may be called again while windows are open.
void applyTheme(QApplication& application, const Theme& theme);

/// The theme a widget is painted in; the light one when no theme was applied.
const Theme& themeOf(const QWidget& widget);

}
