// SPDX-License-Identifier: MIT
#pragma once

#include "ui/theme/theme.h"

#include <QProxyStyle>

namespace cradlepost {

/// Fusion in the clothes of the house: flat, no gradients, no animation, a ring where the keyboard is.
/// A push button with the dynamic property "primary" set to true is the one filled button of its page.
class HouseStyle : public QProxyStyle
{
    Q_OBJECT
public:
    explicit HouseStyle(const Theme& theme);

    const Theme& theme() const { return m_theme; }

    QPalette standardPalette() const override;
    int pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const override;
    int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
        QStyleHintReturn* returnData) const override;
    QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
        const QWidget* widget) const override;
    QRect subControlRect(ComplexControl control, const QStyleOptionComplex* option, SubControl part,
        const QWidget* widget) const override;
    QRect subElementRect(
        SubElement element, const QStyleOption* option, const QWidget* widget) const override;
    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
        const QWidget* widget) const override;
    void drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
        const QWidget* widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
        const QWidget* widget) const override;

private:
    Theme m_theme;
};

}
