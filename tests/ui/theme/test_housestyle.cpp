// SPDX-License-Identifier: MIT
#include "ui/theme/theme.h"

#include <doctest/doctest.h>
#include <QApplication>
#include <QComboBox>
#include <QFontMetrics>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QSpinBox>
#include <QStyleOptionSlider>
#include <QTest>

using namespace cradlepost;

namespace {
struct ScaledTheme
{
    explicit ScaledTheme(double scale, Scheme scheme = Scheme::Light)
    {
        applyTheme(*qApp, makeTheme(scheme, scale));
    }
    ~ScaledTheme() { applyTheme(*qApp, makeTheme(Scheme::Light)); }
};

QColor pixelAt(QWidget& widget, const QPoint& place)
{
    widget.resize(widget.sizeHint());
    return widget.grab().toImage().pixelColor(place);
}

/// Pixels of a widget that have a colour.
int countOf(QWidget& widget, const QColor& colour)
{
    widget.resize(widget.sizeHint());
    const QImage image = widget.grab().toImage();
    int count = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x)
            count += image.pixelColor(x, y) == colour ? 1 : 0;
    }
    return count;
}
}

TEST_CASE("the primary button is filled with the accent and wide enough for its semibold label")
{
    for (const double scale : {1.0, 2.0}) {
        const ScaledTheme theme(scale);
        QPushButton plain(QStringLiteral("Re-check what is missing"));
        QPushButton primary(plain.text());
        primary.setProperty("primary", true);
        const QFont font = themeOf(primary).font(TextRole::Body, TextWeight::SemiBold);
        CHECK(primary.sizeHint().width() >= QFontMetrics(font).horizontalAdvance(primary.text()) + 20);
        CHECK(pixelAt(primary, {8, 8}) == lightRoles().accent);
        CHECK(pixelAt(plain, {8, 8}) == lightRoles().sheet);
    }
}

TEST_CASE("a focused control shows the ring and loses it with the focus")
{
    QWidget window;
    QPushButton button(QStringLiteral("Hand over"), &window);
    QLineEdit edit(&window);
    window.show();
    window.activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(&window));
    edit.setFocus();
    REQUIRE(edit.hasFocus());
    CHECK(countOf(edit, lightRoles().accent) > 40);
    CHECK(countOf(button, lightRoles().accent) == 0);
    button.setFocus();
    REQUIRE(button.hasFocus());
    CHECK(countOf(button, lightRoles().accent) > 40);
    CHECK(countOf(edit, lightRoles().accent) == 0);
}

TEST_CASE("fields and lists hold their text at twice the size")
{
    for (const double scale : {1.0, 2.0}) {
        const ScaledTheme theme(scale);
        QComboBox box;
        box.addItem(QStringLiteral("not working"));
        QLineEdit edit;
        QSpinBox spin;
        spin.setMaximum(9999);
        const QFontMetrics metrics(qApp->font());
        for (QWidget* widget : std::initializer_list<QWidget*>{&box, &edit, &spin})
            CHECK(widget->sizeHint().height() >= metrics.height() + 8);
        CHECK(box.sizeHint().width() >= metrics.horizontalAdvance(box.currentText()) + 28);
        CHECK(spin.sizeHint().width() >= metrics.horizontalAdvance(QStringLiteral("9999")) + 24);
    }
}

TEST_CASE("a scroll bar has no arrow buttons and its thumb covers the share that is seen")
{
    QScrollBar bar(Qt::Vertical);
    bar.resize(bar.sizeHint().width(), 400);
    bar.setRange(0, 300);
    bar.setPageStep(100);
    bar.setValue(300);
    QStyleOptionSlider option;
    option.initFrom(&bar);
    option.orientation = Qt::Vertical;
    option.maximum = 300;
    option.pageStep = 100;
    option.sliderPosition = 300;
    const auto part = [&](QStyle::SubControl which) {
        return bar.style()->subControlRect(QStyle::CC_ScrollBar, &option, which, &bar);
    };
    CHECK(part(QStyle::SC_ScrollBarAddLine).isEmpty());
    CHECK(part(QStyle::SC_ScrollBarGroove) == bar.rect());
    CHECK(part(QStyle::SC_ScrollBarSlider).height() == 100);
    CHECK(part(QStyle::SC_ScrollBarSlider).bottom() == bar.rect().bottom());
}
