// SPDX-License-Identifier: MIT
#include "core/store/store.h"

#include "core/base/refusal.h"
#include "core/store/parts.h"

#include <algorithm>
#include <set>

namespace cradlepost {

namespace {

constexpr std::chrono::minutes ahead{5}; // a clock time is typed in whole minutes, and clocks differ a little

void notAhead(const char* what, Instant at, const Clock& clock)
{
    if (at > clock.now() + ahead)
        refuse(refused(refusal::aheadOfNow, {}, std::string(what) + ": member 'at' lies ahead of now",
            "Check the time that was typed and the clock of this computer."));
}

[[noreturn]] void notKnown(const std::string& what, const std::string& id, const std::string& hint)
{
    refuse(refused(refusal::gone, {}, what + " '" + id + "' is not known", hint, ErrorCode::NotFound));
}

/** The books of the items that movements touch, as they grow. */
class Entries
{
public:
    Entries(const SupplyFactTable& table, const StockMovementTable& movements, const Unit& unit)
        : m_table(table)
        , m_movements(movements)
        , m_unit(unit.id)
        , m_zone(need(TimeZone::named(unit.zone)))
    {
    }

    void check(const StockMovement& movement)
    {
        need(checkMovement(movement));
        if (m_read.insert(movement.item).second)
            read(movement.item);
        const auto item = m_items.find(movement.item);
        if (item == m_items.end())
            notKnown("stock item", movement.item, "Put it on the list of the unit's items first.");
        need(checkEntry(m_book, item->second, movement, m_zone.toLocal(movement.at).date));
    }
    void lay(const RecordId& id, const StockMovement& movement)
    {
        apply(m_book, {.id = {.station = id.station, .seq = id.seq}, .what = movement},
            m_zone.toLocal(movement.at).date);
    }

private:
    void read(const std::string& id)
    {
        const auto items = m_table.facts<StockItem>(m_unit, SupplyFactTable::item, stockItemFromBody, id);
        if (items.empty())
            return;
        m_items.emplace(id, items.back().what);
        for (auto& [item, book] : foldStock(m_movements.movements(m_unit, id), m_zone))
            m_book.insert_or_assign(item, std::move(book));
    }

    const SupplyFactTable& m_table;
    const StockMovementTable& m_movements;
    std::string m_unit;
    TimeZone m_zone;
    std::set<std::string> m_read;
    std::map<std::string, StockItem> m_items;
    StockBook m_book;
};

std::optional<EquipmentKind> kindOf(
    const SupplyFactTable& table, const std::string& unit, const std::string& device)
{
    const EquipmentRegister known = foldEquipment(
        table.facts<EquipmentEvent>(unit, recordkind::equipment, equipmentEventFromBody, device));
    const auto found = known.devices.find(device);
    return found == known.devices.end() ? std::nullopt : std::optional(found->second.device.kind);
}

}

Result<void> Store::describeStockItem(
    const std::string& unit, const StockItem& item, const std::string& actor)
{
    return m_parts->inUnit(unit, [&] {
        m_parts->knownUnit(unit);
        need(checkItem(item));
        notAhead("stock item", item.at, m_parts->clock);
        m_parts->append(recordkind::stock, unit, toBody(item), actor);
    });
}

Result<void> Store::moveStock(
    const std::string& unit, const std::vector<StockMovement>& movements, const std::string& actor)
{
    return m_parts->inUnit(unit, [&] {
        Entries entries(m_parts->supplies, m_parts->movements, m_parts->knownUnit(unit));
        for (const StockMovement& movement : movements) {
            notAhead("stock record", movement.at, m_parts->clock);
            entries.check(movement);
            entries.lay(m_parts->append(recordkind::stock, unit, toBody(movement), actor), movement);
        }
    });
}

Result<void> Store::noteEquipment(
    const std::string& unit, const std::vector<EquipmentEvent>& events, const std::string& actor)
{
    return m_parts->inUnit(unit, [&] {
        m_parts->knownUnit(unit);
        for (const EquipmentEvent& event : events) {
            need(checkEvent(event));
            notAhead("equipment record", event.at, m_parts->clock);
            const bool known = kindOf(m_parts->supplies, unit, event.device).has_value();
            const bool adds = std::holds_alternative<Added>(event.deed);
            if (known && adds)
                throw Failure{
                    refused(refusal::onRegister, {}, "device '" + event.device + "' is on the register",
                        "Change it there, or give the new one another id.", ErrorCode::AlreadyExists)};
            if (!known && !adds)
                notKnown("device", event.device, "Add it to the register first.");
            m_parts->append(recordkind::equipment, unit, toBody(event), actor);
        }
    });
}

Result<void> Store::switchWarmer(const std::string& unit, const WarmerSwitch& event, const std::string& actor)
{
    return m_parts->inUnit(unit, [&] {
        m_parts->knownUnit(unit);
        need(checkSwitch(event));
        notAhead("warmer record", event.at, m_parts->clock);
        if (kindOf(m_parts->supplies, unit, event.device) != EquipmentKind::Warmer)
            notKnown("warmer", event.device, "Add it to the register first.");
        m_parts->append(recordkind::warmer, unit, toBody(event), actor);
    });
}

Result<void> Store::noteBirth(const std::string& unit, const BirthEvent& event, const std::string& actor)
{
    return m_parts->inUnit(unit, [&] {
        m_parts->knownUnit(unit);
        need(checkBirth(event));
        notAhead("birth record", event.at, m_parts->clock);
        const auto before = m_parts->supplies.facts<BirthEvent>(
            unit, recordkind::birthExpected, birthEventFromBody, event.birth);
        const bool ended = std::any_of(before.begin(), before.end(),
            [](const Recorded<BirthEvent>& one) { return one.what.change != BirthChange::Expected; });
        if (ended)
            refuse(refused(
                refusal::offBoard, {}, "birth '" + event.birth + "' is off the board", "Put up a new one."));
        if (before.empty() && event.change != BirthChange::Expected)
            notKnown("birth", event.birth, "Put it on the board first.");
        m_parts->append(recordkind::birthExpected, unit, toBody(event), actor);
    });
}

Result<void> Store::noteFridge(
    const std::string& unit, const FridgeReading& reading, const std::string& actor)
{
    return m_parts->inUnit(unit, [&] {
        m_parts->knownUnit(unit);
        need(checkReading(reading));
        notAhead("fridge reading", reading.at, m_parts->clock);
        if (kindOf(m_parts->supplies, unit, reading.fridge) != EquipmentKind::Fridge)
            notKnown("fridge", reading.fridge, "Add it to the register first.");
        m_parts->append(recordkind::fridgeReading, unit, toBody(reading), actor);
    });
}

Result<RecordId> Store::giveHandover(
    const std::string& unit, const HandoverGiven& given, const std::string& actor)
{
    return m_parts->inUnit(unit, [&] {
        m_parts->knownUnit(unit);
        need(checkGiven(given));
        notAhead("handover", given.at, m_parts->clock);
        return m_parts->append(recordkind::handover, unit, toBody(given), actor);
    });
}

Result<void> Store::takeHandover(
    const std::string& unit, const HandoverTaken& taken, const std::string& actor)
{
    return m_parts->inUnit(unit, [&] {
        m_parts->knownUnit(unit);
        need(checkTaken(taken));
        notAhead("handover", taken.at, m_parts->clock);
        const SupplyFactTable& table = m_parts->supplies;
        const auto given = table.facts<HandoverGiven>(
            unit, recordkind::handover, handoverGivenFromBody, SupplyFactTable::given);
        const auto mine = std::find_if(
            given.begin(), given.end(), [&](const auto& one) { return one.id == taken.given; });
        if (mine == given.end())
            notKnown("handover", taken.given.station + '/' + std::to_string(taken.given.seq),
                "Take the one that was given last.");
        const auto before = table.facts<HandoverTaken>(
            unit, recordkind::handover, handoverTakenFromBody, SupplyFactTable::taken);
        if (std::any_of(
                before.begin(), before.end(), [&](const auto& one) { return one.what.given == taken.given; }))
            refuse(refused(
                refusal::handoverTaken, {}, "this handover was taken already", {}, ErrorCode::AlreadyExists));
        if (samePerson(taken.by, mine->what.by))
            refuse(refused(refusal::giverTakes, {}, "who gives a handover cannot take it",
                "Let the one who comes take it."));
        m_parts->append(recordkind::handover, unit, toBody(taken), actor);
    });
}

}
