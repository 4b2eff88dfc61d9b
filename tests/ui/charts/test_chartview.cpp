// SPDX-License-Identifier: MIT
#include "tests/support/qstringprint.h"
#include "tests/ui/charts/samplecharts.h"
#include "tests/ui/widgets/scenery.h"
#include "ui/charts/chartcanvas.h"
#include "ui/charts/charttableview.h"
#include "ui/charts/chartview.h"
#include "ui/widgets/wraplabel.h"

#include <doctest/doctest.h>
#include <QAbstractItemModelTester>
#include <QFile>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QToolButton>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {
ChartTableView& tableOf(ChartView& view) { return *view.findChild<ChartTableView*>(); }

QStringList troubles(const ChartView& view)
{
    QStringList texts;
    for (const auto* label : view.findChildren<WrapLabel*>()) {
        if (label->isVisible())
            texts << label->text();
    }
    return texts;
}
}

TEST_CASE("T turns the chart over to its table and back, and the keyboard goes with it")
{
    ChartView view;
    view.setContent(sampleBars());
    REQUIRE(showWithFocus(view, {600, 400}));
    view.canvas().setFocus(Qt::TabFocusReason);
    QSignalSpy turned(&view, &ChartView::turned);
    QTest::keyClick(&view.canvas(), Qt::Key_T);
    CHECK(view.showsTable());
    CHECK(tableOf(view).isVisible());
    CHECK_FALSE(view.canvas().isVisible());
    CHECK(tableOf(view).hasFocus());
    QTest::keyClick(&tableOf(view), Qt::Key_T);
    CHECK_FALSE(view.showsTable());
    CHECK(view.canvas().hasFocus());
    CHECK(turned.size() == 2);
    view.findChild<QToolButton*>(QStringLiteral("turnButton"))->click();
    CHECK(view.showsTable());
}

TEST_CASE("the table twin has the same numbers, cell by cell")
{
    for (const ChartContent& content : sampleCharts()) {
        CAPTURE(content.title);
        ChartView view;
        view.setContent(content);
        const QAbstractItemModel& model = *tableOf(view).model();
        REQUIRE(model.rowCount() == static_cast<int>(content.table.rows.size()));
        REQUIRE(model.columnCount() == content.table.headers.size());
        for (int column = 0; column < model.columnCount(); ++column) {
            CHECK(model.headerData(column, Qt::Horizontal).toString() == content.table.headers[column]);
            for (int row = 0; row < model.rowCount(); ++row)
                CHECK(model.index(row, column).data().toString()
                    == content.table.rows[static_cast<std::size_t>(row)][column]);
        }
    }
}

TEST_CASE("the table is a sound model, also while it is exchanged")
{
    ChartTableModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setTable(sampleMap().table);
    CHECK(model.rowCount() == 6);
    CHECK(model.index(0, 1).data(Qt::TextAlignmentRole).toInt() == int(Qt::AlignTrailing | Qt::AlignVCenter));
    model.setTable({});
    CHECK(model.rowCount() == 0);
}

TEST_CASE("a short table shows all its rows, also where its columns have to scroll")
{
    const Scenery scenery(2.0);
    ChartView view;
    view.setContent(sampleMap());
    view.showTable(true);
    view.resize(view.minimumSizeHint().width(), 100);
    view.show();
    QCoreApplication::processEvents();
    CHECK(tableOf(view).horizontalScrollBar()->maximum() > 0);
    CHECK(tableOf(view).verticalScrollBar()->maximum() == 0);
}

TEST_CASE("a screen reader gets the title as name, finding and small print as description")
{
    ChartView view;
    const ChartContent content = sampleControl();
    view.setContent(content);
    for (const QWidget* widget :
        std::initializer_list<const QWidget*>{&view, &view.canvas(), &tableOf(view)}) {
        CHECK(widget->accessibleName() == content.title);
        CHECK(widget->accessibleDescription() == QString(content.finding % u' ' % content.smallPrint));
    }
}

TEST_CASE("Tab reaches the chart, its table button and its save button")
{
    ChartView view;
    view.setContent(sampleBars());
    view.resize(600, 400);
    view.show();
    view.activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(&view));
    view.canvas().setFocus(Qt::TabFocusReason);
    QTest::keyClick(&view.canvas(), Qt::Key_Tab);
    CHECK(view.focusWidget()->objectName() == QStringLiteral("turnButton"));
    QTest::keyClick(view.focusWidget(), Qt::Key_Tab);
    CHECK(view.focusWidget()->objectName() == QStringLiteral("saveButton"));
}

TEST_CASE("a saved chart is told of, a failure is said in the ward's words until the next try")
{
    const QTemporaryDir folder;
    ChartView view;
    view.setContent(sampleBars());
    view.resize(600, 400);
    view.show();
    QSignalSpy saved(&view, &ChartView::saved);
    CHECK_FALSE(view.saveTo(folder.filePath(QStringLiteral("no/chart.png"))));
    CHECK(troubles(view).join(u'|').contains(QStringLiteral("It is not there.")));
    CHECK(saved.isEmpty());
    const QString path = folder.filePath(QStringLiteral("chart.png"));
    CHECK(view.saveTo(path));
    CHECK(QFile::exists(path));
    CHECK(saved.size() == 1);
    CHECK_FALSE(troubles(view).join(u'|').contains(QStringLiteral("It is not there.")));
}

TEST_CASE("without numbers there is nothing to turn over or to save")
{
    ChartView view;
    view.setContent({.title = QStringLiteral("Too little to say")});
    view.show();
    CHECK_FALSE(view.findChild<QToolButton*>(QStringLiteral("turnButton"))->isVisible());
    CHECK_FALSE(view.findChild<QToolButton*>(QStringLiteral("saveButton"))->isVisible());
    QTest::keyClick(&view.canvas(), Qt::Key_T);
    CHECK_FALSE(view.showsTable());
}
