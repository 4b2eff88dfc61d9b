// SPDX-License-Identifier: MIT
#include "app/windowkeeper.h"

#include "tests/support/builders.h"

#include <doctest/doctest.h>
#include <QScreen>
#include <QTest>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono_literals;

TEST_CASE("the window opens over the whole screen and goes back to no more than it")
{
    const FixedClock stopped{aCalendar().shift(2026y / 3 / 14, 0).begins + 1h};
    const TempDir folder;
    const auto store = aStore(folder.file("ward"), stopped);
    WindowKeeper keeper(*qApp, QString(), QStringLiteral("en"), QStringLiteral("sorrel-hill"));
    keeper.open(*store, stopped);
    MainWindow& window = keeper.window();
    REQUIRE(QTest::qWaitForWindowExposed(&window));
    const QSize room = window.screen()->availableSize();
    CHECK(window.isMaximized());
    CHECK(window.frameSize().width() == room.width());
    window.showNormal();
    CHECK(QTest::qWaitFor([&] { return window.size() == QSize(1366, 768).boundedTo(room); }));
}
