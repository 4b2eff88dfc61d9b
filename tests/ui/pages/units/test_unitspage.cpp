// SPDX-License-Identifier: MIT
#include "ui/pages/units/unitspage.h"

#include "tests/support/builders.h"
#include "tests/support/qstringprint.h"
#include "ui/charts/chartview.h"
#include "ui/widgets/findingslist.h"
#include "ui/widgets/wraplabel.h"
#include "ui/window/mainwindow.h"

#include <doctest/doctest.h>
#include <QApplication>
#include <QFile>
#include <QPushButton>
#include <QTest>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

constexpr Date october = 2026y / 10 / 1;

std::string criticalItem(const Checklist& checklist)
{
    for (std::size_t i = 0; i < checklist.itemCount(); ++i) {
        if (checklist.item(i).severity == Severity::Critical && checklist.item(i).kind() == ItemKind::Confirm)
            return checklist.item(i).id;
    }
    return {};
}

/** October in three wards: two do well, in Penny Weir something critical is missing on three days of four. */
struct District
{
    District()
        : store(aStore(folder.file("district.db"), clock, aPlainAdoption(12)))
    {
        addUnit(
            *store, {.id = "penny-weir", .name = "Penny Weir", .zone = "Asia/Kolkata"}, aPlainAdoption(12));
        addUnit(*store, {.id = "quillmere", .name = "Quillmere", .zone = "Asia/Kolkata"}, aPlainAdoption(12));
        walk("sorrel-hill", 10);
        walk("penny-weir", 0);
        walk("quillmere", 11);
    }

    /** A gap on one day in `gapEvery`, or on three in four when it is 0. */
    void walk(const std::string& unit, int gapEvery)
    {
        const Checklist checklist = must(store->checklist("plain", 1));
        const std::string item = criticalItem(checklist);
        REQUIRE_FALSE(item.empty());
        std::vector<WalkedRound> rounds;
        for (int day = 0; day < 31; ++day) {
            RoundBuilder round = aRound(checklist).on(addDays(october, day));
            if (gapEvery == 0 ? day % 4 != 0 : day % gapEvery == 3)
                round.withGap(item);
            rounds.push_back({.round = round.done(), .actor = "AB"});
        }
        must(store->saveRounds(unit, rounds));
    }

    TempDir folder;
    FixedClock clock{sys_days(2026y / 11 / 3) + 6h};
    std::unique_ptr<Store> store;
    Language language{QStringLiteral("en")};
};

QString textOf(const QWidget& page, const char* name)
{
    const auto* label = page.findChild<WrapLabel*>(QLatin1String(name));
    REQUIRE(label);
    return label->text();
}

}

TEST_CASE("Alt+6 opens Units, which says first whom to see, and why")
{
    District district;
    MainWindow window(*district.store, district.clock, district.language, {});
    window.resize(1366, 768);
    window.show();
    window.activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(&window));
    QTest::keyClick(&window, Qt::Key_6, Qt::AltModifier);
    QApplication::processEvents();
    REQUIRE(window.place() == Place::Units);
    auto* page = window.page(Place::Units)->findChild<UnitsPage*>();
    REQUIRE(page);
    REQUIRE(page->review());
    CHECK(page->choice().span == ReviewSpan::ofMonth(2026y / 10));
    CHECK(textOf(*page, "unitsAnswer") == QStringLiteral("See Penny Weir first"));
    CHECK(textOf(*page, "unitsCompany").contains(QStringLiteral("missing in 23 of 31 rounds")));
    const auto* findings = page->findChild<FindingsList*>();
    REQUIRE(findings->itemCount() > 1);
    CHECK(findings->itemText(0).contains(QStringLiteral("Penny Weir")));
}

TEST_CASE("Enter on a sentence leads to the chart it was made from")
{
    District district;
    MainWindow window(*district.store, district.clock, district.language, {});
    window.resize(1366, 768);
    window.show();
    window.activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(&window));
    window.openPlace(Place::Units);
    auto* page = window.page(Place::Units)->findChild<UnitsPage*>();
    auto* findings = page->findChild<FindingsList*>();
    findings->setFocus();
    QTest::keyClick(findings, Qt::Key_Return);
    const auto* visits = page->findChild<ChartView*>(QStringLiteral("units-visits"));
    REQUIRE(visits);
    REQUIRE(QApplication::focusWidget());
    CHECK(visits->isAncestorOf(QApplication::focusWidget()));
}

TEST_CASE("the month before has no rounds, and the page says so")
{
    District district;
    Ward ward(*district.store, district.clock, district.language, "sorrel-hill");
    ward.refresh();
    UnitsPage page(ward, std::nullopt, {});
    page.resize(1200, 700);
    page.show();
    QTest::mouseClick(page.findChild<QPushButton*>(QStringLiteral("unitsBeforeButton")), Qt::LeftButton);
    CHECK(page.choice().span == ReviewSpan::ofMonth(2026y / 9));
    CHECK(textOf(page, "unitsAnswer") == QStringLiteral("No rounds"));
    QTest::mouseClick(page.findChild<QPushButton*>(QStringLiteral("unitsAfterButton")), Qt::LeftButton);
    QTest::mouseClick(page.findChild<QPushButton*>(QStringLiteral("unitsLongButton")), Qt::LeftButton);
    CHECK(page.choice().span == ReviewSpan{.from = 2026y / 8 / 1, .to = 2026y / 11 / 1});
    CHECK(textOf(page, "unitsAnswer") == QStringLiteral("See Penny Weir first"));
}

TEST_CASE("the report comes in five forms, each with the unit to see first")
{
    District district;
    Ward ward(*district.store, district.clock, district.language, "sorrel-hill");
    ward.refresh();
    UnitsPage page(ward, std::nullopt, {});
    page.resize(1200, 700);
    page.show();
    for (const char* ending : {"pdf", "html", "xlsx", "csv", "json"}) {
        const QString path = QString::fromStdString(district.folder.file(std::string("units.") + ending));
        must(page.writeReport(path));
        QFile file(path);
        REQUIRE(file.open(QIODevice::ReadOnly));
        const QByteArray bytes = file.readAll();
        CHECK(bytes.size() > 1000);
        if (qstrcmp(ending, "pdf") != 0 && qstrcmp(ending, "xlsx") != 0)
            CHECK_MESSAGE(bytes.contains("Penny Weir"), ending);
    }
}
