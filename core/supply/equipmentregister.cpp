// SPDX-License-Identifier: MIT
#include "core/supply/equipmentregister.h"

namespace cradlepost {

namespace {

/** Lays one event over one device that is in the register. */
struct Deed
{
    EquipmentStanding& standing;
    Instant at;

    void operator()(const Added&) const { }
    void operator()(const Changed& deed) const { standing.device = deed.device; }
    void operator()(const Moved& deed) const
    {
        if (deed.to != standing.state())
            standing.spans.push_back({.state = deed.to, .reason = deed.reason, .from = at});
    }
    void operator()(const Serviced&) const { standing.serviced = at; }
    void operator()(const Calibrated&) const { standing.calibrated = at; }
    void operator()(const ScaleChecked& deed) const
    {
        standing.scaleCheck = Dated<ScaleChecked>{.at = at, .what = deed};
    }
    void operator()(const ThermometerChecked& deed) const
    {
        standing.thermometerCheck = Dated<ThermometerChecked>{.at = at, .what = deed};
    }
};

UpkeepDue due(const EquipmentStanding& standing, UpkeepKind kind, const TimeZone& zone, Date today)
{
    const bool service = kind == UpkeepKind::Service;
    const auto last = service ? standing.serviced : standing.calibrated;
    const int days = service ? standing.device.serviceDays : standing.device.calibrationDays;
    const Date on = addDays(zone.toLocal(last.value_or(standing.spans.front().from)).date, days);
    return {.device = standing.device.id, .kind = kind, .due = on, .overdue = today > on};
}

bool isSpare(const EquipmentStanding& standing) { return standing.state() == EquipmentState::Spare; }

}

EquipmentRegister foldEquipment(std::vector<Recorded<EquipmentEvent>> events)
{
    EquipmentRegister out;
    for (const auto& event : inOrder(std::move(events))) {
        const auto known = out.devices.find(event.what.device);
        const auto* added = std::get_if<Added>(&event.what.deed);
        if ((known == out.devices.end()) != (added != nullptr)) {
            out.strays.push_back(event.id);
            continue;
        }
        if (added != nullptr)
            out.devices[event.what.device] = {.device = added->device,
                .spans = {{.state = added->state, .reason = MoveReason::NotKnown, .from = event.what.at}}};
        else
            std::visit(Deed{.standing = known->second, .at = event.what.at}, event.what.deed);
    }
    return out;
}

std::vector<UpkeepDue> upkeepOf(const EquipmentRegister& devices, const TimeZone& zone, Date today)
{
    std::vector<UpkeepDue> out;
    for (const auto& [id, standing] : devices.devices) {
        if (standing.state() == EquipmentState::Retired)
            continue;
        if (standing.device.serviceDays > 0)
            out.push_back(due(standing, UpkeepKind::Service, zone, today));
        if (standing.device.calibrationDays > 0)
            out.push_back(due(standing, UpkeepKind::Calibration, zone, today));
    }
    std::stable_sort(
        out.begin(), out.end(), [](const UpkeepDue& a, const UpkeepDue& b) { return a.due < b.due; });
    return out;
}

std::optional<std::string> spareFor(const EquipmentRegister& devices, const std::string& device)
{
    const auto failed = devices.devices.find(device);
    std::optional<std::string> ofKind;
    for (const auto& [id, standing] : devices.devices) {
        if (!isSpare(standing) || id == device)
            continue;
        if (standing.device.spareFor == device)
            return id;
        if (!ofKind && failed != devices.devices.end() && standing.device.spareFor.empty()
            && standing.device.kind == failed->second.device.kind)
            ofKind = id;
    }
    return ofKind;
}

std::vector<EquipmentEvent> takeOut(
    const EquipmentRegister& devices, const std::string& device, MoveReason reason, Instant at)
{
    std::vector<EquipmentEvent> events{
        {.device = device, .at = at, .deed = Moved{.to = EquipmentState::OutForRepair, .reason = reason}}};
    const auto found = devices.devices.find(device);
    const bool wasUsed = found != devices.devices.end() && found->second.state() == EquipmentState::InUse;
    if (const auto spare = spareFor(devices, device); spare && wasUsed)
        events.push_back({.device = *spare,
            .at = at,
            .deed = Moved{.to = EquipmentState::InUse, .reason = MoveReason::StepsIn}});
    return events;
}

std::vector<EquipmentEvent> bringBack(const EquipmentRegister& devices, const std::string& device, Instant at)
{
    std::vector<EquipmentEvent> events{{.device = device,
        .at = at,
        .deed = Moved{.to = EquipmentState::InUse, .reason = MoveReason::Repaired}}};
    const auto back = devices.devices.find(device);
    if (back == devices.devices.end() || back->second.state() != EquipmentState::OutForRepair)
        return events;
    for (const auto& [id, standing] : devices.devices) {
        const StateSpan& now = standing.spans.back();
        if (standing.device.kind == back->second.device.kind && now.state == EquipmentState::InUse
            && now.reason == MoveReason::StepsIn && now.from == back->second.spans.back().from)
            events.push_back({.device = id,
                .at = at,
                .deed = Moved{.to = EquipmentState::Spare, .reason = MoveReason::StepsBack}});
    }
    return events;
}

const char* codeName(UpkeepKind kind) { return kind == UpkeepKind::Service ? "service" : "calibration"; }

}
