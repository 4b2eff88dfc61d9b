// SPDX-License-Identifier: MIT
#include "tests/support/builders.h"
#include "tests/support/qstringprint.h"
#include "ui/pages/stores/storespage.h"
#include "ui/widgets/actiontable.h"
#include "ui/widgets/wraplabel.h"

#include <doctest/doctest.h>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

constexpr char unit[] = "sorrel-hill";

/** A ward with a shelf of oxytocin and one of towels, and a fridge; the page on it. */
struct Bench
{
    Bench()
    {
        for (const auto& [id, name, expires] :
            {std::tuple("oxytocin", "Oxytocin ampoules", true), std::tuple("towels", "Towels", false)})
            must(store->describeStockItem(unit,
                {.id = id,
                    .name = name,
                    .at = clock.now(),
                    .levels = {.par = 20, .minimum = 8, .emergency = 4},
                    .expires = expires,
                    .packSize = 10,
                    .serves = {id}},
                "AB"));
        must(store->moveStock(unit,
            {{.item = "oxytocin", .at = clock.now(), .quantity = 9, .lot = "A1", .expiry = 2026y / 12 / 31},
                {.item = "towels", .at = clock.now(), .quantity = 30}},
            "AB"));
        must(store->noteEquipment(unit,
            {{.device = "fridge-1",
                 .at = clock.now(),
                 .deed = Added{.device
                     = {.id = "fridge-1", .kind = EquipmentKind::Fridge, .label = "Ward fridge"}}},
                {.device = "scale-1",
                    .at = clock.now(),
                    .deed = Added{.device
                        = {.id = "scale-1", .kind = EquipmentKind::Scale, .label = "Baby scale"}}},
                {.device = "warmer-1",
                    .at = clock.now(),
                    .deed = Added{.device
                        = {.id = "warmer-1", .kind = EquipmentKind::Warmer, .label = "Warmer 1"}}},
                {.device = "warmer-2",
                    .at = clock.now(),
                    .deed
                    = Added{.device = {.id = "warmer-2", .kind = EquipmentKind::Warmer, .label = "Warmer 2"},
                        .state = EquipmentState::Spare}}},
            "AB"));
        ward.refresh();
        ward.setActor("AB");
        page = std::make_unique<StoresPage>(ward);
        page->resize(1200, 700);
        page->show();
        page->activateWindow();
        static_cast<void>(QTest::qWaitForWindowActive(page.get()));
        find<ActionTable>("shelvesTable").setFocus();
    }

    template <class T> T& find(const char* name) { return *page->findChild<T*>(QLatin1String(name)); }
    /** Each letter a key of whatever has the keyboard; '\t' goes to the next field. */
    void type(const QString& keys) const
    {
        for (const QChar c : keys) {
            QWidget* const now = QApplication::focusWidget();
            REQUIRE(now != nullptr);
            QTest::keyClick(now, c.toLatin1());
            QApplication::processEvents();
        }
    }
    void press(Qt::Key key) const
    {
        REQUIRE(QApplication::focusWidget() != nullptr);
        QTest::keyClick(QApplication::focusWidget(), key);
        QApplication::processEvents();
    }
    void pressWith(Qt::KeyboardModifier modifier, Qt::Key key) const
    {
        REQUIRE(QApplication::focusWidget() != nullptr);
        QTest::keyClick(QApplication::focusWidget(), key, modifier);
        QApplication::processEvents();
    }
    /** A real click in the middle of a row. */
    void click(ActionTable& table, const QString& title) const
    {
        for (int i = 0; i < table.itemCount(); ++i) {
            if (!table.itemText(i).contains(title))
                continue;
            QTest::mouseClick(&table, Qt::LeftButton, {}, table.itemRect(i).center());
            QApplication::processEvents();
            return;
        }
        FAIL("no row " << title.toStdString());
    }
    EquipmentStanding device(const std::string& id) const
    {
        return must(store->equipmentRegister(unit)).devices.at(id);
    }
    std::int64_t pieces(const std::string& item) const
    {
        return must(store->stockBook(unit)).at(item).pieces();
    }

    TempDir dir;
    FixedClock clock{sys_days(2026y / 11 / 24) + 2h};
    Language language{QStringLiteral("en")};
    std::unique_ptr<Store> store = aStore(dir.file("ward.db"), clock);
    Ward ward{*store, clock, language, unit};
    std::unique_ptr<StoresPage> page;
};

/** A round of the shift that counts towels and the one lot of oxytocin, an hour from now. */
void countInRound(Bench& bench, int towels, int oxytocin)
{
    bench.clock.advance(hours(1)); // a round sees each item a little before it is finished
    const Checklist checklist
        = must(bench.store->checklistFor(unit, RoundKind::Shift, 2026y / 11 / 24)).checklist;
    const RoundRecord round
        = aRound(checklist)
              .on(2026y / 11 / 24)
              .finishedAt(bench.clock.now())
              .withAnswer("towels", Counted{.lots = {{.quantity = towels, .expiry = {}, .number = {}}}})
              .withAnswer(
                  "oxytocin", Counted{.lots = {{.quantity = oxytocin, .expiry = 2026y / 12 / 31, .number = "A1"}}});
    must(bench.store->saveRound(unit, round, "AB"));
    bench.ward.refresh();
}

}

TEST_CASE("what was used of an item is entered with keys alone, and the answer follows")
{
    Bench bench;
    CHECK(bench.find<WrapLabel>("storesAnswer").text() == QStringLiteral("Nothing has to be ordered now"));
    bench.press(Qt::Key_Return); // the first row: its pieces
    CHECK(QApplication::focusWidget() == &bench.find<QLineEdit>("piecesEdit"));
    bench.type(QStringLiteral("2"));
    bench.press(Qt::Key_Return);
    CHECK(bench.pieces("oxytocin") == 7);
    CHECK(bench.find<WrapLabel>("storesAnswer").text() == QStringLiteral("Oxytocin ampoules: order 20"));
    CHECK(bench.find<WrapLabel>("formSaid").text() == QStringLiteral("Kept."));
    CHECK_FALSE(bench.store->verify().value().fault.has_value());
}

TEST_CASE("what cannot be is said beside its field, and nothing is written")
{
    Bench bench;
    bench.press(Qt::Key_Return);
    bench.press(Qt::Key_Return);
    CHECK(bench.find<WrapLabel>("piecesSaid").text() == QStringLiteral("Give the pieces as a whole number."));
    bench.type(QStringLiteral("50"));
    bench.press(Qt::Key_Return); // more than the book holds
    CHECK(bench.find<WrapLabel>("piecesSaid").text().startsWith(QStringLiteral("The book holds 9 of these 50 pieces.")));
    bench.type(QStringLiteral("3")); // typed over
    bench.find<QLineEdit>("expiryEdit").setFocus();
    bench.type(QStringLiteral("31 Dec"));
    bench.press(Qt::Key_Return);
    CHECK(bench.find<WrapLabel>("expirySaid").text() == QStringLiteral("Write the date as year-month-day, 2027-03-31."));
    CHECK(bench.pieces("oxytocin") == 9);
}

TEST_CASE("who writes is asked when nobody is known")
{
    Bench bench;
    bench.press(Qt::Key_Return);
    bench.find<QLineEdit>("whoEdit").clear();
    bench.type(QStringLiteral("1"));
    bench.press(Qt::Key_Return);
    CHECK(bench.find<WrapLabel>("whoSaid").text() == QStringLiteral("Say who you are: your initials."));
    CHECK(QApplication::focusWidget() == &bench.find<QLineEdit>("whoEdit"));
    bench.type(QStringLiteral("cd"));
    bench.press(Qt::Key_Return);
    CHECK(bench.pieces("oxytocin") == 8);
}

TEST_CASE("the last round's other count is offered and puts the book right with one more key")
{
    Bench bench;
    countInRound(bench, 26, 9);
    auto& differences = bench.find<ActionTable>("differencesTable");
    REQUIRE(differences.itemCount() == 1);
    CHECK(differences.itemText(0).contains(QStringLiteral("counted 26, the book says 30")));
    differences.setFocus();
    bench.press(Qt::Key_Return);
    CHECK(bench.find<QLineEdit>("piecesEdit").text() == QStringLiteral("26"));
    bench.find<QLineEdit>("piecesEdit").setFocus();
    bench.press(Qt::Key_Return);
    CHECK(bench.pieces("towels") == 26);
    CHECK(differences.itemCount() == 0);
}

TEST_CASE("the fridge's reading is kept with Enter, and a word is refused")
{
    Bench bench;
    bench.pressWith(Qt::ControlModifier, Qt::Key_3);
    auto& celsius = bench.find<QLineEdit>("celsiusEdit");
    CHECK(QApplication::focusWidget() == &celsius);
    bench.type(QStringLiteral("cold"));
    bench.press(Qt::Key_Return);
    CHECK(bench.find<WrapLabel>("celsiusSaid").text() == QStringLiteral("Give each reading as a number, for example 4.5."));
    celsius.clear();
    bench.type(QStringLiteral("4.6"));
    bench.press(Qt::Key_Return);
    const auto readings = must(bench.store->fridgeReadings(unit, fromMs(0)));
    REQUIRE(readings.size() == 1);
    CHECK(readings[0].celsius == Decimal{4600});
}

TEST_CASE("the lowest and highest since the last reset are kept with a reading, and an excursion is told")
{
    Bench bench;
    bench.pressWith(Qt::ControlModifier, Qt::Key_3);
    bench.type(QStringLiteral("4.6\t"));
    CHECK(QApplication::focusWidget() == &bench.find<QLineEdit>("lowestEdit"));
    bench.type(QStringLiteral("-1\t9"));
    bench.press(Qt::Key_Return);
    const auto readings = must(bench.store->fridgeReadings(unit, fromMs(0)));
    REQUIRE(readings.size() == 1);
    CHECK(readings[0].lowest == Decimal{-1000});
    CHECK(readings[0].highest == Decimal{9000});
    CHECK(bench.find<WrapLabel>("fridgeAbout").text().contains(QStringLiteral("Too warm")));
}

TEST_CASE(
    "a device that fails goes out with keys alone, its spare steps in, and both go back when it is mended")
{
    Bench bench;
    bench.pressWith(Qt::ControlModifier, Qt::Key_2);
    auto& devices = bench.find<ActionTable>("devicesTable");
    REQUIRE(devices.itemCount() == 4);
    bench.clock.advance(days(10));
    bench.click(devices, QStringLiteral("Warmer 1"));
    CHECK(QApplication::focusWidget() == &bench.find<QComboBox>("deedComboBox"));
    CHECK(bench.find<QComboBox>("deedComboBox").currentText() == QStringLiteral("Goes out: does not work"));
    bench.find<QLineEdit>("deviceWhoEdit").setFocus();
    bench.press(Qt::Key_Return);
    CHECK(bench.device("warmer-1").state() == EquipmentState::OutForRepair);
    CHECK(bench.device("warmer-2").state() == EquipmentState::InUse);
    CHECK(bench.find<WrapLabel>("deviceSaid").text() == QStringLiteral("Kept; the spare changed places with it."));
    CHECK(bench.find<WrapLabel>("storesSentence").text().contains(QStringLiteral("Warmer 1: out for repair")));
    bench.clock.advance(hours(30));
    bench.ward.refresh();
    CHECK(bench.find<QComboBox>("deedComboBox").currentText() == QStringLiteral("In use again"));
    bench.find<QLineEdit>("deviceWhoEdit").setFocus();
    bench.press(Qt::Key_Return);
    CHECK(bench.device("warmer-1").state() == EquipmentState::InUse);
    CHECK(bench.device("warmer-2").state() == EquipmentState::Spare);
    CHECK(bench.find<WrapLabel>("deviceAbout").text().contains(QStringLiteral("1 failure, one in 10 days")));
}

TEST_CASE("a scale is checked with a known weight: within one division is good, more reads wrong")
{
    Bench bench;
    bench.pressWith(Qt::ControlModifier, Qt::Key_2);
    bench.click(bench.find<ActionTable>("devicesTable"), QStringLiteral("Baby scale"));
    auto& weight = bench.find<QLineEdit>("trueEdit");
    REQUIRE(weight.isVisible());
    weight.setFocus();
    bench.press(Qt::Key_Return);
    CHECK(bench.find<WrapLabel>("deviceSaid").text()
        == QStringLiteral("Give both weights in whole grams, for example 3500."));
    bench.type(QStringLiteral("3000"));
    bench.find<QLineEdit>("shownEdit").setFocus();
    bench.type(QStringLiteral("3024"));
    bench.press(Qt::Key_Return);
    REQUIRE(bench.device("scale-1").scaleCheck.has_value());
    CHECK(bench.device("scale-1").scaleCheck->what == ScaleChecked{.known = 3000, .read = 3024});
    CHECK(bench.find<WrapLabel>("deviceAbout").text().contains(QStringLiteral("off by 24 g, allowed 10 g")));
    CHECK(bench.find<WrapLabel>("storesSentence").text().contains(QStringLiteral("Baby scale: reads wrong.")));
}

TEST_CASE("the page's figures are those worked by hand")
{
    Bench bench;
    for (int day = 1; day <= 20; ++day) {
        bench.clock.advance(days(1));
        must(bench.store->moveStock(unit,
            {{.item = "towels", .kind = MovementKind::Issue, .at = bench.clock.now(), .quantity = 1}}, "AB"));
    }
    bench.clock.advance(days(1));
    bench.ward.refresh();
    // 21 days up to yesterday, 20 pieces used: 0.95 a day; 10 left last 10.5 days.
    auto& shelves = bench.find<ActionTable>("shelvesTable");
    bench.click(shelves, QStringLiteral("Towels"));
    const QString about = bench.find<WrapLabel>("shelfAbout").text();
    CHECK(about.contains(QStringLiteral("Fill up to 20, order at 8, never under 4.")));
    CHECK(about.contains(QStringLiteral("Used: 1.0 a day.")));
    CHECK(about.contains(QStringLiteral("0.3 months")));
    // 9 ampoules until 31 December: 16 days from 15 December, none used.
    CHECK(bench.find<WrapLabel>("storesExpiring")
              .text()
              .contains(QStringLiteral("9 within 30 days, 0 in 31 to 60, 0 in 61 to 90")));
    CHECK(bench.find<WrapLabel>("storesExpiring").text().contains(QStringLiteral("9 will expire unused")));
}

TEST_CASE("a ward without a book begins with what its checklist counts, and a first device, by keyboard")
{
    TempDir dir;
    FixedClock clock{sys_days(2026y / 11 / 24) + 2h};
    const Language language{QStringLiteral("en")};
    const auto store = aStore(dir.file("ward.db"), clock);
    Ward ward{*store, clock, language, unit};
    ward.refresh();
    ward.setActor("AB");
    StoresPage page(ward);
    page.resize(1200, 700);
    page.show();
    page.activateWindow();
    static_cast<void>(QTest::qWaitForWindowActive(&page));
    auto* begin = page.findChild<QPushButton*>(QLatin1String("beginBookButton"));
    REQUIRE(begin->isVisible());
    begin->setFocus();
    QTest::keyClick(begin, Qt::Key_Space);
    CHECK_FALSE(begin->isVisible());
    CHECK(page.findChild<ActionTable*>(QLatin1String("shelvesTable"))->itemCount() > 10);
    QTest::keyClick(
        QApplication::focusWidget() ? QApplication::focusWidget() : &page, Qt::Key_2, Qt::ControlModifier);
    auto* name = page.findChild<QLineEdit*>(QLatin1String("newNameEdit"));
    REQUIRE(name->isVisible());
    name->setFocus();
    QTest::keyClicks(name, QStringLiteral("Warmer by the window"));
    QTest::keyClick(name, Qt::Key_Return);
    const auto known = must(store->equipmentRegister(unit));
    REQUIRE(known.devices.size() == 1);
    CHECK(known.devices.at("warmer-1").device.label == "Warmer by the window");
}

TEST_CASE("a lot that the round counted otherwise is told by its number and its day")
{
    Bench bench;
    countInRound(bench, 30, 8);
    auto& differences = bench.find<ActionTable>("differencesTable");
    REQUIRE(differences.itemCount() == 1);
    CHECK(differences.itemText(0).contains(QStringLiteral("Lot A1 · 2026-12-31")));
}
