// SPDX-License-Identifier: MIT
#include "core/review/visitweights.h"
#include "ui/charts/chartview.h"
#include "ui/pages/units/distancepanel.h"
#include "ui/pages/units/visitpanel.h"
#include "ui/widgets/wraplabel.h"
#include "unitsbench.h"

#include <algorithm>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFile>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

void type(QAbstractSpinBox& field, const char* text)
{
    field.setFocus();
    field.selectAll();
    QTest::keyClicks(&field, QLatin1String(text));
    QTest::keyClick(&field, Qt::Key_Return);
}

const BarsFigure& stockBars(UnitsPage& page)
{
    return std::get<BarsFigure>(find<ChartView>(page, "units-stock").shown().figure);
}

void choose(QComboBox& box, const char* id)
{
    box.setFocus();
    const int at = box.findData(QLatin1String(id));
    REQUIRE(at >= 0);
    while (box.currentIndex() != at)
        QTest::keyClick(&box, box.currentIndex() < at ? Qt::Key_Down : Qt::Key_Up);
}

}

TEST_CASE("the page says which stock could move, and that no way is known yet")
{
    UnitsBench bench;
    UnitsPage& page = bench.open();
    REQUIRE(stockBars(page).items.size() == 1);
    CHECK(stockBars(page).items[0].name == QStringLiteral("Gloves: 57 pieces from Quillmere to Penny Weir"));
    CHECK(stockBars(page).items[0].text == QStringLiteral("distance not known"));
    CHECK(find<WrapLabel>(page, "distancesKnown").text().startsWith(QStringLiteral("No way is known yet")));
}

TEST_CASE("a way typed on the page is kept in the ledger and stands beside the transfer")
{
    UnitsBench bench;
    UnitsPage& page = bench.open();
    choose(find<QComboBox>(page, "distanceFromComboBox"), "quillmere");
    choose(find<QComboBox>(page, "distanceToComboBox"), "penny-weir");
    type(find<QDoubleSpinBox>(page, "distanceKmSpinBox"), "12.5");
    QTest::mouseClick(&find<QPushButton>(page, "keepDistanceButton"), Qt::LeftButton);
    CHECK(must(bench.store->distances()).between("penny-weir", "quillmere") == 12'500);
    REQUIRE(stockBars(page).items.size() == 1);
    CHECK(stockBars(page).items[0].text == QStringLiteral("12.5 km"));
    CHECK(find<WrapLabel>(page, "distanceSaid").text() == QStringLiteral("1 way kept."));
}

TEST_CASE("a table of ways is taken in whole; one with a fault changes nothing and says its line")
{
    UnitsBench bench;
    UnitsPage& page = bench.open();
    auto* panel = page.findChild<DistancePanel*>();
    REQUIRE(panel != nullptr);
    const QString path = QString::fromStdString(bench.folder.file("ways.csv"));
    const auto write = [&](const char* text) {
        QFile file(path);
        REQUIRE(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
        file.write(text);
    };
    write("from,to,km\npenny-weir,quillmere,9\npenny-weir,nowhere,4\n");
    CHECK_FALSE(panel->read(path).has_value());
    CHECK(find<WrapLabel>(page, "distanceSaid").text().startsWith(QStringLiteral("Line 3 of the table: “nowhere”")));
    CHECK(must(bench.store->distances()).empty());
    write("from,to,km\npenny-weir,quillmere,9\nsorrel-hill,quillmere,4\n");
    must(panel->read(path));
    CHECK(must(bench.store->distances()).all().size() == 2);
    CHECK(stockBars(page).items[0].text == QStringLiteral("9.0 km"));
}

TEST_CASE("a visit's result entered on the page is a record, and the page says what it decided")
{
    UnitsBench bench;
    UnitsPage& page = bench.open();
    REQUIRE(page.review()->sample);
    const stats::LqasRule rule = page.review()->sample->rule;
    auto& which = find<QComboBox>(page, "visitUnitComboBox");
    CHECK(which.currentData().toString() == QStringLiteral("penny-weir")); // the one to see first
    CHECK(find<QLineEdit>(page, "visitByEdit").text() == QStringLiteral("DS"));
    const std::string notMet = std::to_string(rule.n - rule.d + 1);
    type(find<QSpinBox>(page, "visitNotMetSpinBox"), notMet.c_str());
    QTest::mouseClick(&find<QPushButton>(page, "keepVisitButton"), Qt::LeftButton);
    const auto visits = must(bench.store->visits("penny-weir", fromMs(0)));
    REQUIRE(visits.size() == 1);
    CHECK(visits[0].looked == rule.n);
    CHECK(visits[0].decision() == VisitDecision::NotReached);
    CHECK(find<WrapLabel>(page, "visitSaid").text().contains(QStringLiteral("does not reach the standard")));
}

TEST_CASE("a visit of the span stands beside the reasons for the next one, and in the order of findings")
{
    UnitsBench bench;
    must(bench.store->noteVisit("penny-weir",
        {.at = std::chrono::sys_days(std::chrono::year(2026) / 10 / 20),
            .sample = 9,
            .pass = 8,
            .looked = 9,
            .notMet = 4},
        "DS"));
    UnitsPage& page = bench.open();
    const auto& bars = std::get<BarsFigure>(find<ChartView>(page, "units-visits").shown().figure);
    REQUIRE_FALSE(bars.items.empty());
    CHECK(bars.items[0].name.contains(
        QStringLiteral("Last visit 20 Oct: 5 of 9 met, does not reach the standard")));
    CHECK(find<WrapLabel>(page, "visitsBefore").text().contains(QStringLiteral("5 of 9 met")));
    const auto& findings = page.review()->findings;
    CHECK(std::any_of(findings.begin(), findings.end(),
        [](const DistrictFinding& one) { return one.code == DistrictFindingCode::NotReached; }));
}

TEST_CASE("more items not met than looked at cannot be typed, and nobody's initials are refused in words")
{
    UnitsBench bench;
    UnitsPage& page = bench.open();
    type(find<QSpinBox>(page, "visitLookedSpinBox"), "3");
    CHECK(find<QSpinBox>(page, "visitNotMetSpinBox").maximum() == 3);
    find<QLineEdit>(page, "visitByEdit").clear();
    QTest::mouseClick(&find<QPushButton>(page, "keepVisitButton"), Qt::LeftButton);
    CHECK(must(bench.store->visits("penny-weir", fromMs(0))).empty());
    CHECK(find<WrapLabel>(page, "visitSaid").text().startsWith(QStringLiteral("Nobody is named.")));
}

TEST_CASE("the sheet of a visit is written for the unit that is chosen, the same each time it is printed")
{
    UnitsBench bench;
    UnitsPage& page = bench.open();
    auto* panel = page.findChild<VisitPanel*>();
    REQUIRE(panel != nullptr);
    const auto text = [&](const char* name) {
        const QString path = QString::fromStdString(bench.folder.file(name));
        must(panel->writeSheet(path));
        QFile file(path);
        REQUIRE(file.open(QIODevice::ReadOnly));
        return file.readAll();
    };
    const QByteArray html = text("visit.html");
    CHECK(html.contains("Visit to Penny Weir"));
    CHECK(html.contains("57 pieces from Quillmere to Penny Weir"));
    CHECK(html.contains("Item 0"));
    CHECK(text("again.html") == html);
    choose(find<QComboBox>(page, "visitUnitComboBox"), "quillmere");
    CHECK(text("other.html").contains("Visit to Quillmere"));
    CHECK(text("visit.pdf").startsWith("%PDF"));
}

TEST_CASE("a weight that is set changes the order at once, is told on, and can be put back")
{
    UnitsBench bench;
    UnitsPage& page = bench.open();
    std::vector<VisitWeights> told;
    QObject::connect(&page, &UnitsPage::weightsChanged, &page,
        [&](const VisitWeights& weights) { told.push_back(weights); });
    const double before = page.review()->visits.front().points;
    type(find<QDoubleSpinBox>(page, "weight-often-missing"), "9");
    CHECK(page.review()->visits.front().points == doctest::Approx(before + 6));
    REQUIRE(told.size() == 1);
    CHECK(told[0].oftenMissing == 9);
    QTest::mouseClick(&find<QPushButton>(page, "weightsBackButton"), Qt::LeftButton);
    CHECK(page.review()->visits.front().points == doctest::Approx(before));
    CHECK(find<QDoubleSpinBox>(page, "weight-often-missing").value() == 3);
    CHECK(told.size() == 2);
}

TEST_CASE("one level of facility is compared alone, and the choice is told on to be kept")
{
    UnitsBench bench;
    UnitsPage& page = bench.open();
    std::vector<UnitsChoice> told;
    QObject::connect(
        &page, &UnitsPage::choiceChanged, &page, [&](const UnitsChoice& choice) { told.push_back(choice); });
    auto& level = find<QComboBox>(page, "unitsLevelComboBox");
    REQUIRE(level.count() == 3);
    CHECK(page.review()->units.size() == 3);
    choose(level, "primary");
    CHECK(page.review()->units.size() == 2);
    REQUIRE_FALSE(told.empty());
    CHECK(told.back().level == "primary");
    CHECK(find<WrapLabel>(page, "unitsSpan").text().contains(QStringLiteral("2 units")));
}

TEST_CASE("what was looked at last comes back: span, level and weights")
{
    UnitsBench bench;
    const UnitsChoice choice{
        .span = UnitsChoice::monthsUpTo(std::chrono::year(2026) / 10, 3), .level = "district"};
    UnitsPage& page = bench.open(unitsChoiceFromText(toText(choice)), *weightsFromText("often-missing=0"));
    CHECK(page.choice() == choice);
    CHECK(page.review()->units.size() == 1);
    CHECK(page.review()->options.weights.oftenMissing == 0);
    CHECK(find<QPushButton>(page, "unitsLongButton").isChecked());
}

TEST_CASE("a text that is no choice of whole months is none")
{
    const UnitsChoice choice{.span = UnitsChoice::monthsUpTo(std::chrono::year(2026) / 10, 1), .level = {}};
    CHECK(toText(choice) == QStringLiteral("2026-10-01/2026-11-01"));
    CHECK(unitsChoiceFromText(toText(choice)) == choice);
    CHECK_FALSE(choice.isLong());
    for (const char* text :
        {"", "2026-10-01", "2026-11-01/2026-10-01", "2026-10-02/2026-11-01", "2026-10-01/2026-11-01;lvl=x"})
        CHECK_FALSE(unitsChoiceFromText(QLatin1String(text)));
}
