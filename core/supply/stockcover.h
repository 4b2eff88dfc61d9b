// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/stockitem.h"

#include "core/stats/demand.h"

namespace cradlepost {

/** How long the usable pieces last at the mean rate; none at all when nothing is used. */
struct Cover
{
    double shifts = 0;
    double days = 0;
    double months = 0; ///< of 30.5 days
};
std::optional<Cover> coverOf(std::int64_t usable, double perDay, int shiftsPerDay);

/** Births that the pieces are enough for, rounded down; perBirth above 0. */
std::int64_t birthsServed(std::int64_t pieces, Decimal perBirth);
/** Pieces for so many births, rounded up. */
std::int64_t piecesFor(std::int64_t births, Decimal perBirth);

/** What drives the need: births a shift, fitted to the unit's own counts. */
struct BirthDemand
{
    stats::Demand perShift;
    stats::LeadTimeModel model = stats::LeadTimeModel::RateDrawnOnce;
};

/**
 * Gamma-Poisson when the counts spread more than Poisson's, else Poisson. One count a shift, shifts without a
 * birth included. Errors as stats::fitDemand.
 */
Result<BirthDemand> birthDemand(std::span<const std::int64_t> birthsPerShift);

struct UntilDelivery
{
    std::int64_t enoughFor = 0; ///< births
    double expected = 0; ///< births until then
    double lasts = 1; ///< P(births <= enoughFor): no birth goes without
    double unmet = 0; ///< mean number of births that go without
};

/** `shifts` until the next delivery, above 0. */
Result<UntilDelivery> untilDelivery(
    std::int64_t usable, Decimal perBirth, const BirthDemand& demand, double shifts);

struct OrderAdvice
{
    std::int64_t reorderAt = 0; ///< pieces: order when usable plus on order falls to this
    std::int64_t safety = 0; ///< pieces above the mean need over the lead time, rounded up
    std::int64_t order = 0; ///< pieces now, whole packs; 0 while above reorderAt
};

/**
 * `service`: the chance of no stock-out until the delivery, 0 <= service < 1. The order fills up to par, or
 * to reorderAt where par is below it.
 */
Result<OrderAdvice> orderAdvice(const StockItem& item, std::int64_t usable, std::int64_t onOrder,
    const BirthDemand& demand, double leadShifts, double service);

/** Levels in months of stock, for shelves that a store fills at fixed times. */
struct MonthLevels
{
    double lead = 0; ///< months from order to shelf
    double review = 0; ///< months between orders
    double safety = 0;
};
struct MinMax
{
    double minimumMonths = 0;
    double maximumMonths = 0;
    std::int64_t minimum = 0; ///< pieces, rounded up
    std::int64_t maximum = 0;
    std::int64_t order = 0; ///< maximum less what is there and on order, not below 0
};

/**
 * Forced ordering: minimum = lead + safety, maximum = minimum + review. Source: The Logistics Handbook, 2nd
 * ed. 2011, sec. 4.6 (the split from memory).
 */
Result<MinMax> forcedOrder(
    const MonthLevels& levels, double monthlyUse, std::int64_t usable, std::int64_t onOrder);

}
