// SPDX-License-Identifier: MIT
#include "app/demo/devices.h"

#include <algorithm>

namespace cradlepost::demo {

using namespace std::chrono;

namespace {

constexpr int fridgeDays = 35;
constexpr int fridgeDaysOfStory = 60; // the warm days of Hallow Down are in them
constexpr int registerDays = 100;

/** What every ward of the district has. */
std::vector<Added> usualDevices()
{
    const auto device = [](const char* id, EquipmentKind kind, const char* label, const char* serves,
                            int service, int calibration, EquipmentState state = EquipmentState::InUse) {
        return Added{
            .device = {.id = id,
                .kind = kind,
                .label = label,
                .number = {},
                .serves = *serves == 0 ? std::vector<std::string>() : std::vector<std::string>{serves},
                .spareFor = {},
                .serviceDays = service,
                .calibrationDays = calibration},
            .state = state};
    };
    using enum EquipmentKind;
    return {device("warmer-1", Warmer, "Radiant warmer 1", "warmer-function-test", 180, 0),
        device("warmer-2", Warmer, "Radiant warmer 2", "", 180, 0, EquipmentState::Spare),
        device("bag-1", BagMask, "Bag and masks 1", "bag-function-test", 0, 0),
        device("bag-2", BagMask, "Bag and masks 2", "spare-bag-mask", 0, 0, EquipmentState::Spare),
        device("suction-1", Suction, "Electric suction", "suction-pressure", 180, 0),
        device("oxygen-1", OxygenSource, "Oxygen, cylinder trolley", "oxygen-cylinder", 365, 0),
        device("oximeter-1", Oximeter, "Pulse oximeter", "oximeter", 365, 365),
        device("scale-1", Scale, "Baby scale", "scale-check", 0, 180),
        device("thermometer-1", Thermometer, "Room thermometer", "", 0, 365),
        device("fridge-1", Fridge, "Ward fridge", "fridge-temperature", 365, 0)};
}

}

Devices::Devices(
    Store& store, FixedClock& clock, const UnitPlan& plan, const Stories& stories, const TimeZone& zone)
    : m_store(store)
    , m_clock(clock)
    , m_plan(plan)
    , m_stories(stories)
    , m_zone(zone)
    , m_random(Random::named("devices of " + plan.unit.id))
    , m_actor(plan.people.front().initials)
{
}

Result<void> Devices::pass(const Shift& shift)
{
    if (!m_added && shift.date >= addDays(m_stories.today, -registerDays)) {
        if (auto done = addAll(shift.begins); !done)
            return done;
        m_added = true;
        m_written = shift.date;
    }
    if (!m_added)
        return {};
    if (shift.index == 0)
        if (auto done = breakAndMend(shift); !done)
            return done;
    if (daysBetween(m_written, shift.date) >= 7) {
        m_written = shift.date;
        if (auto done = close(shift.begins); !done)
            return done;
    }
    if (shift.index < 2
        && shift.date >= addDays(m_stories.today, m_plan.is(hallowDown) ? -fridgeDaysOfStory : -fridgeDays))
        readFridge(shift);
    return {};
}

Result<void> Devices::addAll(Instant at)
{
    std::vector<EquipmentEvent> events;
    for (const Added& added : usualDevices()) {
        const Instant since = at - days(m_random.between(250, 900));
        const std::string& id = added.device.id;
        events.push_back({.device = id, .at = since, .deed = added});
        events.back().deed = added;
        std::get<Added>(events.back().deed).device.number
            = "LK-" + std::to_string(m_random.between(1000, 9999));
        if (added.device.serviceDays > 0)
            events.push_back({.device = id, .at = at - days(m_random.between(10, 90)), .deed = Serviced{}});
        if (added.device.calibrationDays > 0)
            events.push_back(
                {.device = id, .at = at - days(m_random.between(10, 100)), .deed = Calibrated{}});
    }
    events.push_back({.device = "scale-1",
        .at = at - days(4),
        .deed = ScaleChecked{.known = 3000, .read = 3000 + m_random.between(-6, 6)}});
    return note(events, at);
}

Result<void> Devices::breakAndMend(const Shift& shift)
{
    if (m_plan.is(sorrelHill) && shift.date == m_stories.warmerBroken.from)
        return takeOutNow("warmer-1", shift.begins);
    if (m_plan.is(sorrelHill) && shift.date == m_stories.warmerBroken.to)
        return note({{.device = "warmer-1",
                         .at = shift.begins,
                         .deed = Moved{.to = EquipmentState::InUse, .reason = MoveReason::Repaired}},
                        {.device = "warmer-2",
                            .at = shift.begins,
                            .deed = Moved{.to = EquipmentState::Spare, .reason = MoveReason::StepsBack}}},
            shift.begins);
    if (m_plan.is(pennyWeir) && shift.date == addDays(m_stories.today, -9))
        return takeOutNow("suction-1", shift.begins);
    return {};
}

Result<void> Devices::takeOutNow(const std::string& device, Instant at)
{
    const auto known = m_store.equipmentRegister(m_plan.unit.id);
    if (!known)
        return tl::unexpected(known.error());
    return note(takeOut(*known, device, MoveReason::Broken, at), at);
}

Result<void> Devices::note(const std::vector<EquipmentEvent>& events, Instant at)
{
    m_clock.set(std::max(m_clock.now(), at));
    return m_store.noteEquipment(m_plan.unit.id, events, m_actor);
}

void Devices::readFridge(const Shift& shift)
{
    const bool warm = m_plan.is(hallowDown) && m_stories.fridgeWarm.contains(shift.date);
    const auto tenths = static_cast<std::int64_t>((warm ? 112 : 46) + m_random.bell(warm ? 7 : 6));
    const Instant at = shift.begins + minutes(m_random.between(10, 55));
    if (!m_random.chance(0.04))
        m_waiting.push_back(
            {.fridge = "fridge-1", .at = at, .celsius = Decimal{tenths * 100}, .lowest = {}, .highest = {}});
}

Result<void> Devices::close(Instant until)
{
    for (const FridgeReading& reading : m_waiting) {
        if (reading.at > until)
            continue;
        m_clock.set(std::max(m_clock.now(), reading.at));
        if (auto done = m_store.noteFridge(m_plan.unit.id, reading, m_actor); !done)
            return done;
    }
    m_waiting.clear();
    return {};
}

}
