// SPDX-License-Identifier: MIT
#include "ui/window/noticebar.h"

#include "tests/support/qstringprint.h"
#include "tests/ui/window/wardwindow.h"

#include <QLineEdit>
#include <QPushButton>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

TEST_CASE("typing goes on through a notice that comes, is clicked away and goes: not a letter is lost")
{
    WardWindow ward;
    ward.walk();
    must(ward.store->switchWarmer(
        "sorrel-hill", {.device = "warmer-1", .at = ward.clock.now(), .on = true}, "AB"));
    ward.open();
    ward.press(Qt::Key_B);
    auto& bar = ward.find<NoticeBar>("noticeBar");
    REQUIRE_FALSE(bar.isVisible());
    auto& field = ward.find<QLineEdit>("birthTimeEdit");
    REQUIRE(QApplication::focusWidget() == &field);
    ward.type(QStringLiteral("16"));
    ward.tick(30min); // the warmer is warm
    REQUIRE(bar.isVisible());
    CHECK(bar.text() == QStringLiteral("Warmer 1 is warm since 14:30"));
    CHECK(QApplication::focusWidget() == &field);
    ward.type(QStringLiteral("3"));
    QTest::mouseClick(&ward.find<QPushButton>("noticeSeenButton"), Qt::LeftButton);
    WardWindow::settle();
    CHECK_FALSE(bar.isVisible());
    CHECK(QApplication::focusWidget() == &field);
    ward.type(QStringLiteral("0"));
    CHECK(field.text() == QStringLiteral("1630"));
}

TEST_CASE("Alt+0 puts a notice away, and a warmer that is warm is no news twice")
{
    WardWindow ward;
    ward.walk();
    ward.open();
    auto& bar = ward.find<NoticeBar>("noticeBar");
    must(ward.store->switchWarmer(
        "sorrel-hill", {.device = "warmer-1", .at = ward.clock.now() - 31min, .on = true}, "AB"));
    ward.tick(1s);
    REQUIRE(bar.isVisible());
    ward.press(Qt::Key_0, Qt::AltModifier);
    CHECK_FALSE(bar.isVisible());
    ward.tick(5min);
    CHECK_FALSE(bar.isVisible());
}

TEST_CASE("of several notices the weightiest is shown, with how many more; the round that is late comes back")
{
    WardWindow ward; // 14:00, the shift began at 07:00, no round
    must(ward.store->noteBirth(
        "sorrel-hill", {.birth = "b1", .at = ward.clock.now(), .expected = ward.clock.now() + 40min}, "AB"));
    ward.open();
    auto& bar = ward.find<NoticeBar>("noticeBar");
    REQUIRE(bar.isVisible());
    CHECK(bar.text() == QStringLiteral("Switch Warmer 1 on by 14:10 · 1 more"));
    ward.press(Qt::Key_0, Qt::AltModifier);
    CHECK(bar.text() == QStringLiteral("The round of this shift is late since 08:00"));
    ward.press(Qt::Key_0, Qt::AltModifier);
    CHECK_FALSE(bar.isVisible());
    ward.tick(10min);
    CHECK(bar.text().startsWith(QStringLiteral("Switch Warmer 1 on by 14:10"))); // it still has to go on
    must(ward.window->ward().switchWarmer("warmer-1", true, ward.clock.now()));
    ward.tick(49min);
    CHECK(bar.text().isEmpty()); // 14:59: the round was put away at 14:00
    ward.tick(1min);
    CHECK(bar.text() == QStringLiteral("The round of this shift is late since 08:00"));
}
