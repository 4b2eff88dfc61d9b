// SPDX-License-Identifier: MIT
#include "tests/support/qstringprint.h"
#include "tests/ui/widgets/scenery.h"
#include "ui/widgets/navigationrail.h"

#include <doctest/doctest.h>
#include <QSignalSpy>

using namespace cradlepost;

namespace {
std::vector<RailPlace> places()
{
    std::vector<RailPlace> all;
    for (const char* name : {"This shift", "Round", "Gaps", "Stores", "Month", "Units", "Set-up"})
        all.push_back({.name = QString::fromUtf8(name), .key = static_cast<int>(all.size()) + 1});
    return all;
}
}

TEST_CASE("Alt and a digit open a place from anywhere in the window")
{
    QWidget window;
    NavigationRail rail(&window);
    rail.setPlaces(places());
    QWidget other(&window);
    other.setFocusPolicy(Qt::StrongFocus);
    REQUIRE(showWithFocus(window, {800, 768}));
    other.setFocus();
    QSignalSpy chosen(&rail, &NavigationRail::placeChosen);
    QTest::keyClick(&other, Qt::Key_5, Qt::AltModifier);
    REQUIRE(chosen.size() == 1);
    CHECK(chosen.front().front().toInt() == 4);
    CHECK(rail.place() == 0); // the window decides, and then marks it
    rail.setPlace(4);
    CHECK(rail.isChosen(4));
    CHECK(chosen.size() == 1);
}

TEST_CASE("a place keeps its digit when others are not there")
{
    NavigationRail rail;
    rail.setPlaces({{QStringLiteral("This shift"), 1}, {QStringLiteral("Set-up"), 7}});
    REQUIRE(showWithFocus(rail, {140, 768}));
    QSignalSpy chosen(&rail, &NavigationRail::placeChosen);
    QTest::keyClick(&rail, Qt::Key_7, Qt::AltModifier);
    REQUIRE(chosen.size() == 1);
    CHECK(chosen.front().front().toInt() == 1);
    CHECK(rail.itemText(1) == QStringLiteral("Set-up, Alt+7"));
}

TEST_CASE("within the rail the arrows move and only Enter opens")
{
    NavigationRail rail;
    rail.setPlaces(places());
    REQUIRE(showWithFocus(rail, {140, 768}));
    QSignalSpy chosen(&rail, &NavigationRail::placeChosen);
    QTest::keyClick(&rail, Qt::Key_Down);
    QTest::keyClick(&rail, Qt::Key_Down);
    CHECK(chosen.isEmpty());
    QTest::keyClick(&rail, Qt::Key_Return);
    REQUIRE(chosen.size() == 1);
    CHECK(chosen.front().front().toInt() == 2);
}

TEST_CASE("all places fit a ward PC's height at every text size")
{
    for (const double scale : {1.0, 1.5, 2.0}) {
        const Scenery scenery(scale);
        NavigationRail rail;
        rail.setPlaces(places());
        rail.resize(rail.sizeHint().width(), 768);
        CHECK(rail.itemRect(6).bottom() < 768);
        for (int i = 1; i < 7; ++i)
            CHECK(rail.itemRect(i).top() == rail.itemRect(i - 1).bottom() + 1);
    }
}

TEST_CASE("in a low window the rail closes up instead of losing places")
{
    const Scenery scenery(2.0);
    NavigationRail rail;
    rail.setPlaces(places());
    rail.resize(rail.sizeHint().width(), rail.minimumSizeHint().height());
    CHECK(rail.minimumSizeHint().height() < rail.sizeHint().height());
    CHECK(rail.itemRect(6).bottom() < rail.height());
}
