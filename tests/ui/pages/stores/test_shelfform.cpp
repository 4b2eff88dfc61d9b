// SPDX-License-Identifier: MIT
#include "ui/pages/stores/shelfform.h"

#include "tests/support/qstringprint.h"
#include "tests/ui/window/wardwindow.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QSpinBox>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

constexpr char unit[] = "sorrel-hill";

/** The window on *Stores*, with a shelf of towels. */
struct Bench : WardWindow
{
    Bench()
    {
        must(store->describeStockItem(unit,
            {.id = "towels",
                .name = "Towels: clean, dry and warm",
                .at = clock.now(),
                .levels = {.par = 20, .minimum = 8, .emergency = 4},
                .serves = {"towels"}},
            "A. T."));
        open();
        press(Qt::Key_4, Qt::AltModifier);
        press(Qt::Key_1, Qt::ControlModifier);
    }
    [[nodiscard]] StockItem item(const std::string& id) const
    {
        for (const StockItem& one : must(store->stockItems(unit)))
            if (one.id == id)
                return one;
        return {};
    }
};

}

TEST_CASE("levels, delivery and the chance to have enough of a shelf are changed with keys alone")
{
    Bench ward;
    ward.push("changeShelfButton");
    CHECK(QApplication::focusWidget() == &ward.find("shelfNameEdit"));
    CHECK_FALSE(ward.find("piecesEdit").isVisible()); // one form at a time
    ward.fill("minimumSpinBox", QStringLiteral("30"));
    ward.push("keepShelfButton");
    CHECK(ward.text("shelfSaid")
        == QStringLiteral("Never under 4, order at 30, fill up to 20: each is at most the next. "
                          "Change the one that stands out."));
    CHECK(ward.item("towels").levels.minimum == 8);
    ward.fill("parSpinBox", QStringLiteral("60"));
    ward.fill("emergencySpinBox", QStringLiteral("10"));
    ward.fill("packSpinBox", QStringLiteral("5"));
    ward.fill("daysSpinBox", QStringLiteral("14"));
    ward.find("serviceComboBox").setFocus();
    ward.press(Qt::Key_End);
    ward.push("keepShelfButton");
    const StockItem kept = ward.item("towels");
    CHECK(kept.levels == StockLevels{.par = 60, .minimum = 30, .emergency = 10});
    CHECK(kept.packSize == 5);
    CHECK(kept.deliveryDays == 14);
    CHECK(kept.service == Decimal{990});
    CHECK(kept.serves == std::vector<std::string>{"towels"}); // what the form does not show stays
    CHECK(ward.find("piecesEdit").isVisible());
    CHECK(ward.text("shelfAbout").startsWith(QStringLiteral("Fill up to 60, order at 30, never under 10.")));
    CHECK(ward.text("shelfAbout").contains(QStringLiteral("Delivered every 14 days.")));
    CHECK_FALSE(must(ward.store->verify()).fault);
}

TEST_CASE("a new shelf is put up, and one of the same name is not put up twice")
{
    Bench ward;
    ward.push("newShelfButton");
    ward.push("keepShelfButton");
    CHECK(ward.text("shelfSaid") == QStringLiteral("A name has 1 to 60 characters. Say what the ward calls it."));
    ward.fill("shelfNameEdit", QStringLiteral("Cotton wool"));
    ward.fill("parSpinBox", QStringLiteral("12"));
    ward.push("expiresCheckBox");
    ward.push("keepShelfButton");
    CHECK(ward.item("cotton-wool").levels.par == 12);
    CHECK(ward.item("cotton-wool").expires);
    CHECK(ward.find<ActionTable>("shelvesTable").itemCount() == 2);
    CHECK(ward.text("shelfAbout").startsWith(QStringLiteral("Fill up to 12"))); // it is the chosen one
    ward.push("newShelfButton");
    ward.fill("shelfNameEdit", QStringLiteral("cotton wool"));
    ward.push("keepShelfButton");
    CHECK(ward.text("shelfSaid")
        == QStringLiteral("There is a shelf of that name already: change that one."));
    ward.push("leaveShelfButton");
    CHECK(ward.find("piecesEdit").isVisible());
    CHECK(must(ward.store->stockItems(unit)).size() == 2);
}

TEST_CASE("a shelf that is no longer kept and empty leaves the list")
{
    Bench ward;
    ward.push("changeShelfButton");
    ward.push("retiredCheckBox");
    ward.push("keepShelfButton");
    CHECK(ward.item("towels").retired);
    CHECK(ward.find<ActionTable>("shelvesTable").itemCount() == 0);
}

TEST_CASE("a shelf that has its name from the checklist is read in the reader's language")
{
    WardWindow ward;
    must(ward.store->describeStockItem(
        unit, {.id = "towels", .name = "Towels: clean, dry and warm", .at = ward.clock.now()}, "A. T."));
    Language hindi(QStringLiteral("hi"));
    MainWindow window(*ward.store, ward.clock, hindi, Settings{});
    window.resize(1366, 768);
    window.show();
    window.activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(&window));
    QTest::keyClick(&window, Qt::Key_4, Qt::AltModifier);
    const auto* shelves = window.findChild<ActionTable*>(QStringLiteral("shelvesTable"));
    REQUIRE(shelves != nullptr);
    CHECK(shelves->itemText(0).contains(QStringLiteral("तौलिये: साफ़, सूखे, गर्म")));
}
