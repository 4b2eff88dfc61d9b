// SPDX-License-Identifier: MIT
#include "core/supply/bookagainstround.h"

namespace cradlepost {

namespace {

using Pieces = std::map<LotKey, std::int64_t>;

/** What of a lot is compared: as fine as the round named its lots. */
enum class Grain { Whole, ByDate, ByLot };

Grain grainOf(const SeenCount& seen)
{
    Grain grain = Grain::Whole;
    for (const BookLot& lot : seen.lots) {
        if (!lot.key.number.empty())
            return Grain::ByLot;
        if (lot.key.expiry)
            grain = Grain::ByDate;
    }
    return grain;
}

/** Whether `lot` says more of the same lot than `named` does. */
bool tellsMore(const LotKey& lot, const LotKey& named)
{
    const bool number = named.number.empty() || lot.number == named.number;
    const bool date = !named.expiry || lot.expiry == named.expiry;
    return number && date && lot != named;
}

/**
 * A lot as the round named it, with the date or number that only one lot of the book can give it. It stays as
 * it is when the book has it just so, or when the round itself tells it from such a lot.
 */
LotKey completed(const LotKey& named, const std::vector<BookLot>& seen, const std::vector<BookLot>& book)
{
    if (named.number.empty() && !named.expiry)
        return named;
    const auto more = [&](const BookLot& lot) { return tellsMore(lot.key, named); };
    const auto same = [&](const BookLot& lot) { return lot.key == named; };
    const auto only = std::find_if(book.begin(), book.end(), more);
    if (std::any_of(book.begin(), book.end(), same) || std::any_of(seen.begin(), seen.end(), more)
        || std::count_if(book.begin(), book.end(), more) != 1)
        return named;
    return only->key;
}

CountScope scopeOf(Grain grain)
{
    switch (grain) {
    case Grain::ByDate:
        return CountScope::OneDate;
    case Grain::ByLot:
        return CountScope::OneLot;
    case Grain::Whole:
        break;
    }
    return CountScope::Everything;
}

Pieces sorted(const std::vector<BookLot>& lots, Grain grain)
{
    Pieces pieces;
    for (const BookLot& lot : lots) {
        LotKey key = lot.key;
        if (grain != Grain::ByLot)
            key.number.clear();
        if (grain == Grain::Whole)
            key.expiry.reset();
        pieces[key] += lot.pieces;
    }
    return pieces;
}

BookDifference difference(
    const SeenCount& seen, Grain grain, const LotKey& lot, std::int64_t there, std::int64_t book)
{
    return {.item = seen.item,
        .lot = grain == Grain::Whole ? std::nullopt : std::optional(lot),
        .seen = there,
        .book = book,
        .correction = {.item = seen.item,
            .kind = MovementKind::CountCorrection,
            .at = seen.at,
            .quantity = there,
            .lot = lot.number,
            .expiry = lot.expiry,
            .reason = MovementReason::NotKnown,
            .scope = scopeOf(grain)}};
}

}

std::vector<SeenCount> seenInKit(const KitPlan& plan, std::span<const int> parts, Instant at)
{
    std::vector<SeenCount> seen;
    for (std::size_t i = 0; i < plan.parts.size() && i < parts.size(); ++i) {
        const std::string& item = plan.parts[i].item;
        auto same
            = std::find_if(seen.begin(), seen.end(), [&](const SeenCount& s) { return s.item == item; });
        if (same == seen.end())
            same = seen.insert(seen.end(), {.item = item, .at = at, .lots = {BookLot{}}});
        same->lots.front().pieces += parts[i];
    }
    return seen;
}

std::vector<BookDifference> againstBook(const SeenCount& seen, const StockBook& book)
{
    const auto found = book.find(seen.item);
    if (found == book.end())
        return {};
    const Grain grain = grainOf(seen);
    std::vector<BookLot> lots = seen.lots;
    for (BookLot& lot : lots)
        lot.key = completed(lot.key, seen.lots, found->second.lots);
    Pieces there = sorted(lots, grain);
    const Pieces held = sorted(found->second.lots, grain);
    for (const auto& [key, pieces] : held)
        there.try_emplace(key, 0);
    std::vector<BookDifference> out;
    for (const auto& [key, pieces] : there) {
        const auto inBook = held.find(key);
        const std::int64_t booked = inBook == held.end() ? 0 : inBook->second;
        if (pieces != booked)
            out.push_back(difference(seen, grain, key, pieces, booked));
    }
    return out;
}

}
