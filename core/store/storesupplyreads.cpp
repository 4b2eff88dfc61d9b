// SPDX-License-Identifier: MIT
#include "core/store/store.h"

#include "core/store/parts.h"

#include <algorithm>

namespace cradlepost {

Result<std::vector<StockItem>> Store::stockItems(const std::string& unit) const
{
    return attempt([&] {
        std::vector<StockItem> items;
        for (auto& fact :
            m_parts->supplies.facts<StockItem>(unit, SupplyFactTable::item, stockItemFromBody)) {
            if (!items.empty() && items.back().id == fact.what.id)
                items.back() = std::move(fact.what);
            else
                items.push_back(std::move(fact.what));
        }
        return items;
    });
}

Result<std::vector<Recorded<StockMovement>>> Store::stockMovements(
    const std::string& unit, const std::string& item) const
{
    return attempt([&] {
        return m_parts->movements.movements(unit, item);
    });
}

Result<StockBook> Store::stockBook(const std::string& unit) const
{
    return attempt([&] {
        const TimeZone zone = need(TimeZone::named(m_parts->knownUnit(unit).zone));
        return foldStock(need(stockMovements(unit)), zone);
    });
}

Result<EquipmentRegister> Store::equipmentRegister(const std::string& unit) const
{
    return attempt([&] {
        return foldEquipment(
            m_parts->supplies.facts<EquipmentEvent>(unit, recordkind::equipment, equipmentEventFromBody));
    });
}

Result<std::vector<WarmerRun>> Store::warmerRuns(const std::string& unit) const
{
    return attempt([&] {
        return foldWarmers(
            m_parts->supplies.facts<WarmerSwitch>(unit, recordkind::warmer, warmerSwitchFromBody));
    });
}

Result<std::vector<BirthSpan>> Store::birthBoard(const std::string& unit) const
{
    return attempt([&] {
        return foldBirths(
            m_parts->supplies.facts<BirthEvent>(unit, recordkind::birthExpected, birthEventFromBody));
    });
}

Result<std::vector<FridgeReading>> Store::fridgeReadings(const std::string& unit, Instant since) const
{
    return attempt([&] {
        std::vector<FridgeReading> readings;
        for (auto& fact : m_parts->supplies.facts<FridgeReading>(
                 unit, recordkind::fridgeReading, fridgeReadingFromBody, {}, since))
            readings.push_back(std::move(fact.what));
        return readings;
    });
}

Result<std::optional<LastHandover>> Store::lastHandover(const std::string& unit) const
{
    return attempt([&]() -> std::optional<LastHandover> {
        const SupplyFactTable& table = m_parts->supplies;
        auto given = table.facts<HandoverGiven>(
            unit, recordkind::handover, handoverGivenFromBody, SupplyFactTable::given);
        if (given.empty())
            return std::nullopt;
        LastHandover last{.id = given.back().id, .given = std::move(given.back().what), .taken = {}};
        const auto taken = table.facts<HandoverTaken>(
            unit, recordkind::handover, handoverTakenFromBody, SupplyFactTable::taken);
        // Two stations may both have taken it: the first counts.
        const auto mine = std::find_if(
            taken.begin(), taken.end(), [&](const auto& one) { return one.what.given == last.id; });
        if (mine != taken.end())
            last.taken = mine->what;
        return last;
    });
}

}
