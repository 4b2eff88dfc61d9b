// SPDX-License-Identifier: MIT
#include "tests/ui/flows/wardweek.h"

#include "ui/widgets/factsheet.h"
#include "ui/widgets/verdictbanner.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>

namespace cradlepost::test {

using namespace std::chrono;

namespace {

constexpr auto zoneOffset = 5h + 30min;

QString words(const char* text) { return QString::fromUtf8(text); }

Instant momentOf(int day, int hour, int minute)
{
    return sys_days(2026y / 11 / day) + hours(hour) + minutes(minute) - zoneOffset;
}

std::vector<Added> devices()
{
    return {{.device = {.id = "warmer-1",
                 .kind = EquipmentKind::Warmer,
                 .label = "Warmer 1",
                 .serves = {"warmer-function-test"},
                 .serviceDays = 180}},
        {.device = {.id = "warmer-2", .kind = EquipmentKind::Warmer, .label = "Warmer 2"},
            .state = EquipmentState::Spare},
        {.device = {.id = "fridge-1", .kind = EquipmentKind::Fridge, .label = "Ward fridge"}}};
}

/** A shelf for each part of a kit: filled up to 12 kits, ordered at 4, never under 2. */
StockItem partOfKit(const char* id, const char* name, std::int64_t each, std::int64_t pack = 1)
{
    return {.id = id,
        .name = name,
        .levels = {.par = 12 * each, .minimum = 4 * each, .emergency = 2 * each},
        .packSize = pack,
        .serves = {"delivery-kits"}};
}

std::vector<StockItem> shelves()
{
    StockItem oxytocin{.id = "oxytocin",
        .name = "Oxytocin ampoules",
        .levels = {.par = 40, .minimum = 15, .emergency = 5},
        .expires = true,
        .fridge = "fridge-1",
        .packSize = 10,
        .serves = {"oxytocin"}};
    StockItem vitaminK{.id = "vitamin-k",
        .name = "Vitamin K ampoules",
        .levels = {.par = 24, .minimum = 10, .emergency = 4},
        .expires = true,
        .packSize = 6,
        .serves = {"vitamin-k"}};
    return {oxytocin, vitaminK, partOfKit("sheet", "Plastic sheets", 1), partOfKit("ties", "Cord ties", 2),
        partOfKit("blade", "Blades", 1), partOfKit("soap", "Soap", 1), partOfKit("gauze", "Gauze", 5, 10),
        partOfKit("cloths", "Cloths", 2)};
}

}

WardWeek::WardWeek()
    : WardWindow(momentOf(22, 20, 0), devices())
{
    for (StockItem item : shelves()) {
        item.at = clock.now();
        must(store->describeStockItem("sorrel-hill", item, "AB"));
    }
    WardWindow::open();
}

void WardWeek::until(int day, int hour, int minute)
{
    clock.set(momentOf(day, hour, minute));
    window->ward().refresh();
    settle();
}

void WardWeek::inCharge(const char* initials) const
{
    pick("actorComboBox", initials);
    REQUIRE(window->ward().actor() == initials);
}

void WardWeek::open(Qt::Key place, Qt::Key part) const
{
    press(place, Qt::AltModifier);
    if (part != Qt::Key_unknown)
        press(part, Qt::ControlModifier);
}

void WardWeek::choose(const char* table, const char* title) const
{
    const auto& list = find<ActionTable>(table);
    REQUIRE(QApplication::focusWidget() == &list);
    press(Qt::Key_Home);
    for (int row = 0; row < list.itemCount() && !list.itemText(list.cursor()).contains(words(title)); ++row)
        press(Qt::Key_Down);
    REQUIRE(list.itemText(list.cursor()).contains(words(title)));
}

QString WardWeek::rowOf(const char* table, const char* title) const
{
    const auto& list = find<ActionTable>(table);
    for (int row = 0; row < list.itemCount(); ++row) {
        if (list.itemText(row).contains(words(title)))
            return list.itemText(row);
    }
    return {};
}

void WardWeek::click(const char* button) const
{
    auto& found = find<QPushButton>(button);
    REQUIRE(found.isVisible());
    QTest::mouseClick(&found, Qt::LeftButton);
    settle();
}

void WardWeek::clickRow(const char* table, const char* title) const
{
    auto& list = find<ActionTable>(table);
    for (int row = 0; row < list.itemCount(); ++row) {
        if (!list.itemText(row).contains(words(title)))
            continue;
        QTest::mouseClick(&list, Qt::LeftButton, {}, list.itemRect(row).center());
        settle();
        return;
    }
    FAIL("no row " << title);
}

void WardWeek::tabTo(const char* field) const
{
    for (int i = 0; i < 10 && QApplication::focusWidget() != &find(field); ++i)
        press(Qt::Key_Tab);
    REQUIRE(QApplication::focusWidget() == &find(field));
}

void WardWeek::pick(const char* comboBox, const char* entry) const
{
    auto& box = find<QComboBox>(comboBox);
    box.setFocus();
    press(Qt::Key_Home);
    for (int i = 1; i < box.count() && !box.currentText().startsWith(words(entry)); ++i)
        press(Qt::Key_Down);
    REQUIRE(box.currentText().startsWith(words(entry)));
}

void WardWeek::enter(
    const char* shelf, const char* happened, const char* pieces, const char* lastDay, const char* lot) const
{
    open(Qt::Key_4, Qt::Key_1);
    choose("shelvesTable", shelf);
    press(Qt::Key_Return);
    pick("kindComboBox", happened);
    tabTo("piecesEdit");
    test::type(words(pieces));
    if (lastDay != nullptr) {
        tabTo("expiryEdit");
        test::type(words(lastDay));
        tabTo("lotEdit");
        test::type(words(lot));
    }
    press(Qt::Key_Return);
    REQUIRE(text("formSaid") == QStringLiteral("Kept."));
}

void WardWeek::useForBirth() const
{
    for (const auto& [shelf, pieces] : {std::pair("Plastic sheets", "1"), std::pair("Cord ties", "2"),
             std::pair("Blades", "1"), std::pair("Soap", "1"), std::pair("Gauze", "5"),
             std::pair("Cloths", "2"), std::pair("Oxytocin", "1"), std::pair("Vitamin K", "1")})
        enter(shelf, "Used", pieces);
}

void WardWeek::readFridge(const char* celsius, const char* lowest, const char* highest) const
{
    open(Qt::Key_4, Qt::Key_3);
    REQUIRE(QApplication::focusWidget() == &find("celsiusEdit"));
    test::type(words(celsius));
    if (highest != nullptr) {
        tabTo("lowestEdit");
        test::type(words(lowest));
        tabTo("highestEdit");
        test::type(words(highest));
    }
    press(Qt::Key_Return);
    REQUIRE(text("celsiusSaid") == QStringLiteral("Kept."));
}

void WardWeek::happensTo(const char* device, const char* deed) const
{
    open(Qt::Key_4, Qt::Key_2);
    choose("devicesTable", device);
    press(Qt::Key_Return);
    pick("deedComboBox", deed);
    tabTo("deviceWhoEdit");
    press(Qt::Key_Return);
    REQUIRE(text("deviceSaid").startsWith(QStringLiteral("Kept")));
}

void WardWeek::walkRound(const Keys& keys) const
{
    const Checklist checklist = must(store->checklist("shift-readiness", 1));
    open(Qt::Key_2);
    test::type(QStringLiteral("\n"));
    REQUIRE(walkByKeys(checklist, keys) == static_cast<int>(checklist.itemCount()));
    press(Qt::Key_Return, Qt::ControlModifier);
    REQUIRE(must(store->drafts("sorrel-hill")).empty()); // it is recorded
}

void WardWeek::expectBirth(const char* about) const
{
    open(Qt::Key_1);
    press(Qt::Key_B);
    REQUIRE(QApplication::focusWidget() == &find("birthTimeEdit"));
    test::type(words(about) + QLatin1Char('\n'));
}

void WardWeek::switchWarmer(const char* warmer) const
{
    open(Qt::Key_1);
    press(Qt::Key_B);
    clickRow("warmersTable", warmer);
}

void WardWeek::born() const
{
    open(Qt::Key_1);
    press(Qt::Key_B);
    click("bornButton");
}

void WardWeek::signHandover() const
{
    open(Qt::Key_1);
    press(Qt::Key_H);
    click("signButton");
}

QStringList WardWeek::allPages() const
{
    QStringList all;
    for (const Qt::Key place : {Qt::Key_1, Qt::Key_3, Qt::Key_4, Qt::Key_5, Qt::Key_6})
        open(place);
    open(Qt::Key_1);
    press(Qt::Key_H);
    press(Qt::Key_Escape);
    press(Qt::Key_B);
    for (const auto* label : window->findChildren<WrapLabel*>())
        all << label->text();
    for (const auto* table : window->findChildren<ActionTable*>()) {
        for (int row = 0; row < table->itemCount(); ++row)
            all << table->itemText(row);
    }
    for (const auto* sheet : window->findChildren<FactSheet*>())
        all << sheet->fact().title << sheet->fact().value << sheet->fact().aside << sheet->fact().lines;
    for (const auto* banner : window->findChildren<VerdictBanner*>())
        all << banner->accessibleName() << banner->accessibleDescription();
    return all;
}

}
