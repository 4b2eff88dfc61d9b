// SPDX-License-Identifier: MIT
#include "core/base/refusal.h"

#include "core/supply/distance.h"
#include "core/supply/equipment.h"
#include "core/supply/fridgereading.h"
#include "shelf.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

/** The word and its values: "fridge-range -40 60"; empty when it was taken. */
std::string wordOf(const Result<void>& checked)
{
    if (checked)
        return {};
    std::string text = checked.error().refusal;
    for (const std::string& value : checked.error().values)
        text += ' ' + value;
    return text;
}

Result<void> checkDeed(EquipmentDeed deed)
{
    return checkEvent({.device = "d", .at = at("2026-11-24 07:30"), .deed = std::move(deed)});
}

}

TEST_CASE("what a person can mistype of stock is refused with a word and its numbers")
{
    StockMovement used = moved(MovementKind::Issue, 0, "2026-11-24 07:30");
    CHECK(wordOf(checkMovement(used)) == "pieces 1 1000000");
    CHECK(wordOf(checkMovement(countedAll(-1, "2026-11-24 07:30"))) == "pieces 0 1000000");
    used.quantity = 5;
    const StockItem item{.id = used.item, .name = "Towels", .expires = true, .retired = true};
    CHECK(wordOf(checkEntry({}, item, used, day("2026-11-24"))) == "book-holds 0 5");
    StockMovement came = moved(MovementKind::Receipt, 5, "2026-11-24 07:30");
    CHECK(wordOf(checkEntry({}, item, came, day("2026-11-24"))) == "shelf-retired");
    CHECK(wordOf(checkEntry({}, {.id = item.id, .name = "Towels", .expires = true}, came, day("2026-11-24")))
        == "last-day-missing");
    came.lot = std::string(41, 'x');
    CHECK(wordOf(checkMovement(came)) == "lot-number 40");
}

TEST_CASE("what a person can mistype of a shelf is refused with a word and its numbers")
{
    CHECK(wordOf(checkItem({.id = "towels", .name = ""})) == "name 60");
    CHECK(wordOf(checkItem(
              {.id = "towels", .name = "Towels", .levels = {.par = 20, .minimum = 30, .emergency = 4}}))
        == "level-order 4 30 20");
    CHECK(wordOf(checkItem({.id = "towels", .name = "Towels", .levels = {.par = 2'000'000}}))
        == "level-range 1000000");
}

TEST_CASE(
    "what a person can mistype of a fridge, a device or its check is refused with a word and its numbers")
{
    const FridgeReading reading{.fridge = "f", .at = {}, .celsius = num("4"), .lowest = {}, .highest = {}};
    FridgeReading hot = reading;
    hot.celsius = num("61");
    CHECK(wordOf(checkReading(hot)) == "fridge-range -40 60");
    FridgeReading mixed = reading;
    mixed.lowest = num("5");
    CHECK(wordOf(checkReading(mixed)) == "fridge-order");
    CHECK(wordOf(checkDeed(ScaleChecked{.known = 0, .read = 10})) == "scale-range 50000");
    CHECK(wordOf(checkDeed(ScaleChecked{.known = 3000, .read = 50'001})) == "scale-range 50000");
    CHECK(wordOf(checkDeed(ThermometerChecked{.reference = num("37"), .read = num("201")}))
        == "thermometer-range -90 200");
    CHECK(wordOf(checkDeed(ThermometerChecked{.reference = num("37"), .read = num("36.8")})).empty());
    Equipment device{.id = "d", .label = "Scale"};
    CHECK(wordOf(checkDeed(Added{.device = device})).empty());
    device.serviceDays = 3661;
    CHECK(wordOf(checkDeed(Added{.device = device})) == "upkeep-days 3660");
    device.serviceDays = -1;
    CHECK(wordOf(checkDeed(Changed{.device = device})) == "upkeep-days 3660");
    device.serviceDays = 0;
    device.number = std::string(41, '7');
    CHECK(wordOf(checkDeed(Added{.device = device})) == "device-number 40");
    device.label.clear();
    CHECK(wordOf(checkDeed(Added{.device = device})) == "name 60");
}

TEST_CASE("a way that no district is wide enough for is refused with a word and its number")
{
    CHECK(wordOf(checkDistance({.from = "a", .to = "b", .metres = mostMetres + 1, .at = {}}))
        == "distance-range 1000");
}
