// SPDX-License-Identifier: MIT
#include "ui/theme/theme.h"

#include <doctest/doctest.h>
#include <QApplication>
#include <QWidget>

using namespace cradlepost;

TEST_CASE("the scheme follows the desktop unless the reader chose one")
{
    QPalette bright;
    bright.setColor(QPalette::Window, Qt::white);
    bright.setColor(QPalette::WindowText, Qt::black);
    QPalette dim;
    dim.setColor(QPalette::Window, QColor(40, 40, 40));
    dim.setColor(QPalette::WindowText, Qt::white);
    CHECK(decideScheme(SchemeChoice::FollowSystem, bright) == Scheme::Light);
    CHECK(decideScheme(SchemeChoice::FollowSystem, dim) == Scheme::Dark);
    CHECK(decideScheme(SchemeChoice::Light, dim) == Scheme::Light);
    CHECK(decideScheme(SchemeChoice::Dark, bright) == Scheme::Dark);
}

TEST_CASE("a theme grows marks with the text and white space half as fast")
{
    const Theme twice = makeTheme(Scheme::Light, 2.0);
    CHECK(twice.px(16) == 32);
    CHECK(twice.space(Space::Apart) == 24);
    CHECK(makeTheme(Scheme::Light, 9.0).textScale == doctest::Approx(2.0));
    CHECK(makeTheme(Scheme::Light).space(Space::Wide) == 24);
}

TEST_CASE("an applied theme reaches widgets, and can be exchanged while they are open")
{
    QWidget open;
    applyTheme(*qApp, makeTheme(Scheme::Dark, 1.5));
    CHECK(themeOf(open).scheme == Scheme::Dark);
    QWidget widget;
    CHECK(widget.palette().color(QPalette::Window) == darkRoles().paper);
    CHECK(widget.font().pixelSize() == 23);
    applyTheme(*qApp, makeTheme(Scheme::Light));
    CHECK(themeOf(open).scheme == Scheme::Light);
    QWidget next;
    CHECK(next.palette().color(QPalette::Window) == lightRoles().paper);
    CHECK(next.palette().color(QPalette::Disabled, QPalette::Text) == lightRoles().inkFaint);
}
