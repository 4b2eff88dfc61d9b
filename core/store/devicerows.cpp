// SPDX-License-Identifier: MIT
#include "core/store/devicerows.h"

#include "core/round/judge.h"
#include "core/supply/cylinder.h"

#include <algorithm>

namespace cradlepost {

namespace {

constexpr Date never = std::chrono::year(9999) / 1 / 1;

std::optional<Dated<InstrumentCheck>> lastCheck(const EquipmentStanding& standing)
{
    if (const auto& scale = standing.scaleCheck)
        return Dated<InstrumentCheck>{.at = scale->at, .what = judgeScale(scale->what)};
    if (const auto& thermometer = standing.thermometerCheck)
        return Dated<InstrumentCheck>{.at = thermometer->at, .what = judgeThermometer(thermometer->what)};
    return std::nullopt;
}

/** A round failed a device when one of its items was a gap, and passed it when one was met and none a gap. */
FunctionTests testsOf(
    const Equipment& device, const AdoptedChecklist& adopted, std::span<const RoundRow> rounds)
{
    std::vector<std::size_t> positions;
    for (const std::string& item : device.serves)
        if (const auto at = adopted.checklist.position(item))
            positions.push_back(*at);
    FunctionTests tests;
    for (const RoundRow& round : rounds) {
        if (round.kind != RoundKind::Shift || round.checklist != adopted.checklist.id
            || round.version != adopted.checklist.version)
            continue;
        const auto any = [&](char outcome) {
            return std::any_of(positions.begin(), positions.end(),
                [&](std::size_t at) { return at < round.outcomes.size() && round.outcomes[at] == outcome; });
        };
        if (any('g')) {
            ++tests.failed;
            tests.lastFailed = std::max(tests.lastFailed.value_or(round.finished), round.finished);
        } else if (any('m')) {
            ++tests.passed;
        }
    }
    return tests;
}

std::optional<Excursion> lastOf(const std::vector<Excursion>& excursions)
{
    return excursions.empty() ? std::nullopt : std::optional(excursions.back());
}

}

std::optional<CylinderStand> cylinderOf(const Equipment& device, const SeenAnswers& seen)
{
    for (const std::string& id : device.serves) {
        const auto at = seen.checklist.position(id);
        if (!at || *at >= seen.answers.size())
            continue;
        const auto* rule = std::get_if<CylinderRule>(&seen.checklist.item(*at).rule);
        const auto* read = std::get_if<CylinderRead>(&seen.answers[*at]);
        if (rule == nullptr || read == nullptr)
            continue;
        const auto size = std::find_if(rule->sizes.begin(), rule->sizes.end(),
            [&](const CylinderSize& one) { return one.id == read->size; });
        const auto lowest = size == rule->sizes.end() ? Result<Decimal>(Decimal{})
                                                      : lowestGauge(*size, rule->minutes, read->flow);
        if (size == rule->sizes.end() || !lowest)
            continue;
        return CylinderStand{.gauge = read->gauge,
            .pressure = size->unit,
            .flow = read->flow,
            .minutes = cylinderMinutes(*size, read->gauge, read->flow),
            .wanted = rule->minutes,
            .changeAt = upToMark(*lowest, {.thousandths = 1000}),
            .at = seen.at[*at]};
    }
    return std::nullopt;
}

std::vector<DeviceRow> deviceRows(const EquipmentRegister& known, const ShiftView& shift,
    std::span<const RoundRow> rounds, Instant now, const StoresRules& rules)
{
    const TimeZone& zone = shift.calendar.zone();
    const auto upkeep = upkeepOf(known, zone, zone.toLocal(now).date);
    std::vector<DeviceRow> rows;
    for (const auto& [id, standing] : known.devices) {
        if (standing.state() == EquipmentState::Retired)
            continue;
        DeviceRow row{.device = standing.device,
            .state = standing.state(),
            .since = standing.spans.back().from,
            .check = lastCheck(standing),
            .tests = testsOf(standing.device, shift.adopted, rounds),
            .up = availabilityOf(standing, now - std::chrono::days(rules.upDays), now),
            .spare = spareFor(known, id)};
        std::copy_if(upkeep.begin(), upkeep.end(), std::back_inserter(row.upkeep),
            [&id = id](const UpkeepDue& due) { return due.device == id; });
        rows.push_back(std::move(row));
    }
    std::stable_sort(rows.begin(), rows.end(), [](const DeviceRow& a, const DeviceRow& b) {
        const auto rank = [](const DeviceRow& row) {
            return std::pair(row.state != EquipmentState::OutForRepair,
                row.upkeep.empty() ? never : row.upkeep.front().due);
        };
        return rank(a) < rank(b);
    });
    return rows;
}

std::vector<FridgeRow> fridgeRows(const EquipmentRegister& known, const std::vector<FridgeReading>& readings,
    const std::vector<Recorded<StockMovement>>& movements, const std::vector<StockItem>& items,
    const TimeZone& zone, Instant now, const StoresRules& rules)
{
    const Date today = zone.toLocal(now).date;
    const Instant from = zone.toInstant({.date = addDays(today, -rules.fridgeDays)});
    std::vector<FridgeRow> rows;
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
                begins = zone.toLocal(reading.at).date;
        }
        row.excursions = excursionsOf(readings, id, now);
        std::vector<Excursion> open;
        std::copy_if(row.excursions.begin(), row.excursions.end(), std::back_inserter(open),
            [](const Excursion& excursion) { return excursion.open; });
        row.verdict = verdictOf(open);
        row.due = readingDue(readings, id, zone, now);
        if (begins)
            row.missed = static_cast<int>(missedReadings(readings, id, *begins, today, zone, now).size());
        if (const auto kinetic = kineticTemperature(readings, id, from, now))
            row.kinetic = *kinetic;
        if (const auto last = lastOf(row.excursions))
            row.inside = lotsInside(movements, items, id, *last, zone);
        rows.push_back(std::move(row));
    }
    return rows;
}

}
