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
    std::span<const Recorded<StockMovement>> movements, const TimeZone& zone, Date first, Date last);

/** Pieces used on the days that did not end empty: what was asked for when it could be had. */
std::vector<std::int64_t> useWhileInStock(const std::vector<DayUse>& days);

/** Use in stretches of equal length. */
struct PeriodUse
{
    int days = 1; ///< each stretch
    std::vector<std::int64_t> used; ///< the last one ends with the last day
    bool operator==(const PeriodUse&) const = default;
};
/**
 * A book that is written up once a week shows six empty days and a large one: as days these would look like
 * wild demand. So days are gathered into stretches as long as the usual time between two days with use (the
 * median, the upper of two); what is left over at the beginning is dropped. Our own rule, no source.
 */
PeriodUse asWrittenUp(const std::vector<std::int64_t>& perDay);

}
