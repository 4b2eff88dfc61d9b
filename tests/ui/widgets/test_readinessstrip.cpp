// SPDX-License-Identifier: MIT
#include "tests/support/qstringprint.h"
#include "tests/ui/widgets/scenery.h"
#include "ui/widgets/readinessstrip.h"

#include <doctest/doctest.h>
#include <QAccessible>
#include <QSignalSpy>

using namespace cradlepost;

namespace {
StripData twoWeeks(int days = 14)
{
    StripData strip{.finding = QStringLiteral("The warmer corner has not been ready since 21 Nov")};
    strip.rows
        = {QStringLiteral("Room"), QStringLiteral("Warmer corner"), QStringLiteral("Medicines, cold chain")};
    for (int day = 0; day < days; ++day)
        strip.days.push_back({.label = QStringLiteral("%1 Nov").arg(11 + day), .shifts = 3});
    for (int shift = 0; shift < 3 * days; ++shift)
        strip.shifts.push_back(QStringLiteral("shift %1").arg(shift));
    strip.cells.assign(3, std::vector<StripCell>(static_cast<std::size_t>(3 * days), {.mark = Mark::Met}));
    strip.cells[1].back() = {.mark = Mark::GapCritical, .word = {}};
    strip.cells[2].back() = {.mark = Mark::NotChecked, .word = QStringLiteral("no round")};
    strip.cells[0].back() = {};
    return strip;
}
}

TEST_CASE("the keyboard begins at the latest shift and walks cell by cell")
{
    ReadinessStrip strip;
    strip.setData(twoWeeks());
    REQUIRE(showWithFocus(strip, {1200, 200}));
    CHECK(strip.cursor() == 41);
    QSignalSpy chosen(&strip, &ReadinessStrip::cellChosen);
    QTest::keyClick(&strip, Qt::Key_Down);
    QTest::keyClick(&strip, Qt::Key_Return);
    REQUIRE(chosen.size() == 1);
    CHECK(chosen.front().at(0).toInt() == 1);
    CHECK(chosen.front().at(1).toInt() == 41);
    QTest::keyClick(&strip, Qt::Key_Left);
    CHECK(strip.cursor() == 42 + 40);
    QTest::keyClick(&strip, Qt::Key_Up);
    CHECK(strip.cursor() == 40);
    QTest::keyClick(&strip, Qt::Key_Up);
    CHECK(strip.cursor() == 40);
}

TEST_CASE("in a mirrored window the latest shift is at the left and the arrows follow")
{
    const Scenery mirrored(1.0, Qt::RightToLeft);
    ReadinessStrip strip;
    strip.setData(twoWeeks());
    REQUIRE(showWithFocus(strip, {1200, 200}));
    CHECK(strip.itemRect(41).left() < strip.itemRect(0).left());
    QTest::keyClick(&strip, Qt::Key_Right);
    CHECK(strip.cursor() == 40);
    QTest::keyClick(&strip, Qt::Key_Left);
    CHECK(strip.cursor() == 41);
}

TEST_CASE("all days are shown where they fit, and the latest where they do not")
{
    ReadinessStrip strip;
    strip.setData(twoWeeks());
    strip.resize(1200, 200);
    CHECK(strip.shownDays() == 14);
    strip.resize(560, 200);
    CHECK(strip.shownDays() < 14);
    CHECK(strip.shownDays() >= 2);
    CHECK(strip.itemRect(0).isEmpty());
    CHECK_FALSE(strip.itemRect(41).isEmpty());
    CHECK(strip.itemRect(41).right() <= strip.width());
}

TEST_CASE("at twice the text size rows keep their names and marks stay large enough to tell apart")
{
    const Scenery twice(2.0);
    ReadinessStrip strip;
    strip.setData(twoWeeks());
    strip.resize(1160, 400);
    CHECK(strip.shownDays() >= 5);
    CHECK(strip.itemRect(41).width() >= 16);
    const QFontMetrics metrics(themeOf(strip).font(TextRole::Small));
    int first = 0;
    while (strip.itemRect(first).isEmpty())
        ++first;
    CHECK(strip.itemRect(first).left() >= metrics.horizontalAdvance(QStringLiteral("Medicines, cold chain")));
    CHECK(strip.heightForWidth(1160) >= 3 * metrics.height());
}

TEST_CASE("a cell says its section, day and outcome, and shows its tip")
{
    ReadinessStrip strip;
    strip.setData(twoWeeks());
    strip.resize(1200, 200);
    CHECK(strip.itemText(42 + 41) == QStringLiteral("Warmer corner, 24 Nov, Critical gap"));
    CHECK(strip.itemToolTip(42 + 41) == QStringLiteral("Warmer corner · shift 41 · Critical gap"));
    CHECK(strip.itemText(2 * 42 + 41) == QStringLiteral("Medicines, cold chain, 24 Nov, no round"));
    CHECK(strip.itemToolTip(2 * 42 + 41) == QStringLiteral("Medicines, cold chain · shift 41 · no round"));
    CHECK(strip.itemToolTip(41).isEmpty());
    CHECK(strip.itemText(41) == QStringLiteral("Room, 24 Nov, still to come"));
    QAccessibleInterface* seen = QAccessible::queryAccessibleInterface(&strip);
    CHECK(seen->text(QAccessible::Name) == twoWeeks().finding);
    CHECK(seen->childCount() == 3 * 42);
}

TEST_CASE("a strip without days or rows stands still")
{
    ReadinessStrip strip;
    strip.setData({.finding = QStringLiteral("No round yet")});
    REQUIRE(showWithFocus(strip, {600, 100}));
    QTest::keyClick(&strip, Qt::Key_Left);
    QTest::keyClick(&strip, Qt::Key_Return);
    CHECK(strip.itemCount() == 0);
    CHECK_FALSE(strip.grab().isNull());
}
