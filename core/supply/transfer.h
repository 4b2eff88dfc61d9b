// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/distance.h"
#include "core/supply/stockitem.h"

namespace cradlepost {

/** What may move, as the district sets it: our own choice, no source. */
struct TransferRules
{
    int coverDays = 30; ///< a giver keeps at least what it uses in so many days
};

/** One item on the shelf of one unit now. */
struct ShelfStand
{
    StockItem item;
    std::int64_t usable = 0; ///< pieces in date
    std::optional<double> perDay; ///< pieces used a day; none when nothing is known of it
    int daysToDelivery = 0;
};

/** The shelves of one unit. */
struct UnitShelves
{
    std::string unit; ///< id
    std::vector<ShelfStand> shelves;
};

/** What a unit keeps before it gives: its par, and what it uses in coverDays or until its delivery, the
 * largest. */
std::int64_t ownCover(const ShelfStand& shelf, const TransferRules& rules);
/**
 * Pieces that it lacks: from its minimum down, or when it will not last until the delivery at its usual rate,
 * what fills it up to par, or to what is used until then where that is more. Else 0.
 */
std::int64_t shortage(const ShelfStand& shelf);
/** Whether it will not last until the delivery at its usual rate, or nothing is left. */
bool runsOut(const ShelfStand& shelf);

struct Transfer
{
    std::string item; ///< id
    std::string name; ///< as the taker calls it
    std::size_t from = 0; ///< positions in the list of units
    std::size_t to = 0;
    std::int64_t pieces = 0;
    std::int64_t metres = 0; ///< 0: not known
};

/** How an item stands over all units: one row a unit that lacks it or could give. */
struct ItemBalance
{
    std::string item;
    std::string name;
    std::size_t unit = 0;
    std::int64_t usable = 0;
    std::int64_t cover = 0; ///< ownCover
    std::int64_t lacks = 0; ///< shortage
    std::int64_t spare = 0; ///< above its cover
    std::int64_t unmet = 0; ///< of what it lacks, after the transfers
};

struct TransferPlan
{
    std::vector<Transfer> moves; ///< by item, then giver, then taker
    std::vector<ItemBalance> balances; ///< by item, then unit
    std::int64_t pieceMetres = 0; ///< pieces times metres, over all moves
    bool byDistance = false; ///< no: no distance is known, any way counts the same
};

/**
 * Shortage and surplus of each item over the units (one item: the same id), and the transfers that meet most
 * of the need over the least pieces times metres (core/stats/transport.h). No giver goes below its own cover.
 * Where distances are known, nothing moves between units whose distance is not. Retired items stay where they
 * are.
 */
Result<TransferPlan> planTransfers(
    const std::vector<UnitShelves>& units, const DistanceTable& distances, const TransferRules& rules = {});

}
