// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/stockmovement.h"

#include <map>
#include <span>

namespace cradlepost {

/** What tells one lot from another. Sorts by first expiry; without a date it stands last, then by number. */
struct LotKey
{
    std::optional<Date> expiry;
    std::string number;
    bool operator==(const LotKey&) const = default;
    std::strong_ordering operator<=>(const LotKey& other) const;
    /** A lot without a date is usable on any day. */
    [[nodiscard]] bool usableOn(Date day) const { return !expiry || *expiry >= day; }
};

struct BookLot
{
    LotKey key;
    std::int64_t pieces = 0; ///< above 0
    bool operator==(const BookLot&) const = default;
};

enum class DiscrepancyKind {
    Shortfall, ///< more went out than the book held: the book went to 0
    Counted, ///< a count found more or fewer than the book
};

/** Pieces that no movement explains. */
struct Discrepancy
{
    FactId by; ///< the movement that brought it to light
    Instant at;
    DiscrepancyKind kind = DiscrepancyKind::Shortfall;
    LotKey lot; ///< as the movement named it
    std::int64_t difference = 0; ///< added to the book; a shortfall is above 0
    MovementReason reason = MovementReason::None;
    bool operator==(const Discrepancy&) const = default;
};

/** One item: what is there by lot, and what came and went as written. */
struct ItemBook
{
    std::vector<BookLot> lots; ///< first to expire first
    std::map<MovementKind, std::int64_t> totals; ///< as written, without count corrections
    std::vector<Discrepancy> discrepancies;
    std::vector<FactId> issuedExpired; ///< movements that gave out a named lot past its day for use
    Instant lastMovement;
    bool operator==(const ItemBook&) const = default;

    [[nodiscard]] std::int64_t pieces() const;
    [[nodiscard]] std::int64_t usableOn(Date day) const;
    [[nodiscard]] std::int64_t expiredOn(Date day) const { return pieces() - usableOn(day); }
    [[nodiscard]] std::int64_t total(MovementKind kind) const;
    /** In less out as written plus the discrepancies: always equal to pieces(). */
    [[nodiscard]] std::int64_t explained() const;
};

using StockBook = std::map<std::string, ItemBook>; ///< by item id

/**
 * Lays one movement over the book; `day` is its local day. The book is never below 0 and never refuses: what
 * is recorded has happened. What goes out without a lot takes what is in date, first to expire first (for
 * ExpiredRemoved: what is past its day); with a lot number or date it takes from the lots that fit, in date
 * or not. What the book does not hold becomes a Shortfall. A count says what it was of; fewer pieces leave
 * first to expire first, more go to the one lot of that date that was counted, else to the lot as named,
 * which for a count of the whole item is one without a date.
 */
void apply(StockBook& book, const Recorded<StockMovement>& movement, Date day);

/** The book of all these movements in the order in which they happened, whatever order they are given in. */
StockBook foldStock(std::vector<Recorded<StockMovement>> movements, const TimeZone& zone);
/** The book just after `until`. */
StockBook foldStockUntil(std::vector<Recorded<StockMovement>> movements, const TimeZone& zone, Instant until);

/**
 * Whether a person may enter `movement` now: it is sound, the item is known and not retired, an expiring item
 * comes in with its date, and not more goes out than the book holds. The hint says what to do: count the
 * shelf first. A record that arrives from elsewhere is not held against this; apply takes it and keeps the
 * shortfall.
 */
Result<void> checkEntry(
    const StockBook& book, const StockItem& item, const StockMovement& movement, Date day);

}
