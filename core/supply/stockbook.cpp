// SPDX-License-Identifier: MIT
#include "core/supply/stockbook.h"

#include "core/base/refusal.h"

#include <numeric>

namespace cradlepost {

namespace {

/** Whether a movement that names this lot may take from or count `lot`. What is not named fits anything. */
bool fits(const LotKey& lot, const LotKey& named)
{
    return (named.number.empty() || lot.number == named.number)
        && (!named.expiry || lot.expiry == named.expiry);
}

bool namesLot(const LotKey& named) { return named.expiry || !named.number.empty(); }

/** Takes up to `wanted` pieces from the lots that `may` allows, first to expire first; returns what it got.
 */
template <class May> std::int64_t take(std::vector<BookLot>& lots, std::int64_t wanted, May may)
{
    std::int64_t left = wanted;
    for (BookLot& lot : lots) {
        const std::int64_t now = may(lot.key) ? std::min(left, lot.pieces) : 0;
        lot.pieces -= now;
        left -= now;
    }
    std::erase_if(lots, [](const BookLot& lot) { return lot.pieces == 0; });
    return wanted - left;
}

void put(std::vector<BookLot>& lots, const LotKey& key, std::int64_t pieces)
{
    const auto place = std::lower_bound(
        lots.begin(), lots.end(), key, [](const BookLot& lot, const LotKey& k) { return lot.key < k; });
    if (place != lots.end() && place->key == key)
        place->pieces += pieces;
    else
        lots.insert(place, {.key = key, .pieces = pieces});
}

/** Lays one movement over one item's book; every function is one way of moving. */
class Entry
{
public:
    Entry(ItemBook& book, const Recorded<StockMovement>& fact, Date day)
        : m_book(book)
        , m_fact(fact)
        , m_what(fact.what)
        , m_named{.expiry = fact.what.expiry, .number = fact.what.lot}
        , m_day(day)
    {
    }

    void bringIn() { put(m_book.lots, m_named, m_what.quantity); }

    void takeOut()
    {
        const bool past = m_what.kind == MovementKind::ExpiredRemoved;
        const bool named = namesLot(m_named);
        if (m_what.kind == MovementKind::Issue && named && holdsExpired())
            m_book.issuedExpired.push_back(m_fact.id);
        const std::int64_t got = take(m_book.lots, m_what.quantity,
            [&](const LotKey& lot) { return named ? fits(lot, m_named) : lot.usableOn(m_day) != past; });
        if (got < m_what.quantity)
            keep(DiscrepancyKind::Shortfall, m_what.quantity - got);
    }

    void count()
    {
        std::int64_t there = 0;
        int lots = 0;
        LotKey only = m_named;
        for (const BookLot& lot : m_book.lots) {
            if (isCounted(lot.key)) {
                there += lot.pieces;
                only = lot.key;
                ++lots;
            }
        }
        const std::int64_t more = m_what.quantity - there;
        // Pieces that turn up get no date that nobody has read off them.
        if (more > 0)
            put(m_book.lots, lots == 1 && only.expiry == m_named.expiry ? only : m_named, more);
        else
            take(m_book.lots, -more, [&](const LotKey& lot) { return isCounted(lot); });
        if (more != 0)
            keep(DiscrepancyKind::Counted, more);
    }

private:
    [[nodiscard]] bool isCounted(const LotKey& lot) const
    {
        if (m_what.scope == CountScope::OneLot)
            return lot == m_named;
        return m_what.scope == CountScope::Everything || lot.expiry == m_named.expiry;
    }
    [[nodiscard]] bool holdsExpired() const
    {
        return std::any_of(m_book.lots.begin(), m_book.lots.end(),
            [&](const BookLot& lot) { return fits(lot.key, m_named) && !lot.key.usableOn(m_day); });
    }
    void keep(DiscrepancyKind kind, std::int64_t difference)
    {
        m_book.discrepancies.push_back({.by = m_fact.id,
            .at = m_what.at,
            .kind = kind,
            .lot = m_named,
            .difference = difference,
            .reason = m_what.reason});
    }

    ItemBook& m_book;
    const Recorded<StockMovement>& m_fact;
    const StockMovement& m_what;
    LotKey m_named;
    Date m_day;
};

template <class May> std::int64_t sum(const std::vector<BookLot>& lots, May may)
{
    return std::accumulate(lots.begin(), lots.end(), std::int64_t{0},
        [&](std::int64_t s, const BookLot& lot) { return s + (may(lot.key) ? lot.pieces : 0); });
}

tl::unexpected<Error> refuse(
    const char* word, std::vector<std::string> values, const std::string& what, std::string hint)
{
    return tl::unexpected(refused(word, std::move(values), "stock movement: " + what, std::move(hint)));
}

}

std::strong_ordering LotKey::operator<=>(const LotKey& other) const
{
    if (expiry.has_value() != other.expiry.has_value())
        return expiry ? std::strong_ordering::less : std::strong_ordering::greater;
    if (expiry && *expiry != *other.expiry)
        return *expiry <=> *other.expiry;
    return number <=> other.number;
}

std::int64_t ItemBook::pieces() const
{
    return sum(lots, [](const LotKey&) { return true; });
}

std::int64_t ItemBook::usableOn(Date day) const
{
    return sum(lots, [&](const LotKey& lot) { return lot.usableOn(day); });
}

std::int64_t ItemBook::total(MovementKind kind) const
{
    const auto found = totals.find(kind);
    return found == totals.end() ? 0 : found->second;
}

std::int64_t ItemBook::explained() const
{
    std::int64_t pieces = 0;
    for (const auto& [kind, quantity] : totals)
        pieces += goesIn(kind) ? quantity : -quantity;
    for (const Discrepancy& one : discrepancies)
        pieces += one.difference;
    return pieces;
}

void apply(StockBook& book, const Recorded<StockMovement>& movement, Date day)
{
    const StockMovement& what = movement.what;
    ItemBook& item = book[what.item];
    Entry entry(item, movement, day);
    if (goesIn(what.kind))
        entry.bringIn();
    else if (goesOut(what.kind))
        entry.takeOut();
    else
        entry.count();
    if (what.kind != MovementKind::CountCorrection)
        item.totals[what.kind] += what.quantity;
    item.lastMovement = std::max(item.lastMovement, what.at);
}

StockBook foldStockUntil(std::vector<Recorded<StockMovement>> movements, const TimeZone& zone, Instant until)
{
    StockBook book;
    for (const auto& movement : inOrder(std::move(movements))) {
        if (movement.what.at <= until)
            apply(book, movement, zone.toLocal(movement.what.at).date);
    }
    return book;
}

StockBook foldStock(std::vector<Recorded<StockMovement>> movements, const TimeZone& zone)
{
    return foldStockUntil(std::move(movements), zone, Instant::max());
}

Result<void> checkEntry(const StockBook& book, const StockItem& item, const StockMovement& movement, Date day)
{
    if (auto sound = checkMovement(movement); !sound)
        return sound;
    if (movement.item != item.id)
        return fail(ErrorCode::InvalidArgument, "stock movement: it is of another item");
    if (item.retired && goesIn(movement.kind))
        return refuse(
            refusal::shelfRetired, {}, "the item is no longer kept", "take it up again in the list of items");
    if (goesIn(movement.kind) && item.expires && !movement.expiry)
        return refuse(refusal::lastDayMissing, {}, "the last day of use is missing", "read it off the pack");
    if (!goesOut(movement.kind))
        return {};
    StockBook after;
    if (const auto found = book.find(item.id); found != book.end())
        after[item.id].lots = found->second.lots;
    apply(after, {.id = {}, .what = movement}, day);
    if (after[item.id].discrepancies.empty())
        return {};
    const std::int64_t held = movement.quantity - after[item.id].discrepancies.front().difference;
    return refuse(refusal::bookHolds, {std::to_string(held), std::to_string(movement.quantity)},
        "the book holds " + std::to_string(held) + " of " + std::to_string(movement.quantity),
        "count the shelf first and enter the count");
}

}
