// SPDX-License-Identifier: MIT
#include "tests/support/qstringprint.h"
#include "tests/ui/widgets/scenery.h"
#include "ui/widgets/sectionlist.h"

#include <doctest/doctest.h>
#include <QSignalSpy>

using namespace cradlepost;

TEST_CASE("going down the sections chooses each at once")
{
    SectionList list;
    list.setSections({{QStringLiteral("Room"), 3, 3}, {QStringLiteral("Warmer corner"), 5, 7}});
    REQUIRE(showWithFocus(list, {260, 200}));
    QSignalSpy chosen(&list, &SectionList::sectionChosen);
    QTest::keyClick(&list, Qt::Key_Down);
    REQUIRE(chosen.size() == 1);
    CHECK(chosen.front().front().toInt() == 1);
}

TEST_CASE("progress of a section changes what it says and nothing else")
{
    SectionList list;
    list.setSections({{QStringLiteral("Room"), 0, 3}, {QStringLiteral("Warmer corner"), 0, 7}});
    const QSize before = list.sizeHint();
    list.setProgress(1, 7);
    list.setProgress(9, 7);
    CHECK(list.itemText(1) == QStringLiteral("Warmer corner, 7 of 7"));
    CHECK(list.sizeHint() == before);
}

TEST_CASE("the current section is marked at the leading side")
{
    for (const auto direction : {Qt::LeftToRight, Qt::RightToLeft}) {
        const Scenery scenery(1.0, direction);
        SectionList list;
        list.setSections({{QStringLiteral("Room"), 0, 3}, {QStringLiteral("Warmer corner"), 0, 7}});
        list.resize(260, 120);
        list.setCursorAt(1);
        const QImage row = list.grab(list.itemRect(1)).toImage();
        const int leading = direction == Qt::LeftToRight ? 1 : row.width() - 2;
        const int trailing = row.width() - 1 - leading;
        CHECK(row.pixelColor(leading, row.height() / 2) == lightRoles().accent);
        CHECK(row.pixelColor(trailing, row.height() / 2) == lightRoles().sheet);
    }
}
