// SPDX-License-Identifier: MIT
#include "core/store/districtshelves.h"

#include "core/store/shelfrow.h"

#include <algorithm>
#include <cmath>

namespace cradlepost {

namespace {

constexpr int anyShifts = 1; // a stand says nothing in shifts

/** Movements lie by item, then by time. */
std::vector<ShelfStand> standsOf(const std::vector<StockItem>& items,
    std::span<const Recorded<StockMovement>> movements, const ShelfReader& reader)
{
    std::vector<ShelfStand> stands;
    for (const StockItem& item : items) {
        const auto from = std::find_if(movements.begin(), movements.end(),
            [&](const auto& one) { return one.what.item >= item.id; });
        const auto to
            = std::find_if(from, movements.end(), [&](const auto& one) { return one.what.item != item.id; });
        ShelfStand stand = reader.stand(item, {from, to});
        if (!item.retired || stand.usable > 0)
            stands.push_back(std::move(stand));
        movements = {to, movements.end()};
    }
    const auto daysLeft = [](const ShelfStand& stand) {
        return stand.perDay.value_or(0) > 0 ? static_cast<double>(stand.usable) / *stand.perDay : INFINITY;
    };
    std::stable_sort(stands.begin(), stands.end(), [&](const ShelfStand& a, const ShelfStand& b) {
        return std::pair(daysLeft(a), a.item.name) < std::pair(daysLeft(b), b.item.name);
    });
    return stands;
}

}

Result<std::vector<UnitShelves>> districtShelves(
    const Store& store, const std::vector<std::string>& units, Instant now)
{
    const auto known = store.units();
    if (!known)
        return tl::unexpected(known.error());
    std::vector<UnitShelves> all;
    for (const std::string& unit : units) {
        const auto described = std::find_if(
            known->begin(), known->end(), [&](const Unit& one) { return one.id == unit; });
        const auto items = store.stockItems(unit);
        if (!items)
            return tl::unexpected(items.error());
        all.push_back({.unit = unit, .shelves = {}});
        if (described == known->end() || items->empty())
            continue;
        const auto zone = TimeZone::named(described->zone);
        const auto movements = store.stockMovements(unit);
        if (!zone || !movements)
            return tl::unexpected(zone ? movements.error() : zone.error());
        const StoresRules rules;
        all.back().shelves
            = standsOf(*items, *movements, ShelfReader(rules, *zone, zone->toLocal(now).date, anyShifts));
    }
    return all;
}

}
