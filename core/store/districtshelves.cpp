// SPDX-License-Identifier: MIT
#include "core/store/districtshelves.h"

#include "core/store/storesview.h"

namespace cradlepost {

namespace {

Result<UnitShelves> shelvesOf(const Store& store, const std::string& unit, Instant now)
{
    UnitShelves shelves{.unit = unit, .shelves = {}};
    const auto items = store.stockItems(unit);
    if (!items)
        return tl::unexpected(items.error());
    if (items->empty())
        return shelves;
    const auto shift = shiftView(store, unit, now);
    if (!shift)
        return shift.error().code == ErrorCode::NotFound ? Result<UnitShelves>(shelves)
                                                         : tl::unexpected(shift.error());
    const auto view = storesView(store, *shift, now);
    if (!view)
        return tl::unexpected(view.error());
    for (const ShelfRow& row : view->shelves)
        shelves.shelves.push_back({.item = row.item,
            .usable = row.usable,
            .perDay = row.perDay,
            .daysToDelivery = std::max(0, daysBetween(view->today, row.nextDelivery))});
    return shelves;
}

}

Result<std::vector<UnitShelves>> districtShelves(
    const Store& store, const std::vector<std::string>& units, Instant now)
{
    std::vector<UnitShelves> all;
    for (const std::string& unit : units) {
        auto one = shelvesOf(store, unit, now);
        if (!one)
            return tl::unexpected(one.error());
        all.push_back(std::move(*one));
    }
    return all;
}

}
