// SPDX-License-Identifier: MIT
#include "core/store/supplyfacttable.h"

#include "core/gap/escalationrecord.h"
#include "core/review/visitresult.h"
#include "core/store/recordkind.h"
#include "core/supply/birthboard.h"
#include "core/supply/distance.h"
#include "core/supply/equipment.h"
#include "core/supply/fridgereading.h"
#include "core/supply/handover.h"
#include "core/supply/stockitem.h"
#include "core/supply/warmerclock.h"

namespace cradlepost {

namespace {

std::optional<SupplyPlace> stockPlace(const Json& body)
{
    if (!isItemBody(body))
        return std::nullopt; // a movement: StockMovementTable
    const StockItem item = need(stockItemFromBody(body));
    return SupplyPlace{.kind = SupplyFactTable::item, .subject = item.id, .at = item.at};
}

SupplyPlace handoverPlace(const Json& body)
{
    const bool taken = isTakenBody(body);
    return {.kind = recordkind::handover,
        .subject = taken ? SupplyFactTable::taken : SupplyFactTable::given,
        .at = taken ? need(handoverTakenFromBody(body)).at : need(handoverGivenFromBody(body)).at};
}

}

std::optional<SupplyPlace> supplyPlaceOf(std::string_view recordKind, const Json& body)
{
    const auto placed = [&](std::string subject, Instant at) {
        return SupplyPlace{.kind = std::string(recordKind), .subject = std::move(subject), .at = at};
    };
    if (recordKind == recordkind::stock)
        return stockPlace(body);
    if (recordKind == recordkind::handover)
        return handoverPlace(body);
    if (recordKind == recordkind::equipment) {
        const EquipmentEvent event = need(equipmentEventFromBody(body));
        return placed(event.device, event.at);
    }
    if (recordKind == recordkind::warmer) {
        const WarmerSwitch event = need(warmerSwitchFromBody(body));
        return placed(event.device, event.at);
    }
    if (recordKind == recordkind::birthExpected) {
        const BirthEvent event = need(birthEventFromBody(body));
        return placed(event.birth, event.at);
    }
    if (recordKind == recordkind::fridgeReading) {
        const FridgeReading reading = need(fridgeReadingFromBody(body));
        return placed(reading.fridge, reading.at);
    }
    if (recordKind == recordkind::distance) {
        const Distance distance = need(distanceFromBody({}, body));
        return placed(distance.to, distance.at);
    }
    if (recordKind == recordkind::visit)
        return placed(SupplyFactTable::visited, need(visitResultFromBody(body)).at);
    if (recordKind == recordkind::escalation)
        return placed(SupplyFactTable::levels, need(escalationFromBody(body)).at);
    return std::nullopt;
}

void SupplyFactTable::put(
    const std::string& unit, const SupplyPlace& place, const RecordId& id, const std::string& body)
{
    m_database
        .prepare("INSERT INTO supply_fact (unit, kind, subject, at, station, seq, body) "
                 "VALUES (?, ?, ?, ?, ?, ?, ?)")
        .bind(unit)
        .bind(place.kind)
        .bind(place.subject)
        .bind(place.at)
        .bind(id.station)
        .bind(id.seq)
        .bind(body)
        .run();
}

void SupplyFactTable::visit(const std::string& unit, const std::string& kind, const std::string& subject,
    Instant since, const std::function<void(FactId, std::string_view)>& take) const
{
    Statement rows = m_database.prepare(subject.empty()
            ? "SELECT station, seq, body FROM supply_fact WHERE unit = ? AND kind = ? AND at >= ? "
              "ORDER BY subject, at, station, seq"
            : "SELECT station, seq, body FROM supply_fact WHERE unit = ? AND kind = ? AND at >= ? "
              "AND subject = ? ORDER BY at, station, seq");
    rows.bind(unit).bind(kind).bind(since);
    if (!subject.empty())
        rows.bind(subject);
    while (rows.next())
        take({.station = rows.text(0), .seq = rows.integer(1)}, rows.textView(2));
}

}
