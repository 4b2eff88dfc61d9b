// SPDX-License-Identifier: MIT
#include "core/store/storesview.h"

#include "core/store/failure.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace cradlepost {

namespace {

using Movements = std::map<std::string, std::vector<Recorded<StockMovement>>>; // by item, in order of time

constexpr Decimal onePiece{1000};

Movements byItem(std::vector<Recorded<StockMovement>> all)
{
    Movements movements;
    for (Recorded<StockMovement>& one : all)
        movements[one.what.item].push_back(std::move(one));
    return movements;
}

class StoresReader
{
public:
    StoresReader(const Store& store, const ShiftView& shift, Instant now, const StoresRules& rules)
        : m_store(store)
        , m_shift(shift)
        , m_unit(shift.unit.id)
        , m_zone(shift.calendar.zone())
        , m_now(now)
        , m_rules(rules)
        , m_items(need(store.stockItems(m_unit)))
        , m_movements(byItem(need(store.stockMovements(m_unit))))
    {
        m_view.today = m_zone.toLocal(now).date;
        m_view.shiftsPerDay = static_cast<int>(shift.calendar.pattern().starts.size());
    }

    StoresView read()
    {
        readShelves();
        const EquipmentRegister known = need(m_store.equipmentRegister(m_unit));
        readDevices(known);
        readFridges(known);
        for (std::size_t at = 0; at < m_shift.adopted.checklist.itemCount(); ++at)
            readKitsAndCounts(at);
        return std::move(m_view);
    }

private:
    /** The usual number of days between two receipts, counted on from the last one. */
    Date nextDelivery(const std::vector<Recorded<StockMovement>>& movements) const
    {
        std::vector<Date> came;
        for (const auto& one : movements) {
            const Date day = m_zone.toLocal(one.what.at).date;
            if (one.what.kind == MovementKind::Receipt && (came.empty() || came.back() != day))
                came.push_back(day);
        }
        int every = m_rules.deliveryEvery;
        if (came.size() >= 3) {
            std::vector<int> apart;
            for (std::size_t i = 1; i < came.size(); ++i)
                apart.push_back(daysBetween(came[i - 1], came[i]));
            const auto middle = apart.begin() + static_cast<std::ptrdiff_t>(apart.size() / 2);
            std::nth_element(apart.begin(), middle, apart.end());
            every = *middle;
        }
        const Date from = came.empty() ? m_view.today : came.back();
        const int past = std::max(daysBetween(from, m_view.today), 0);
        return addDays(from, (past / every + 1) * every);
    }

    void readShelves()
    {
        for (const StockItem& item : m_items) {
            const auto found = m_movements.find(item.id);
            const auto movements
                = found == m_movements.end() ? std::vector<Recorded<StockMovement>>() : found->second;
            ShelfRow row = shelf(item, movements);
            if (!item.retired || row.book.pieces() > 0)
                m_view.shelves.push_back(std::move(row));
        }
        std::sort(m_view.shelves.begin(), m_view.shelves.end(), [](const ShelfRow& a, const ShelfRow& b) {
            const auto rank = [](const ShelfRow& row) {
                return std::tuple(row.order == 0, row.cover ? row.cover->shifts : INFINITY);
            };
            const auto left = rank(a);
            const auto right = rank(b);
            return std::tie(left, a.item.name) < std::tie(right, b.item.name);
        });
    }

    ShelfRow shelf(const StockItem& item, const std::vector<Recorded<StockMovement>>& movements) const
    {
        ItemDays days = daysOfItem(
            movements, m_zone, addDays(m_view.today, -m_rules.lookBack), addDays(m_view.today, -1));
        ShelfRow row{.item = item, .book = std::move(days.book)};
        row.nextDelivery = nextDelivery(movements);
        row.usable = row.book.usableOn(m_view.today);
        row.status = statusOf(item.levels, row.usable);
        row.expiring = expiringFrom(row.book, m_view.today);
        const auto used = useWhileInStock(days.days);
        if (!used.empty()) {
            std::int64_t sum = 0;
            for (const std::int64_t n : used)
                sum += n;
            row.perDay = static_cast<double>(sum) / static_cast<double>(used.size());
            row.cover = coverOf(row.usable, *row.perDay, m_view.shiftsPerDay);
        }
        row.runDown = runDown(row.book, m_view.today,
            {.thousandths = static_cast<std::int64_t>(std::lround(row.perDay.value_or(0) * 1000))});
        foresee(row, used);
        return row;
    }

    /** The need in pieces a day, fitted to the item's own days, until the delivery. */
    void foresee(ShelfRow& row, const std::vector<std::int64_t>& used) const
    {
        const double days = daysBetween(m_view.today, row.nextDelivery);
        StockItem byPiece = row.item;
        byPiece.perBirth = onePiece;
        if (const auto demand = birthDemand(used)) {
            if (const auto outlook = untilDelivery(row.usable, onePiece, *demand, days))
                row.lasts = outlook->lasts;
            if (const auto advice = orderAdvice(byPiece, row.usable, 0, *demand, days, m_rules.service))
                row.order = advice->order;
        }
        const bool low = row.status == StockStatus::Out || row.status == StockStatus::BelowEmergency
            || row.status == StockStatus::BelowMinimum;
        const std::int64_t missing = row.item.levels.par - row.usable;
        const std::int64_t pack = row.item.packSize;
        if (low && missing > 0)
            row.order = std::max(row.order, (missing + pack - 1) / pack * pack);
        if (row.item.retired)
            row.order = 0;
    }

    void readDevices(const EquipmentRegister& known)
    {
        const auto upkeep = upkeepOf(known, m_zone, m_view.today);
        for (const auto& [id, standing] : known.devices) {
            if (standing.state() == EquipmentState::Retired)
                continue;
            DeviceRow row{.device = standing.device,
                .state = standing.state(),
                .since = standing.spans.back().from,
                .spare = spareFor(known, id)};
            std::copy_if(upkeep.begin(), upkeep.end(), std::back_inserter(row.upkeep),
                [&](const UpkeepDue& due) { return due.device == id; });
            if (standing.scaleCheck)
                row.check = judgeScale(standing.scaleCheck->what).verdict;
            if (standing.thermometerCheck)
                row.check = judgeThermometer(standing.thermometerCheck->what).verdict;
            m_view.devices.push_back(std::move(row));
        }
        std::stable_sort(
            m_view.devices.begin(), m_view.devices.end(), [](const DeviceRow& a, const DeviceRow& b) {
                const auto rank = [](const DeviceRow& row) {
                    return std::pair(row.state != EquipmentState::OutForRepair,
                        row.upkeep.empty() ? Date(std::chrono::year(9999) / 1 / 1) : row.upkeep.front().due);
                };
                return rank(a) < rank(b);
            });
    }

    void readFridges(const EquipmentRegister& known)
    {
        const Date first = addDays(m_view.today, -m_rules.fridgeDays);
        const auto readings = need(m_store.fridgeReadings(m_unit, m_zone.toInstant({.date = first})));
        for (const auto& [id, standing] : known.devices) {
            if (standing.device.kind != EquipmentKind::Fridge || standing.state() == EquipmentState::Retired)
                continue;
            FridgeRow row{.device = standing.device};
            std::optional<Date> begins;
            for (const FridgeReading& reading : readings) {
                if (reading.fridge != id)
                    continue;
                row.last = reading;
                if (!begins)
                    begins = m_zone.toLocal(reading.at).date;
            }
            row.excursions = excursionsOf(readings, id, m_now);
            std::vector<Excursion> open;
            std::copy_if(row.excursions.begin(), row.excursions.end(), std::back_inserter(open),
                [](const Excursion& excursion) { return excursion.open; });
            row.verdict = verdictOf(open);
            row.due = readingDue(readings, id, m_zone, m_now);
            if (begins)
                row.missed = static_cast<int>(
                    missedReadings(readings, id, *begins, m_view.today, m_zone, m_now).size());
            m_view.fridges.push_back(std::move(row));
        }
    }

    void readKitsAndCounts(std::size_t at)
    {
        const Item& item = m_shift.adopted.checklist.item(at);
        if (std::holds_alternative<KitRule>(item.rule))
            readKit(item, at);
        else if (std::holds_alternative<CountRule>(item.rule) && m_shift.standing)
            if (const auto* counted = std::get_if<Counted>(&m_shift.standing->answers[at]))
                compare(item.id, *counted, m_shift.standing->seenAt[at]);
    }

    void readKit(const Item& item, std::size_t at)
    {
        std::map<std::string, std::string> stockOf;
        for (const StockItem& stock : m_items)
            stockOf.emplace(stock.id, stock.id);
        const auto plan = kitPlan(item, stockOf);
        if (!plan)
            return; // its parts are not kept in the book
        StockBook book;
        for (const ShelfRow& row : m_view.shelves)
            book.emplace(row.item.id, row.book);
        m_view.kits.push_back({.plan = *plan, .possible = kitsFromBook(*plan, book, m_view.today)});
        if (!m_shift.standing)
            return;
        if (const auto* counted = std::get_if<KitCounted>(&m_shift.standing->answers[at]))
            for (const SeenCount& seen : seenInKit(*plan, counted->parts, m_shift.standing->seenAt[at]))
                compare(seen);
    }

    /** Only where one stock item stands for the checklist's: else nobody knows which was counted. */
    void compare(const std::string& checklistItem, const Counted& counted, Instant seenAt)
    {
        const auto serves = [&](const StockItem& item) {
            return std::find(item.serves.begin(), item.serves.end(), checklistItem) != item.serves.end();
        };
        if (std::count_if(m_items.begin(), m_items.end(), serves) != 1)
            return;
        SeenCount seen{.item = std::find_if(m_items.begin(), m_items.end(), serves)->id, .at = seenAt};
        for (const Lot& lot : counted.lots)
            seen.lots.push_back(
                {.key = {.expiry = lot.expiry, .number = lot.number}, .pieces = lot.quantity});
        compare(seen);
    }

    void compare(const SeenCount& seen)
    {
        const auto movements = m_movements.find(seen.item);
        if (movements == m_movements.end())
            return;
        for (BookDifference& difference :
            againstBook(seen, foldStockUntil(movements->second, m_zone, seen.at)))
            m_view.differences.push_back(std::move(difference));
    }

    const Store& m_store;
    const ShiftView& m_shift;
    std::string m_unit;
    TimeZone m_zone;
    Instant m_now;
    const StoresRules& m_rules;
    std::vector<StockItem> m_items;
    Movements m_movements;
    StoresView m_view;
};

}

Result<StoresView> storesView(
    const Store& store, const ShiftView& shift, Instant now, const StoresRules& rules)
{
    return attempt([&] { return StoresReader(store, shift, now, rules).read(); });
}

}
