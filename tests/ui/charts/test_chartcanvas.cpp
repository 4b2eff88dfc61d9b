// SPDX-License-Identifier: MIT
#include "tests/support/qstringprint.h"
#include "tests/ui/charts/samplecharts.h"
#include "tests/ui/widgets/scenery.h"
#include "ui/charts/chartcanvas.h"

#include <doctest/doctest.h>
#include <QAccessible>
#include <QToolTip>

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("Left and Right walk the points and say each")
{
    ChartCanvas canvas;
    canvas.setFigure(sampleControl().figure);
    REQUIRE(showWithFocus(canvas, {600, 300}));
    CHECK(canvas.itemCount() == 26);
    CHECK(canvas.cursor() == 0);
    QTest::keyClick(&canvas, Qt::Key_Right);
    CHECK(canvas.cursor() == 1);
    CHECK(QToolTip::text() == canvas.itemText(1));
    QTest::keyClick(&canvas, Qt::Key_Left);
    CHECK(canvas.cursor() == 0);
    QTest::keyClick(&canvas, Qt::Key_End);
    CHECK(canvas.cursor() == 25);
}

TEST_CASE("in a mirrored window the first point is at the right and Left walks on")
{
    const Scenery scenery(1.0, Qt::RightToLeft);
    for (const ChartContent& content :
        {sampleControl(), sampleHistogram(), sampleSurvival(), sampleCalendar()}) {
        CAPTURE(content.title);
        ChartCanvas canvas;
        canvas.setFigure(content.figure);
        REQUIRE(showWithFocus(canvas, {700, 400}));
        CHECK(canvas.itemRect(0).left() > canvas.itemRect(1).left());
        QTest::keyClick(&canvas, Qt::Key_Left);
        CHECK(canvas.cursor() == 1);
        QTest::keyClick(&canvas, Qt::Key_Right);
        CHECK(canvas.cursor() == 0);
    }
}

TEST_CASE("a curve is painted where its points are, mirrored too")
{
    for (const auto direction : {Qt::LeftToRight, Qt::RightToLeft}) {
        const Scenery scenery(1.0, direction);
        ChartCanvas canvas;
        canvas.setFigure(sampleControl().figure);
        REQUIRE(showWithFocus(canvas, {600, 300}));
        const QImage image = canvas.grab().toImage();
        for (const int signal : {19, 21, 22}) { // filled diamonds
            const QPoint middle = canvas.itemRect(signal).center();
            CHECK(image.pixelColor(middle) == lightRoles().warning);
        }
        CHECK(image.pixelColor(canvas.itemRect(20).center()) == lightRoles().sheet); // from paper: hollow
    }
}

TEST_CASE("up and down lead to the same weekday, the row above and the panel below")
{
    ChartCanvas canvas;
    canvas.setFigure(sampleCalendar().figure);
    REQUIRE(showWithFocus(canvas, {400, 300}));
    QTest::keyClick(&canvas, Qt::Key_Down);
    CHECK(canvas.cursor() == 7);
    QTest::keyClick(&canvas, Qt::Key_Up);
    CHECK(canvas.cursor() == 0);
    canvas.setFigure(sampleMap().figure);
    canvas.setCursorAt(0);
    QTest::keyClick(&canvas, Qt::Key_Down);
    CHECK(canvas.cursor() == 9);
    QTest::keyClick(&canvas, Qt::Key_Left); // the edge
    CHECK(canvas.cursor() == 9);
    canvas.setFigure(sampleMultiples().figure);
    canvas.resize(400, 500);
    canvas.setCursorAt(0);
    canvas.itemRect(0);
    QTest::keyClick(&canvas, Qt::Key_Down);
    CHECK(canvas.itemRect(canvas.cursor()).left() == canvas.itemRect(0).left());
    CHECK(canvas.itemRect(canvas.cursor()).top() > canvas.itemRect(0).top());
}

TEST_CASE("a screen reader finds a child a point with its words, said once")
{
    ChartCanvas canvas;
    canvas.setFigure(sampleBars().figure);
    QAccessibleInterface* seen = QAccessible::queryAccessibleInterface(&canvas);
    REQUIRE(seen != nullptr);
    REQUIRE(seen->childCount() == 6);
    CHECK(seen->child(0)->text(QAccessible::Name)
        == QStringLiteral("Delivery kits whole: 31% of what was lost, 27 of 88"));
    CHECK(seen->child(0)->text(QAccessible::Description) == QString());
}

TEST_CASE("hover says the point below the mouse")
{
    ChartCanvas canvas;
    canvas.setFigure(sampleControl().figure);
    REQUIRE(showWithFocus(canvas, {600, 300}));
    const QPoint place = canvas.itemRect(5).center();
    QHelpEvent help(QEvent::ToolTip, place, canvas.mapToGlobal(place));
    QApplication::sendEvent(&canvas, &help);
    CHECK(QToolTip::text() == canvas.itemText(5));
}

TEST_CASE("an empty chart has no items, says its own sentence and keeps its place")
{
    ChartCanvas canvas;
    canvas.setEmptyText(QStringLiteral("No round was due."));
    canvas.setFigure(MapFigure{});
    CHECK(canvas.itemCount() == 0);
    CHECK(canvas.heightForWidth(300) > 10);
    CHECK(canvas.heightForWidth(300) < 60);
    REQUIRE(showWithFocus(canvas, {300, 100}));
    QTest::keyClick(&canvas, Qt::Key_Right);
    CHECK(canvas.cursor() == -1);
    const QImage written = canvas.grab().toImage();
    canvas.setEmptyText(QStringLiteral("Two weeks are too little."));
    CHECK(canvas.grab().toImage() != written);
}

TEST_CASE("the cursor stays inside when a shorter figure comes")
{
    ChartCanvas canvas;
    canvas.setFigure(sampleCalendar().figure);
    canvas.setCursorAt(30);
    canvas.setFigure(sampleBars().figure);
    CHECK(canvas.cursor() == 5);
    canvas.setFigure(BarsFigure{});
    CHECK(canvas.cursor() == -1);
}

TEST_CASE("a chart asks for room that grows with the text")
{
    for (const ChartContent& content : sampleCharts()) {
        CAPTURE(content.title);
        ChartCanvas small;
        small.setFigure(content.figure);
        const QSize before = small.sizeHint();
        const Scenery scenery(2.0);
        ChartCanvas large;
        large.setFigure(content.figure);
        CHECK(large.sizeHint().width() > before.width());
        CHECK(large.sizeHint().height() > before.height());
        CHECK(large.minimumSizeHint().width() <= large.sizeHint().width());
    }
}
