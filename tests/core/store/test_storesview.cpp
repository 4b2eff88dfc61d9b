// SPDX-License-Identifier: MIT
#include "core/store/storesview.h"
#include "ward.h"

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

StoresView viewOf(Ward& ward)
{
    const ShiftView shift = must(shiftView(*ward.store, ward.unit, ward.clock.now()));
    return must(storesView(*ward.store, shift, ward.clock.now()));
}

void issue(Ward& ward, std::int64_t pieces)
{
    must(ward.store->moveStock(ward.unit,
        {{.item = "oxytocin", .kind = MovementKind::Issue, .at = ward.clock.now(), .quantity = pieces}},
        "AB"));
}

}

TEST_CASE("a shelf says how many shifts it lasts, the chance until the delivery and what to order")
{
    Ward ward;
    ward.clock.set(sys_days(firstDay) + hours(6));
    ward.stockUp(); // 54 left
    for (int day = 1; day <= 20; ++day) {
        ward.clock.set(sys_days(firstDay) + days(day) + hours(6));
        issue(ward, 2);
    }
    ward.clock.set(sys_days(firstDay) + days(21) + hours(6));
    const StoresView view = viewOf(ward);
    REQUIRE(view.shelves.size() == 1);
    const ShelfRow& row = view.shelves[0];
    CHECK(row.usable == 14);
    CHECK(row.status == StockStatus::BelowMinimum);
    CHECK(row.perDay.value() == doctest::Approx(46.0 / 21));
    CHECK(row.cover->days == doctest::Approx(14 * 21.0 / 46));
    CHECK(row.cover->shifts == doctest::Approx(2 * row.cover->days));
    CHECK(row.nextDelivery == addDays(firstDay, 30));
    // About 20 are asked for in the nine days until then.
    CHECK(row.lasts.value() < 0.3);
    CHECK(row.order == 70); // up to par 80, whole packs of 10
    CHECK(row.expiring.within30 == 0);
    CHECK(row.expiring.within90 == 0);
    CHECK(row.book.lots.size() == 1);
}

TEST_CASE("an expired lot is there but not usable")
{
    Ward ward;
    ward.stockUp();
    ward.clock.set(sys_days(firstDay) + days(60));
    const ShelfRow row = viewOf(ward).shelves.at(0);
    CHECK(row.book.pieces() == 54);
    CHECK(row.usable == 20);
    CHECK(row.expiring.expired == 34);
    CHECK(row.expiring.within90 == 20);
}

TEST_CASE("a round that counted otherwise offers the movement that puts the book right")
{
    Ward ward(anAdoption());
    StockItem item = Ward::anItem(ward.clock.now());
    item.serves = {"oxytocin"};
    must(ward.store->describeStockItem(ward.unit, item, "AB"));
    const Date last = addDays(firstDay, 90);
    must(ward.store->moveStock(ward.unit,
        {{.item = "oxytocin", .at = ward.clock.now(), .quantity = 40, .lot = "A1", .expiry = last}}, "AB"));
    ward.save(ward.round(0).withAnswer(
        "oxytocin", Counted{.lots = {{.quantity = 33, .expiry = last, .number = "A1"}}}));
    const auto differences = viewOf(ward).differences;
    REQUIRE(differences.size() == 1);
    CHECK(differences[0].seen == 33);
    CHECK(differences[0].book == 40);
    ward.clock.advance(minutes(10));
    issue(ward, 3);
    StockMovement correction = differences[0].correction;
    correction.reason = MovementReason::NotWrittenDown;
    must(ward.store->moveStock(ward.unit, {correction}, "AB"));
    CHECK(viewOf(ward).differences.empty());
    CHECK(viewOf(ward).shelves.at(0).usable == 30); // what was issued since stays issued
}

TEST_CASE(
    "kits that can be made up are counted from the parts in the book, and the part that limits is named")
{
    Ward ward(anAdoption());
    const Instant now = ward.clock.now();
    for (const auto& [part, pieces] : {std::pair("sheet", 5), std::pair("ties", 5), std::pair("blade", 9),
             std::pair("soap", 9), std::pair("gauze", 40)}) {
        must(ward.store->describeStockItem(ward.unit, {.id = part, .name = part, .at = now}, "AB"));
        must(ward.store->moveStock(ward.unit, {{.item = part, .at = now, .quantity = pieces}}, "AB"));
    }
    CHECK(viewOf(ward).kits.empty()); // cloths are not kept in the book
    must(ward.store->describeStockItem(ward.unit, {.id = "cloths", .name = "Cloths", .at = now}, "AB"));
    must(ward.store->moveStock(ward.unit, {{.item = "cloths", .at = now, .quantity = 30}}, "AB"));
    const StoresView view = viewOf(ward);
    REQUIRE(view.kits.size() == 1);
    CHECK(view.kits[0].possible.kits == 2);
    CHECK(view.kits[0].possible.limiting == std::vector<std::string>{"ties"});
}

TEST_CASE("devices come with what is due, and a fridge with its excursions and the reading that is missing")
{
    Ward ward;
    ward.stockUp();
    const Instant begin = ward.clock.now();
    for (int i = 1; i <= 8; ++i) {
        ward.clock.set(begin + hours(12 * i));
        const Decimal celsius{i == 4 || i == 5 ? 11000 : 4000};
        must(ward.store->noteFridge(
            ward.unit, {.fridge = "fridge-1", .at = ward.clock.now(), .celsius = celsius}, "AB"));
    }
    ward.clock.set(begin + days(200));
    const StoresView later = viewOf(ward);
    REQUIRE(later.devices.size() == 2);
    CHECK(later.devices[0].upkeep.at(0).overdue);
    ward.clock.set(begin + hours(97));
    const StoresView view = viewOf(ward);
    REQUIRE(view.fridges.size() == 1);
    REQUIRE(view.fridges[0].excursions.size() == 1);
    CHECK(view.fridges[0].excursions[0].kind == ExcursionKind::TooWarm);
    CHECK(view.fridges[0].excursions[0].worst == Decimal{11000});
    CHECK_FALSE(view.fridges[0].excursions[0].open);
    CHECK(view.fridges[0].verdict.advice == ColdChainAdvice::None);
    CHECK(view.fridges[0].last->celsius == Decimal{4000});
}

TEST_CASE("an item's own days between deliveries and its own chance to have enough go before the site's")
{
    Ward ward;
    ward.clock.set(sys_days(firstDay) + hours(6));
    ward.stockUp();
    for (int day = 1; day <= 20; ++day) {
        ward.clock.set(sys_days(firstDay) + days(day) + hours(6));
        issue(ward, 1);
    }
    ward.clock.set(sys_days(firstDay) + days(21) + hours(6));
    const ShelfRow usual = viewOf(ward).shelves.at(0);
    CHECK(usual.nextDelivery == addDays(firstDay, 30));
    CHECK(usual.service == 0.95);
    StockItem item = Ward::anItem(ward.clock.now());
    item.deliveryDays = 7; // on the 8th, 15th, 22nd
    item.service = Decimal{500};
    must(ward.store->describeStockItem(ward.unit, item, "AB"));
    const ShelfRow own = viewOf(ward).shelves.at(0);
    CHECK(own.nextDelivery == addDays(firstDay, 28));
    CHECK(own.service == 0.5);
    CHECK(own.reorderAt < usual.reorderAt);
    CHECK(own.lasts.value() > usual.lasts.value());
}

TEST_CASE("a cylinder's minutes stand on the register, as the last round read it")
{
    Ward ward(anAdoption());
    must(ward.store->noteEquipment(ward.unit,
        {{.device = "oxygen-source-1",
            .at = ward.clock.now(),
            .deed = Added{.device = {.id = "oxygen-source-1",
                              .kind = EquipmentKind::OxygenSource,
                              .label = "Cylinder",
                              .serves = {"oxygen-cylinder"}}}}},
        "AB"));
    CHECK_FALSE(viewOf(ward).devices.at(0).cylinder.has_value());
    ward.save(ward.round(0).withAnswer(
        "oxygen-cylinder", CylinderRead{.gauge = Decimal{100'000}, .size = "in-b", .flow = Decimal{5000}}));
    const Instant read = ward.clock.now();
    // 10 L for each bar: (100 - 14) x 10 / 5 = 172 minutes; 120 minutes want 14 + 5 x 120 / 10 = 74 bar.
    for (const hours later : {0h, 30h}) {
        ward.clock.set(read + later);
        const auto cylinder = viewOf(ward).devices.at(0).cylinder;
        REQUIRE(cylinder.has_value());
        CHECK(cylinder->minutes == 172);
        CHECK(cylinder->wanted == minutes(120));
        CHECK(cylinder->changeAt == Decimal{74'000});
        CHECK(cylinder->pressure == "bar");
        CHECK(cylinder->at <= read);
    }
}
