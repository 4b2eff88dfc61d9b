// SPDX-License-Identifier: MIT
// What the forms refuse is told whole in the reader's language.
#include "ui/pages/stores/storespage.h"

#include "tests/support/qstringprint.h"
#include "tests/ui/window/wardwindow.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

constexpr char unit[] = "sorrel-hill";

std::vector<Added> devices()
{
    std::vector<Added> all = twoWarmers();
    for (const auto& [id, kind] :
        {std::pair("fridge-1", EquipmentKind::Fridge), std::pair("scale-1", EquipmentKind::Scale),
            std::pair("thermometer-1", EquipmentKind::Thermometer)})
        all.push_back({.device = {.id = id, .kind = kind, .label = "अ"}});
    return all;
}

/** The window in Hindi, with a shelf of oxytocin, nine ampoules on it. */
struct HindiWard : WardWindow
{
    HindiWard()
        : WardWindow(afternoon, devices(), {}, QStringLiteral("hi"))
    {
        must(store->describeStockItem(unit,
            {.id = "oxytocin",
                .name = "अ",
                .at = clock.now(),
                .levels = {.par = 20, .minimum = 8},
                .expires = true},
            "A. T."));
        must(store->moveStock(unit,
            {{.item = "oxytocin", .at = clock.now(), .quantity = 9, .expiry = 2027y / 3 / 31}}, "A. T."));
        open();
        press(Qt::Key_4, Qt::AltModifier);
    }
    /** Hindi is there, and no Latin letter but units and examples. */
    void checkTold(const char* said, const char* field)
    {
        CAPTURE(field);
        static const QRegularExpression unitsOnly(QStringLiteral("°C"));
        QString told = text(said);
        CHECK(find(said).isVisible());
        CHECK(told.contains(QRegularExpression(QStringLiteral("\\p{Devanagari}"))));
        CHECK_FALSE(told.remove(unitsOnly).contains(QRegularExpression(QStringLiteral("[A-Za-z]"))));
    }
    void choose(const char* combo, int index) const
    {
        auto& box = find<QComboBox>(combo);
        box.setFocus();
        press(Qt::Key_Home);
        for (int i = 0; i < index; ++i)
            press(Qt::Key_Down);
        REQUIRE(box.currentIndex() == index);
    }
};

}

TEST_CASE("a Hindi reader is told in Hindi why a movement of stock is not taken, at the field it is about")
{
    HindiWard ward;
    ward.press(Qt::Key_1, Qt::ControlModifier);
    ward.fill("piecesEdit", QStringLiteral("50")); // used: more than the book holds
    ward.press(Qt::Key_Return);
    ward.checkTold("piecesSaid", "held");
    CHECK(ward.text("piecesSaid").contains(QStringLiteral("9")));
    CHECK(ward.text("piecesSaid").contains(QStringLiteral("50")));
    ward.fill("piecesEdit", QStringLiteral("0"));
    ward.press(Qt::Key_Return);
    ward.checkTold("piecesSaid", "none");
    ward.choose("kindComboBox", 0); // came in, with no last day of use
    ward.fill("piecesEdit", QStringLiteral("5"));
    ward.press(Qt::Key_Return);
    ward.checkTold("expirySaid", "last day");
    CHECK(QApplication::focusWidget() == &ward.find("expiryEdit"));
    CHECK(must(ward.store->stockBook(unit)).at("oxytocin").pieces() == 9);
}

TEST_CASE("a Hindi reader is told in Hindi why a shelf is not taken")
{
    HindiWard ward;
    ward.press(Qt::Key_1, Qt::ControlModifier);
    ward.push("changeShelfButton");
    ward.fill("minimumSpinBox", QStringLiteral("30"));
    ward.push("keepShelfButton");
    ward.checkTold("shelfSaid", "levels");
    CHECK(ward.text("shelfSaid").contains(QStringLiteral("30")));
    ward.fill("shelfNameEdit", {});
    ward.fill("minimumSpinBox", QStringLiteral("8"));
    ward.push("keepShelfButton");
    ward.checkTold("shelfSaid", "name");
    CHECK(must(ward.store->stockItems(unit)).front().levels.minimum == 8);
}

TEST_CASE("a Hindi reader is told in Hindi why a fridge's reading is not taken")
{
    HindiWard ward;
    ward.press(Qt::Key_3, Qt::ControlModifier);
    for (const auto& [celsius, lowest] : {std::pair("99", ""), std::pair("4", "6"), std::pair("x", "")}) {
        ward.fill("celsiusEdit", QLatin1String(celsius));
        ward.fill("lowestEdit", QLatin1String(lowest));
        ward.press(Qt::Key_Return);
        ward.checkTold("celsiusSaid", celsius);
    }
    CHECK(must(ward.store->fridgeReadings(unit, fromMs(0))).empty());
}

TEST_CASE("a Hindi reader is told in Hindi why a check of a scale or a thermometer is not taken")
{
    HindiWard ward;
    ward.press(Qt::Key_2, Qt::ControlModifier);
    auto& table = ward.find<ActionTable>("devicesTable");
    int checks = 0;
    for (int row = 0; row < table.itemCount(); ++row) {
        table.setCursorAt(row);
        ward.settle();
        if (!ward.find("trueEdit").isVisible())
            continue;
        ++checks;
        for (const char* shown : {"99999", "1.2.3"}) {
            ward.fill("trueEdit", QStringLiteral("37"));
            ward.fill("shownEdit", QLatin1String(shown));
            ward.press(Qt::Key_Return);
            ward.checkTold("deviceSaid", shown);
        }
    }
    CHECK(checks == 2);
    const EquipmentRegister known = must(ward.store->equipmentRegister(unit));
    CHECK_FALSE(known.devices.at("scale-1").scaleCheck.has_value());
    CHECK_FALSE(known.devices.at("thermometer-1").thermometerCheck.has_value());
}

TEST_CASE("a Hindi reader is told in Hindi why a new device is not taken")
{
    HindiWard ward;
    ward.press(Qt::Key_2, Qt::ControlModifier);
    ward.fill("newDaysEdit", QStringLiteral("9999"));
    ward.press(Qt::Key_Return);
    ward.checkTold("newDeviceSaid", "no name");
    ward.fill("newNameEdit", QStringLiteral("x"));
    ward.press(Qt::Key_Return);
    ward.checkTold("newDeviceSaid", "days");
    CHECK(must(ward.store->equipmentRegister(unit)).devices.size() == devices().size());
}

TEST_CASE("a Hindi reader is told in Hindi what the board and the handover do not take")
{
    HindiWard ward;
    ward.press(Qt::Key_1, Qt::AltModifier);
    ward.press(Qt::Key_B);
    REQUIRE(ward.window->place() == Place::Board);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("2570"));
    ward.press(Qt::Key_Return);
    ward.checkTold("boardSaid", "no time");
    ward.press(Qt::Key_Escape);
    ward.press(Qt::Key_H);
    REQUIRE(ward.window->place() == Place::Handover);
    ward.push("signButton");
    ward.push("signButton"); // the same person takes it
    CHECK_FALSE(must(ward.store->lastHandover(unit))->taken.has_value());
    ward.checkTold("handoverSaid", "giver takes");
}
