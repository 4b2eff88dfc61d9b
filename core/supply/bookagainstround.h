// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/kits.h"

namespace cradlepost {

/** What a round counted of one stock item. */
struct SeenCount
{
    std::string item; ///< stock item
    Instant at;
    std::vector<BookLot> lots; ///< as counted; 0 pieces are allowed; date and number where the round has them
};

/** The parts of a kit as a round counted them, in the order of the plan. Parts that share an item are added.
 */
std::vector<SeenCount> seenInKit(const KitPlan& plan, std::span<const int> parts, Instant at);

/** Where round and book disagree. Nothing is put right by itself. */
struct BookDifference
{
    std::string item;
    std::optional<LotKey> lot; ///< none: the whole item
    std::int64_t seen = 0;
    std::int64_t book = 0;
    StockMovement correction; ///< to offer; its reason is NotKnown until a person gives one
    bool operator==(const BookDifference&) const = default;
};

/**
 * Holds a count against the book. When the round names no date the whole item is compared; when it names
 * dates without lot numbers, each date; else each lot. `book` is the one at the time of the count; an item
 * without a book gives nothing.
 */
std::vector<BookDifference> againstBook(const SeenCount& seen, const StockBook& book);

}
