// SPDX-License-Identifier: MIT
#pragma once

#include "ui/theme/theme.h"

#include <QApplication>
#include <QTest>

/// A text size, a scheme and a direction for one test; the plain ones again afterwards.
class Scenery
{
public:
    explicit Scenery(double textScale, Qt::LayoutDirection direction = Qt::LeftToRight,
        cradlepost::Scheme scheme = cradlepost::Scheme::Light)
    {
        cradlepost::applyTheme(*qApp, cradlepost::makeTheme(scheme, textScale));
        QGuiApplication::setLayoutDirection(direction);
    }
    ~Scenery()
    {
        QGuiApplication::setLayoutDirection(Qt::LeftToRight);
        cradlepost::applyTheme(*qApp, cradlepost::makeTheme(cradlepost::Scheme::Light));
    }
    Scenery(const Scenery&) = delete;
    Scenery& operator=(const Scenery&) = delete;
};

/// Shows a widget at a size and gives it the keyboard.
inline bool showWithFocus(QWidget& widget, const QSize& size)
{
    widget.resize(size);
    widget.show();
    widget.activateWindow();
    const bool active = QTest::qWaitForWindowActive(&widget);
    widget.setFocus(Qt::TabFocusReason);
    return active && widget.hasFocus();
}

/// Pixels of `image` that have a colour.
inline int countOf(const QImage& image, const QColor& colour)
{
    int count = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x)
            count += image.pixelColor(x, y) == colour ? 1 : 0;
    }
    return count;
}
