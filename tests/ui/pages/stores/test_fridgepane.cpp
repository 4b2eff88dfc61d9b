// SPDX-License-Identifier: MIT
#include "ui/pages/stores/fridgepane.h"

#include "tests/support/qstringprint.h"
#include "tests/ui/window/wardwindow.h"
#include "ui/widgets/factsheet.h"

#include <QComboBox>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

std::vector<Added> twoFridges()
{
    return {{.device = {.id = "fridge-1", .kind = EquipmentKind::Fridge, .label = "Ward fridge"}},
        {.device = {.id = "fridge-2", .kind = EquipmentKind::Fridge, .label = "Vaccine fridge"}}};
}

std::vector<Fact> shown(const WardWindow& ward)
{
    std::vector<Fact> facts;
    for (const FactSheet* sheet : ward.window->findChildren<FactSheet*>()) {
        if (sheet->isVisible())
            facts.push_back(sheet->fact());
    }
    return facts;
}

}

TEST_CASE("every fridge of the ward is shown, and a reading goes to the one that is chosen")
{
    WardWindow ward(afternoon, twoFridges());
    ward.open();
    ward.press(Qt::Key_4, Qt::AltModifier);
    ward.press(Qt::Key_3, Qt::ControlModifier);
    REQUIRE(shown(ward).size() == 2);
    CHECK(shown(ward)[0].title == QStringLiteral("Ward fridge"));
    CHECK(shown(ward)[1].title == QStringLiteral("Vaccine fridge"));
    ward.find("whichFridgeComboBox").setFocus();
    ward.press(Qt::Key_End);
    ward.find("celsiusEdit").setFocus();
    ward.type(QStringLiteral("5.1\n"));
    const auto readings = must(ward.store->fridgeReadings("sorrel-hill", fromMs(0)));
    REQUIRE(readings.size() == 1);
    CHECK(readings[0].fridge == "fridge-2");
    CHECK(shown(ward)[0].value == QStringLiteral("not read yet"));
    CHECK(shown(ward)[1].value == QStringLiteral("5.1 °C, 14:00"));
    CHECK(ward.find<QComboBox>("whichFridgeComboBox").currentText() == QStringLiteral("Vaccine fridge"));
}

TEST_CASE("one fridge alone is not asked after")
{
    WardWindow ward(afternoon, {twoFridges().front()});
    ward.open();
    ward.press(Qt::Key_4, Qt::AltModifier);
    ward.press(Qt::Key_3, Qt::ControlModifier);
    CHECK_FALSE(ward.find("whichFridgeComboBox").isVisible());
    ward.type(QStringLiteral("4.2\n"));
    CHECK(must(ward.store->fridgeReadings("sorrel-hill", fromMs(0))).at(0).fridge == "fridge-1");
}
