// SPDX-License-Identifier: MIT
#include "monthbench.h"
#include "ui/charts/chartview.h"
#include "ui/pages/month/paperpanel.h"
#include "ui/widgets/wraplabel.h"

#include <QComboBox>
#include <QDateEdit>
#include <QFile>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

QString writeSheet(MonthBench& bench, const QByteArray& text)
{
    const QString path = QString::fromStdString(bench.dir.file("sheet.csv"));
    QFile file(path);
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(text);
    return path;
}

}

TEST_CASE("an idea typed on the page becomes a record and a mark on the chart")
{
    MonthBench bench;
    MonthPage& page = bench.open(ReviewChoice{.span = ReviewSpan::ofMonth(2026y / November)});
    auto& title = find<QLineEdit>(page, "ideaTitleEdit");
    title.setFocus();
    QTest::keyClicks(&title, QStringLiteral("Count the kits at handover"));
    QTest::mouseClick(&find<QPushButton>(page, "keepIdeaButton"), Qt::LeftButton);
    const auto ideas = must(bench.store->changeIdeas(bench.unit));
    REQUIRE(ideas.size() == 1);
    CHECK(ideas[0].title == "Count the kits at handover");
    CHECK(ideas[0].from == MonthBench::today);
    const auto& course
        = std::get<ControlFigure>(find<ChartView>(page, "week-by-week-items-met").shown().figure);
    REQUIRE(course.marks.size() == 1);
    CHECK(course.marks[0].label == QStringLiteral("Count the kits at handover"));
}

TEST_CASE("an idea that is kept can be ended, and one without words is refused in words")
{
    MonthBench bench;
    MonthPage& page = bench.open();
    QTest::mouseClick(&find<QPushButton>(page, "keepIdeaButton"), Qt::LeftButton);
    CHECK(must(bench.store->changeIdeas(bench.unit)).empty());
    find<QLineEdit>(page, "ideaTitleEdit").setText(QStringLiteral("Test the bag first"));
    QTest::mouseClick(&find<QPushButton>(page, "keepIdeaButton"), Qt::LeftButton);
    auto& which = find<QComboBox>(page, "ideaComboBox");
    REQUIRE(which.count() == 2);
    which.setFocus();
    QTest::keyClick(&which, Qt::Key_Down);
    Q_EMIT which.activated(1);
    QTest::mouseClick(&find<QPushButton>(page, "endIdeaButton"), Qt::LeftButton);
    const auto ideas = must(bench.store->changeIdeas(bench.unit));
    REQUIRE(ideas.size() == 1);
    CHECK(ideas[0].until == MonthBench::today);
}

TEST_CASE("a filled sheet shows its faults by line and field, and nothing is entered")
{
    MonthBench bench;
    MonthPage& page = bench.open();
    auto* panel = page.findChild<PaperPanel*>();
    REQUIRE(panel != nullptr);
    const auto before = must(bench.store->verify()).records;
    must(panel->preview(
        writeSheet(bench, "date,shift,finished,initials,item-0\n2026-13-01,day,08:00,AB,m\n")));
    CHECK_FALSE(find<QPushButton>(page, "enterSheetButton").isVisible());
    CHECK(find<WrapLabel>(page, "paperSaid").text().contains(QStringLiteral("nothing was entered")));
    CHECK_FALSE(panel->enter());
    CHECK(must(bench.store->verify()).records == before);
}

TEST_CASE("the empty sheet, filled for a shift without a round, is entered and marked as from paper")
{
    MonthBench bench;
    MonthPage& page = bench.open(ReviewChoice{.span = ReviewSpan::ofMonth(2026y / November)});
    auto* panel = page.findChild<PaperPanel*>();
    REQUIRE(panel != nullptr);
    const QString path = QString::fromStdString(bench.dir.file("empty.csv"));
    must(panel->writeTemplate(path));
    QFile empty(path);
    REQUIRE(empty.open(QIODevice::ReadOnly));
    const QByteArray header = empty.readAll().trimmed();
    QByteArray row = "2026-11-03,day,08:30,AB";
    for (qsizetype i = 0; i < header.count(',') - 3; ++i)
        row += i == 1 ? ",g:absent" : ",";
    must(panel->preview(writeSheet(bench, header + "\n" + row + "\n")));
    QPushButton& enter = find<QPushButton>(page, "enterSheetButton");
    REQUIRE(enter.isVisible());
    QTest::mouseClick(&enter, Qt::LeftButton);
    const auto rows = must(
        bench.store->rounds(bench.unit, slotOf(MonthBench::today, 0), slotOf(MonthBench::today, 0) + 1));
    REQUIRE(rows.size() == 1);
    CHECK(rows[0].fromPaper);
    CHECK(page.review()->calendar.paper == 1);
}

TEST_CASE("a round that was entered wrong is found by its day and shift, and handed on to be put right")
{
    MonthBench bench;
    MonthPage& page = bench.open(ReviewChoice{.span = ReviewSpan::ofMonth(2026y / October)});
    QSignalSpy wanted(&page, &MonthPage::putRightWanted);
    auto& open = find<QPushButton>(page, "putRightButton");
    auto& day = find<QDateEdit>(page, "recordedDayEdit");
    CHECK(day.date() == QDate(2026, 10, 31)); // the last day of what is shown
    find<QComboBox>(page, "recordedShiftComboBox").setCurrentIndex(1);
    REQUIRE(open.isEnabled());
    CHECK(find<WrapLabel>(page, "recordedSaid").text().contains(QStringLiteral("AB")));
    QTest::mouseClick(&open, Qt::LeftButton);
    REQUIRE(wanted.size() == 1);
    const auto round = wanted[0][0].value<SavedRound>();
    CHECK(round.round.shift.slot() == slotOf(2026y / 10 / 31, 1));
    CHECK(round.round.kind == RoundKind::Shift);

    day.setDate(QDate(2026, 2, 1)); // before the first round
    CHECK_FALSE(open.isEnabled());
    CHECK(find<WrapLabel>(page, "recordedSaid").text()
        == QStringLiteral("No round was recorded in this shift."));
}
