// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/stockbook.h"

namespace cradlepost {

/** What was used on one day. */
struct DayUse
{
    Date day;
    std::int64_t used = 0; ///< issued
    bool out = false; ///< the day ended with nothing usable in the book
    bool operator==(const DayUse&) const = default;
};

/** One item: its book after all movements and its days. */
struct ItemDays
{
    ItemBook book;
    std::vector<DayUse> days;
};

/**
 * The days first..last of one item, from its movements in order of time; days before the first movement are
 * left out.
 */
ItemDays daysOfItem(
    const std::vector<Recorded<StockMovement>>& movements, const TimeZone& zone, Date first, Date last);

/** Pieces used on the days that did not end empty: what was asked for when it could be had. */
std::vector<std::int64_t> useWhileInStock(const std::vector<DayUse>& days);

}
