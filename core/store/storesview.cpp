// SPDX-License-Identifier: MIT
#include "core/store/storesview.h"

#include "core/store/devicerows.h"
#include "core/store/failure.h"
#include "core/store/shelfrow.h"

#include <algorithm>

namespace cradlepost {

namespace {

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
        , m_movements(need(store.stockMovements(m_unit)))
    {
        m_view.today = m_zone.toLocal(now).date;
        m_view.shiftsPerDay = static_cast<int>(shift.calendar.pattern().starts.size());
    }

    StoresView read()
    {
        readShelves();
        readDevices();
        for (std::size_t at = 0; at < m_shift.adopted.checklist.itemCount(); ++at)
            readKitsAndCounts(at);
        return std::move(m_view);
    }

private:
    /** All movements lie by item, then by time. */
    [[nodiscard]] std::span<const Recorded<StockMovement>> ofItem(const std::string& item) const
    {
        struct ByItem
        {
            bool operator()(const Recorded<StockMovement>& a, const std::string& b) const
            {
                return a.what.item < b;
            }
            bool operator()(const std::string& a, const Recorded<StockMovement>& b) const
            {
                return a < b.what.item;
            }
        };
        const auto [from, to] = std::equal_range(m_movements.begin(), m_movements.end(), item, ByItem());
        return {from, to};
    }

    void readShelves()
    {
        const ShelfReader reader(m_rules, m_zone, m_view.today, m_view.shiftsPerDay);
        for (const StockItem& item : m_items) {
            ShelfRow row = reader.shelf(item, ofItem(item.id));
            if (!item.retired || row.book.pieces() > 0)
                m_view.shelves.push_back(std::move(row));
        }
        sortShelves(m_view.shelves);
    }

    void readDevices()
    {
        const EquipmentRegister known = need(m_store.equipmentRegister(m_unit));
        const Date tested = addDays(m_view.today, -m_rules.testDays);
        const auto rounds = need(m_store.rounds(
            m_unit, slotOf(tested, 0), slotOf(addDays(m_view.today, 1), 0)));
        m_view.devices = deviceRows(known, m_shift, rounds, m_now, m_rules);
        readCylinders(rounds);
        const Date read = addDays(m_view.today, -m_rules.fridgeDays);
        m_view.fridges
            = fridgeRows(known, need(m_store.fridgeReadings(m_unit, m_zone.toInstant({.date = read}))),
                m_movements, m_items, m_zone, m_now, m_rules);
    }

    /** From this shift when its round is done, else from the last round before. */
    void readCylinders(const std::vector<RoundRow>& rounds)
    {
        const Checklist& checklist = m_shift.adopted.checklist;
        SeenAnswers seen{.checklist = checklist, .answers = {}, .at = {}};
        if (m_shift.standing) {
            seen.answers = m_shift.standing->answers;
            seen.at = m_shift.standing->seenAt;
        } else if (const auto last = std::find_if(rounds.rbegin(), rounds.rend(),
                       [&](const RoundRow& row) {
                           return row.kind == RoundKind::Shift && row.checklist == checklist.id
                               && row.version == checklist.version;
                       });
                   last != rounds.rend()) {
            seen.answers = need(m_store.round(last->id)).round.answers;
            seen.at.assign(seen.answers.size(), last->finished);
        }
        for (DeviceRow& row : m_view.devices)
            row.cylinder = cylinderOf(row.device, seen);
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
        const auto movements = ofItem(seen.item);
        if (movements.empty())
            return;
        for (BookDifference& difference :
            againstBook(seen, foldStockUntil({movements.begin(), movements.end()}, m_zone, seen.at)))
            m_view.differences.push_back(std::move(difference));
    }

    const Store& m_store;
    const ShiftView& m_shift;
    std::string m_unit;
    TimeZone m_zone;
    Instant m_now;
    const StoresRules& m_rules;
    std::vector<StockItem> m_items;
    std::vector<Recorded<StockMovement>> m_movements; ///< by item, then in order of time
    StoresView m_view;
};

}

Result<StoresView> storesView(
    const Store& store, const ShiftView& shift, Instant now, const StoresRules& rules)
{
    return attempt([&] { return StoresReader(store, shift, now, rules).read(); });
}

}
