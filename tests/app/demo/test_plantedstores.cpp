// SPDX-License-Identifier: MIT
// What is planted in shelves, devices and fridges of the demo, found as the page finds it.
#include "core/store/storesview.h"
#include "larkmere.h"

#include <algorithm>
#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::demo;

namespace {

StoresView storesOf(const std::string& unit)
{
    const Store& store = Larkmere::whole().store();
    const auto shift = shiftView(store, unit, writtenAt);
    REQUIRE(shift.has_value());
    auto view = storesView(store, *shift, writtenAt);
    REQUIRE(view.has_value());
    return std::move(*view);
}

}

TEST_CASE("every ward of the demo keeps shelves, devices and a fridge, in few records")
{
    for (const std::string& unit : Larkmere::units()) {
        CAPTURE(unit);
        const StoresView view = storesOf(unit);
        CHECK(view.shelves.size() > 20);
        CHECK(view.devices.size() == 10);
        CHECK(view.fridges.size() == 1);
        CHECK_FALSE(view.kits.empty());
        const auto movements = Larkmere::whole().store().stockMovements(unit);
        REQUIRE(movements.has_value());
        CHECK(movements->size() < 350);
        for (const ShelfRow& row : view.shelves)
            CHECK(row.book.explained() == row.book.pieces());
    }
}

TEST_CASE("the round and the book disagree in one place of the district: a forgotten box that has expired")
{
    for (const std::string& unit : Larkmere::units()) {
        CAPTURE(unit);
        const StoresView view = storesOf(unit);
        if (unit != sorrelHill) {
            CHECK(view.differences.empty());
            continue;
        }
        REQUIRE(view.differences.size() == 1);
        CHECK(view.differences[0].item == "magnesium-sulphate");
        CHECK(view.differences[0].seen == 0);
        CHECK(view.differences[0].book == 4);
        const auto shelf = std::find_if(view.shelves.begin(), view.shelves.end(),
            [](const ShelfRow& row) { return row.item.id == "magnesium-sulphate"; });
        REQUIRE(shelf != view.shelves.end());
        CHECK(shelf->expiring.expired == 4);
    }
}

TEST_CASE("Sorrel Hill's warmer was out for three weeks while its spare stood in, and both are back")
{
    const auto known = Larkmere::whole().store().equipmentRegister(sorrelHill);
    REQUIRE(known.has_value());
    const auto& warmer = known->devices.at("warmer-1").spans;
    const auto& spare = known->devices.at("warmer-2").spans;
    REQUIRE(warmer.size() == 3);
    REQUIRE(spare.size() == 3);
    CHECK(warmer[1].state == EquipmentState::OutForRepair);
    CHECK(warmer[2].from - warmer[1].from == std::chrono::days(21));
    CHECK(spare[1].state == EquipmentState::InUse);
    CHECK(spare[1].from == warmer[1].from);
    CHECK(spare[2].state == EquipmentState::Spare);
}

TEST_CASE("Hallow Down's fridge was too warm for some days, with what was inside; it is well now")
{
    const FridgeRow fridge = storesOf(hallowDown).fridges.at(0);
    REQUIRE_FALSE(fridge.excursions.empty());
    const Excursion& warm = fridge.excursions.back();
    CHECK(warm.kind == ExcursionKind::TooWarm);
    CHECK(warm.atLeast() > std::chrono::days(2));
    CHECK(warm.alarm == AlarmState::Reached);
    CHECK_FALSE(warm.open);
    CHECK_FALSE(fridge.inside.empty());
    CHECK(fridge.kinetic->celsius > 4.6);
}
