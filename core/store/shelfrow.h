// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/storesview.h"
#include "core/supply/transfer.h"

#include <span>

namespace cradlepost {

/** Works out what one shelf says on one day. */
class ShelfReader
{
public:
    /** `rules` must outlive it. */
    ShelfReader(const StoresRules& rules, const TimeZone& zone, Date today, int shiftsPerDay)
        : m_rules(rules)
        , m_zone(zone)
        , m_today(today)
        , m_shiftsPerDay(shiftsPerDay)
    {
    }

    /** `movements`: all of that item, in order of time. */
    [[nodiscard]] ShelfRow shelf(
        const StockItem& item, std::span<const Recorded<StockMovement>> movements) const;

    /** What of it a comparison of units needs. */
    [[nodiscard]] ShelfStand stand(
        const StockItem& item, std::span<const Recorded<StockMovement>> movements) const;

private:
    [[nodiscard]] Date nextDelivery(
        const StockItem& item, std::span<const Recorded<StockMovement>> movements) const;
    void foresee(ShelfRow& row, const PeriodUse& use) const;

    const StoresRules& m_rules;
    TimeZone m_zone;
    Date m_today;
    int m_shiftsPerDay;
};

/** What needs an order first, then by cover, then by name. */
void sortShelves(std::vector<ShelfRow>& shelves);

}
