// SPDX-License-Identifier: MIT
#include "core/supply/coldchain.h"

namespace cradlepost {

namespace {

/** Follows what of one item was in the fridge over a stretch of time. */
class Shelf
{
public:
    Shelf(const std::string& item, StockBook book)
        : m_item(item)
        , m_book(std::move(book))
    {
        raise();
    }

    void move(const Recorded<StockMovement>& movement, Date day)
    {
        apply(m_book, movement, day);
        const StockMovement& what = movement.what;
        if (goesIn(what.kind))
            m_inside[{.expiry = what.expiry, .number = what.lot}] += what.quantity;
        else
            raise();
    }

    [[nodiscard]] const std::map<LotKey, std::int64_t>& inside() const { return m_inside; }

private:
    /** What a count finds was there as well. */
    void raise()
    {
        for (const BookLot& lot : m_book[m_item].lots)
            m_inside[lot.key] = std::max(m_inside[lot.key], lot.pieces);
    }

    const std::string& m_item;
    StockBook m_book;
    std::map<LotKey, std::int64_t> m_inside;
};

}

std::vector<LotInside> lotsInside(const std::vector<Recorded<StockMovement>>& movements,
    const std::vector<StockItem>& items, const std::string& fridge, const Excursion& excursion,
    const TimeZone& zone)
{
    const Instant from = excursion.notBefore.value_or(excursion.first);
    std::vector<LotInside> out;
    for (const StockItem& item : items) {
        if (item.fridge != fridge)
            continue;
        std::vector<Recorded<StockMovement>> own;
        std::copy_if(movements.begin(), movements.end(), std::back_inserter(own),
            [&](const auto& movement) { return movement.what.item == item.id; });
        Shelf shelf(item.id, foldStockUntil(own, zone, from));
        for (const auto& movement : inOrder(own)) {
            if (movement.what.at > from && movement.what.at <= excursion.notAfter)
                shelf.move(movement, zone.toLocal(movement.what.at).date);
        }
        for (const auto& [lot, pieces] : shelf.inside())
            out.push_back(
                {.item = item.id, .lot = lot, .pieces = pieces, .harmedByFrost = item.harmedByFrost});
    }
    return out;
}

}
