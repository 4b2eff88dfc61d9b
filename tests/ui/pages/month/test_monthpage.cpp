// SPDX-License-Identifier: MIT
#include "monthbench.h"
#include "ui/charts/chartcanvas.h"
#include "ui/charts/chartview.h"
#include "ui/widgets/findingslist.h"
#include "ui/widgets/wraplabel.h"

#include <QCheckBox>
#include <QFile>
#include <QPushButton>
#include <QTest>
#include <QTreeWidget>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {
QString answerOf(MonthPage& page) { return find<WrapLabel>(page, "monthAnswer").text(); }
}

TEST_CASE("the month that is over is shown first, with its answer and its counts")
{
    MonthBench bench;
    MonthPage& page = bench.open();
    CHECK(page.choice().span == ReviewSpan::ofMonth(2026y / October));
    REQUIRE(page.review() != nullptr);
    CHECK(page.review()->calendar.done.tally == stats::Tally{.x = 62, .n = 62});
    const auto ready = page.review()->readiness.noCriticalGap.tally;
    CHECK(find<WrapLabel>(page, "monthCompany").text().contains(QStringLiteral("%1 of 62").arg(ready.x)));
    CHECK(answerOf(page).endsWith(QStringLiteral("% of shifts ready")));
    const auto& findings = find<FindingsList>(page, "monthFindings");
    CHECK(findings.itemCount() >= 3);
    CHECK(findings.itemCount() <= 6);
}

TEST_CASE("a sentence leads to its chart: Enter brings the chart into view and gives it the keyboard")
{
    MonthBench bench;
    MonthPage& page = bench.open();
    auto& findings = find<FindingsList>(page, "monthFindings");
    int lost = -1;
    for (int i = 0; i < findings.itemCount(); ++i) {
        if (page.review()->findings[static_cast<std::size_t>(i)].part == MonthPart::Lost)
            lost = i;
    }
    REQUIRE(lost >= 0);
    findings.setFocus();
    findings.setCursorAt(lost);
    QTest::keyClick(&findings, Qt::Key_Return);
    auto& view = find<ChartView>(page, "lost-readiness");
    CHECK(QApplication::focusWidget() == &view.canvas());
    CHECK_FALSE(view.visibleRegion().isEmpty());
}

TEST_CASE("the charts say what was found, and the table behind holds the figures")
{
    MonthBench bench;
    MonthPage& page = bench.open();
    const ChartContent& lost = find<ChartView>(page, "lost-readiness").shown();
    REQUIRE_FALSE(lost.table.rows.empty());
    // 31 nights with the gap, and the days on which every eighth round falls.
    const auto gaps = page.review()->lost.items.front().gaps.tally;
    CHECK(gaps.n == 62);
    CHECK(gaps.x >= 31);
    CHECK(lost.table.rows.front().contains(QString::number(gaps.x)));
    const ChartContent& pattern = find<ChartView>(page, "shifts-and-weekdays").shown();
    CHECK(pattern.title == QStringLiteral("Nights stand out, more than chance explains"));
}

TEST_CASE("the month before and after are a key away, and nothing later than today is offered")
{
    MonthBench bench;
    MonthPage& page = bench.open();
    std::optional<ReviewChoice> kept;
    QObject::connect(&page, &MonthPage::choiceChanged, [&](const ReviewChoice& choice) { kept = choice; });
    QTest::mouseClick(&find<QPushButton>(page, "monthBeforeButton"), Qt::LeftButton);
    CHECK(page.choice().span == ReviewSpan::ofMonth(2026y / September));
    REQUIRE(kept);
    CHECK(kept->span == page.choice().span);
    auto& after = find<QPushButton>(page, "monthAfterButton");
    QTest::mouseClick(&after, Qt::LeftButton);
    QTest::mouseClick(&after, Qt::LeftButton);
    CHECK(page.choice().span == ReviewSpan::ofMonth(2026y / November));
    CHECK_FALSE(after.isEnabled());
    CHECK(answerOf(page) == QStringLiteral("Too little to say"));
}

TEST_CASE("shifts and items that are chosen are the ones that count")
{
    MonthBench bench;
    MonthPage& page = bench.open();
    QTest::mouseClick(&find<QPushButton>(page, "chooseSpanButton"), Qt::LeftButton);
    auto& night = find<QCheckBox>(page, "shift-night");
    REQUIRE(night.isVisible());
    night.setChecked(false);
    auto& tree = find<QTreeWidget>(page, "itemTree");
    QTreeWidgetItem* section = tree.topLevelItem(0);
    section->child(3)->setCheckState(0, Qt::Unchecked);
    QTest::mouseClick(&find<QPushButton>(page, "applySpanButton"), Qt::LeftButton);
    CHECK(page.review()->calendar.done.tally.n == 31);
    CHECK(page.review()->items.size() == 11);
    QTest::mouseClick(&find<QPushButton>(page, "chooseSpanButton"), Qt::LeftButton);
    QTest::mouseClick(&find<QPushButton>(page, "wholeMonthButton"), Qt::LeftButton);
    CHECK(page.review()->calendar.done.tally.n == 62);
}

TEST_CASE("two spans are set against each other with an interval")
{
    MonthBench bench;
    MonthPage& page = bench.open(ReviewChoice{
        .span = ReviewSpan::ofMonth(2026y / October), .against = ReviewSpan::ofMonth(2026y / September)});
    bool found = false;
    for (ChartView* one : page.findChildren<ChartView*>()) {
        if (one->shown().fileName != QLatin1String("two-spans"))
            continue;
        found = true;
        CHECK(one->isVisible());
        CHECK(std::get<ShareRowsFigure>(one->shown().figure).rows.size() == 6);
        CHECK_FALSE(one->shown().table.rows.empty());
    }
    CHECK(found);
}

TEST_CASE("the report is written from the page in each form, and says why when it cannot be")
{
    MonthBench bench;
    MonthPage& page = bench.open();
    for (const char* ending : {"pdf", "html", "xlsx", "csv", "json"}) {
        CAPTURE(ending);
        const QString path = QString::fromStdString(bench.dir.file(std::string("october.") + ending));
        must(page.writeReport(path));
        CHECK(QFile(path).size() > 500);
    }
    CHECK(page.writeReport(QString::fromStdString(bench.dir.file("october.doc"))).error().code
        == ErrorCode::InvalidArgument);
    CHECK(page.writeReport(QStringLiteral("/nowhere/october.pdf")).error().code == ErrorCode::NotFound);
}
