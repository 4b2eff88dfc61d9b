// SPDX-License-Identifier: MIT
#include "core/store/shelfrow.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <tuple>

namespace cradlepost {

namespace {

constexpr Decimal onePiece{1000};

/** Pieces a day; nothing without any day. */
std::optional<double> meanOf(const std::vector<std::int64_t>& used)
{
    if (used.empty())
        return std::nullopt;
    return static_cast<double>(std::accumulate(used.begin(), used.end(), std::int64_t{0}))
        / static_cast<double>(used.size());
}

std::int64_t wholePacks(std::int64_t pieces, std::int64_t pack) { return (pieces + pack - 1) / pack * pack; }

}

/** The days that the item gives, else the usual number between two receipts, counted on from the last one. */
Date ShelfReader::nextDelivery(
    const StockItem& item, std::span<const Recorded<StockMovement>> movements) const
{
    std::vector<Date> came;
    for (const auto& one : movements) {
        if (one.what.kind != MovementKind::Receipt)
            continue;
        const Date day = m_zone.toLocal(one.what.at).date;
        if (came.empty() || came.back() != day)
            came.push_back(day);
    }
    int every = item.deliveryDays > 0 ? item.deliveryDays : m_rules.deliveryEvery;
    if (item.deliveryDays == 0 && came.size() >= 3) {
        std::vector<int> apart;
        for (std::size_t i = 1; i < came.size(); ++i)
            apart.push_back(daysBetween(came[i - 1], came[i]));
        const auto middle = apart.begin() + static_cast<std::ptrdiff_t>(apart.size() / 2);
        std::nth_element(apart.begin(), middle, apart.end());
        every = *middle;
    }
    const Date from = came.empty() ? m_today : came.back();
    const int past = std::max(daysBetween(from, m_today), 0);
    return addDays(from, (past / every + 1) * every);
}

ShelfRow ShelfReader::shelf(const StockItem& item, std::span<const Recorded<StockMovement>> movements) const
{
    ItemDays days = daysOfItem(movements, m_zone, addDays(m_today, -m_rules.lookBack), addDays(m_today, -1));
    ShelfRow row{.item = item, .book = std::move(days.book)};
    row.nextDelivery = nextDelivery(item, movements);
    row.service = item.service == Decimal{0} ? m_rules.service : item.service.toDouble();
    row.usable = row.book.usableOn(m_today);
    row.status = statusOf(item.levels, row.usable);
    row.expiring = expiringFrom(row.book, m_today);
    const auto used = useWhileInStock(days.days);
    row.perDay = meanOf(used);
    if (row.perDay)
        row.cover = coverOf(row.usable, *row.perDay, m_shiftsPerDay);
    row.runDown = runDown(row.book, m_today,
        {.thousandths = static_cast<std::int64_t>(std::lround(row.perDay.value_or(0) * 1000))});
    foresee(row, asWrittenUp(used));
    return row;
}

ShelfStand ShelfReader::stand(
    const StockItem& item, std::span<const Recorded<StockMovement>> movements) const
{
    const ItemDays days
        = daysOfItem(movements, m_zone, addDays(m_today, -m_rules.lookBack), addDays(m_today, -1));
    return {.item = item,
        .usable = days.book.usableOn(m_today),
        .perDay = meanOf(useWhileInStock(days.days)),
        .daysToDelivery = std::max(0, daysBetween(m_today, nextDelivery(item, movements)))};
}

/** The need in pieces until the delivery, fitted to the item's own use. */
void ShelfReader::foresee(ShelfRow& row, const PeriodUse& use) const
{
    const double periods = static_cast<double>(daysBetween(m_today, row.nextDelivery)) / use.days;
    StockItem byPiece = row.item;
    byPiece.perBirth = onePiece;
    if (const auto demand = birthDemand(use.used)) {
        if (const auto outlook = untilDelivery(row.usable, onePiece, *demand, periods))
            row.lasts = outlook->lasts;
        if (const auto advice = orderAdvice(byPiece, row.usable, 0, *demand, periods, row.service)) {
            row.order = advice->order;
            row.reorderAt = advice->reorderAt;
        }
    }
    const bool low = row.status == StockStatus::Out || row.status == StockStatus::BelowEmergency
        || row.status == StockStatus::BelowMinimum;
    const std::int64_t missing = row.item.levels.par - row.usable;
    if (low && missing > 0)
        row.order = std::max(row.order, wholePacks(missing, row.item.packSize));
    if (row.item.retired)
        row.order = 0;
}

void sortShelves(std::vector<ShelfRow>& shelves)
{
    std::sort(shelves.begin(), shelves.end(), [](const ShelfRow& a, const ShelfRow& b) {
        const auto rank = [](const ShelfRow& row) {
            return std::tuple(row.order == 0, row.cover ? row.cover->shifts : INFINITY);
        };
        const auto left = rank(a);
        const auto right = rank(b);
        return std::tie(left, a.item.name) < std::tie(right, b.item.name);
    });
}

}
