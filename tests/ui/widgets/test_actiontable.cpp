// SPDX-License-Identifier: MIT
#include "tests/support/qstringprint.h"
#include "tests/ui/widgets/scenery.h"
#include "ui/widgets/actiontable.h"

#include <doctest/doctest.h>
#include <QSignalSpy>

using namespace cradlepost;

namespace {
std::vector<ActionRow> rows()
{
    return {{.mark = Mark::GapCritical,
                .title = QStringLiteral("Warmer warm"),
                .subtitle = QStringLiteral("on since 19:24"),
                .what = QStringLiteral("Leave on, towels under it"),
                .who = QStringLiteral("A. T."),
                .by = QStringLiteral("19:54"),
                .byAside = QStringLiteral("12 min")},
        {.mark = Mark::Gap,
            .title = QStringLiteral("Size 0 mask"),
            .subtitle = QStringLiteral("cracked rim, failed step 1 of 3"),
            .what = QStringLiteral("Spare from drawer 2, test it"),
            .who = {},
            .by = {},
            .byAside = {}}};
}
}

TEST_CASE("Enter or a click opens the row")
{
    ActionTable table;
    table.setRows(rows());
    REQUIRE(showWithFocus(table, {900, 200}));
    QSignalSpy opened(&table, &ActionTable::rowActivated);
    QTest::keyClick(&table, Qt::Key_Down);
    QTest::keyClick(&table, Qt::Key_Return);
    QTest::mouseClick(&table, Qt::LeftButton, {}, table.itemRect(0).center());
    REQUIRE(opened.size() == 2);
    CHECK(opened.at(0).front().toInt() == 1);
    CHECK(opened.at(1).front().toInt() == 0);
}

TEST_CASE("a row reads as a sentence and leaves out what it does not know")
{
    ActionTable table;
    table.setRows(rows());
    CHECK(table.itemText(0)
        == QStringLiteral(
            "Critical gap, Warmer warm, on since 19:24, Leave on, towels under it, Who A. T., By 19:54, "
            "12 min"));
    CHECK(table.itemText(1)
        == QStringLiteral("Gap, Size 0 mask, cracked rim, failed step 1 of 3, Spare from drawer 2, test it"));
}

TEST_CASE("rows grow instead of cutting when the table is narrow")
{
    for (const double scale : {1.0, 2.0}) {
        const Scenery scenery(scale);
        ActionTable table;
        table.setRows(rows());
        const int roomy = table.sizeHint().width();
        const int narrow = table.minimumSizeHint().width();
        CHECK(narrow < roomy);
        CHECK(table.heightForWidth(narrow) > table.heightForWidth(roomy));
        table.resize(narrow, table.heightForWidth(narrow));
        CHECK(table.itemRect(1).bottom() < table.height());
    }
}

TEST_CASE("without rows the table says so in the page's words")
{
    ActionTable table;
    table.setEmptyText(QStringLiteral("Nothing to mend."));
    CHECK(table.heightForWidth(600) > QFontMetrics(qApp->font()).height());
    table.resize(600, table.heightForWidth(600));
    CHECK(countOf(table.grab().toImage(), lightRoles().inkSoft) > 0);
}

TEST_CASE("headers can be those of another page")
{
    ActionTable table;
    table.setRows(rows());
    table.setHeaders(
        {QStringLiteral("Gap"), QStringLiteral("Open for"), QStringLiteral("Owner"), QStringLiteral("Due")});
    CHECK(table.itemText(0).contains(QStringLiteral("Owner A. T., Due 19:54")));
}
