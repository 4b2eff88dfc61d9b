// SPDX-License-Identifier: MIT
#include "tests/support/qstringprint.h"
#include "tests/ui/widgets/scenery.h"
#include "ui/widgets/paintedlist.h"
#include "ui/widgets/sectionlist.h"

#include <doctest/doctest.h>
#include <QAccessible>
#include <QSignalSpy>

using namespace cradlepost;

namespace {
void fill(SectionList& list)
{
    list.setSections({{QStringLiteral("Room"), 3, 3}, {QStringLiteral("Warmer corner"), 5, 7},
        {QStringLiteral("Papers"), 0, 4}});
}
}

TEST_CASE("Home, End and the arrows move the cursor, and Enter and Space activate")
{
    SectionList list;
    fill(list);
    REQUIRE(showWithFocus(list, {260, 200}));
    QSignalSpy activated(&list, &PaintedList::activated);
    QTest::keyClick(&list, Qt::Key_End);
    CHECK(list.cursor() == 2);
    QTest::keyClick(&list, Qt::Key_Down);
    CHECK(list.cursor() == 2);
    QTest::keyClick(&list, Qt::Key_Up);
    CHECK(list.cursor() == 1);
    QTest::keyClick(&list, Qt::Key_Return);
    QTest::keyClick(&list, Qt::Key_Space);
    REQUIRE(activated.size() == 2);
    CHECK(activated.back().front().toInt() == 1);
    QTest::keyClick(&list, Qt::Key_Home);
    CHECK(list.cursor() == 0);
}

TEST_CASE("a click activates the item below the mouse, a drag to another one does not")
{
    SectionList list;
    fill(list);
    REQUIRE(showWithFocus(list, {260, 200}));
    QSignalSpy activated(&list, &PaintedList::activated);
    QTest::mouseClick(&list, Qt::LeftButton, {}, list.itemRect(2).center());
    REQUIRE(activated.size() == 1);
    CHECK(activated.front().front().toInt() == 2);
    QTest::mousePress(&list, Qt::LeftButton, {}, list.itemRect(0).center());
    QTest::mouseRelease(&list, Qt::LeftButton, {}, list.itemRect(1).center());
    CHECK(activated.size() == 1);
}

TEST_CASE("the ring is there for the keyboard and not for the mouse")
{
    SectionList list;
    fill(list);
    REQUIRE(showWithFocus(list, {260, 200}));
    QTest::keyClick(&list, Qt::Key_End);
    const int withRing = countOf(list.grab(list.itemRect(2)).toImage(), lightRoles().accent);
    QTest::mouseClick(&list, Qt::LeftButton, {}, list.itemRect(2).center());
    const int without = countOf(list.grab(list.itemRect(2)).toImage(), lightRoles().accent);
    CHECK(withRing > without + 200);
}

TEST_CASE("a screen reader finds a named list with a child an item")
{
    SectionList list;
    fill(list);
    REQUIRE(showWithFocus(list, {260, 200}));
    QAccessibleInterface* seen = QAccessible::queryAccessibleInterface(&list);
    REQUIRE(seen != nullptr);
    CHECK(seen->role() == QAccessible::List);
    CHECK(seen->text(QAccessible::Name) == QStringLiteral("Sections"));
    REQUIRE(seen->childCount() == 3);
    QAccessibleInterface* item = seen->child(1);
    REQUIRE(item != nullptr);
    CHECK(item->text(QAccessible::Name) == QStringLiteral("Warmer corner, 5 of 7"));
    CHECK(item->rect().size() == list.itemRect(1).size());
    CHECK(item->parent() == seen);
    CHECK(seen->indexOfChild(item) == 1);
    CHECK(seen->child(3) == nullptr);
    const QPoint middle = list.mapToGlobal(list.itemRect(2).center());
    CHECK(seen->childAt(middle.x(), middle.y()) == seen->child(2));
}

TEST_CASE("a screen reader can move to an item and press it")
{
    SectionList list;
    fill(list);
    REQUIRE(showWithFocus(list, {260, 200}));
    QSignalSpy activated(&list, &PaintedList::activated);
    QAccessibleInterface* seen = QAccessible::queryAccessibleInterface(&list);
    auto* action = seen->child(2)->actionInterface();
    REQUIRE(action != nullptr);
    action->doAction(QAccessibleActionInterface::setFocusAction());
    CHECK(list.cursor() == 2);
    CHECK(seen->child(2)->state().focused);
    CHECK(seen->focusChild() == seen->child(2));
    action->doAction(QAccessibleActionInterface::pressAction());
    CHECK(activated.size() == 1);
    fill(list);
    list.setSections({});
    CHECK(seen->childCount() == 0);
    CHECK(list.cursor() == -1);
}
