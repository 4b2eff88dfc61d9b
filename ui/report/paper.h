// SPDX-License-Identifier: MIT
#pragma once

#include "ui/theme/theme.h"
#include "ui/widgets/inktext.h"

#include <QRect>
#include <vector>

class QPainter;

namespace cradlepost {

inline constexpr double usualUnits = 112.0; ///< an inch: small print of 8.4 points

/// The house's light theme for print: letters keep the widths that they were drawn with.
Theme paperTheme();

/// A sheet of A4 and the hand that writes on it. Lengths are units: `unitsPerInch` says how large they are on
/// paper; the theme's sizes are in units too (13 units of 112 an inch are 8.4 points).
class Paper
{
public:
    Paper(Qt::LayoutDirection direction, double unitsPerInch);
    Paper(const Paper&) = delete;
    Paper& operator=(const Paper&) = delete;

    const Theme& theme() const { return m_theme; }
    Qt::LayoutDirection direction() const { return m_direction; }
    double unitsPerInch() const { return m_unitsPerInch; }
    /// Whether it is written on smaller than usual, so that one page holds all.
    bool isDense() const { return m_unitsPerInch > usualUnits; }
    QSize size() const;
    QRect body() const; ///< between running head and foot
    QRect head() const;
    QRect foot() const;
    double toMillimetres(int units) const;

    /// Leading (AlignLeft) or trailing (AlignRight), as read.
    const InkText& ink(const QString& text, TextRole role = TextRole::Small,
        TextWeight weight = TextWeight::Regular, Qt::Alignment alignment = Qt::AlignLeft) const;
    /// Where a box lies that was laid out left to right within `whole`.
    QRect seen(const QRect& box, const QRect& whole) const;

private:
    Theme m_theme;
    Qt::LayoutDirection m_direction;
    double m_unitsPerInch;
    InkCache m_texts;
};

}
