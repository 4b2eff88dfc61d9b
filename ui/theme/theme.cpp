// SPDX-License-Identifier: MIT
#include "ui/theme/theme.h"
#include "ui/theme/housestyle.h"

#include <algorithm>
#include <cmath>
#include <QApplication>
#include <QToolTip>

namespace cradlepost {

const QFont& Theme::font(TextRole role, TextWeight weight) const { return fontOf(fonts, role, weight); }

int Theme::px(double designPixels) const { return static_cast<int>(std::lround(designPixels * textScale)); }

int Theme::space(Space space) const
{
    return static_cast<int>(std::lround(static_cast<int>(space) * (1.0 + (textScale - 1.0) / 2.0)));
}

Theme makeTheme(Scheme scheme, double textScale)
{
    const double scale = std::clamp(textScale, leastTextScale, mostTextScale);
    return {
        .scheme = scheme,
        .textScale = scale,
        .roles = scheme == Scheme::Dark ? darkRoles() : lightRoles(),
        .fonts = houseFonts(scale),
    };
}

Scheme decideScheme(SchemeChoice choice, const QPalette& system)
{
    if (choice == SchemeChoice::Light)
        return Scheme::Light;
    if (choice == SchemeChoice::Dark)
        return Scheme::Dark;
    const double window = relativeLuminance(system.color(QPalette::Window));
    const double text = relativeLuminance(system.color(QPalette::WindowText));
    return window < text ? Scheme::Dark : Scheme::Light;
}

QPalette paletteOf(const Theme& theme)
{
    const Roles& r = theme.roles;
    QPalette palette(r.ink, r.sheet, r.line, r.edge, r.line, r.ink, r.ink, r.sheet, r.paper);
    palette.setColor(QPalette::AlternateBase, r.paper);
    palette.setColor(QPalette::Highlight, r.accent);
    palette.setColor(QPalette::HighlightedText, r.onAccent);
    palette.setColor(QPalette::Link, r.accent);
    palette.setColor(QPalette::LinkVisited, r.accent);
    palette.setColor(QPalette::PlaceholderText, r.inkHint);
    palette.setColor(QPalette::ToolTipBase, r.sheet);
    palette.setColor(QPalette::ToolTipText, r.ink);
    palette.setColor(QPalette::Shadow, r.line);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, r.inkFaint);
    palette.setColor(QPalette::Disabled, QPalette::Highlight, r.line);
    palette.setColor(QPalette::Disabled, QPalette::HighlightedText, r.inkSoft);
    return palette;
}

void applyTheme(QApplication& application, const Theme& theme)
{
    application.setStyle(new HouseStyle(theme)); // the application owns it
    application.setPalette(paletteOf(theme));
    application.setFont(theme.font(TextRole::Body));
    QToolTip::setFont(theme.font(TextRole::Small));
    QToolTip::setPalette(paletteOf(theme));
}

const Theme& themeOf(const QWidget& widget)
{
    if (const auto* style = qobject_cast<const HouseStyle*>(widget.style()))
        return style->theme();
    static const Theme plain;
    return plain;
}

}
