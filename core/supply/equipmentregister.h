// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/calendar.h"
#include "core/supply/equipment.h"

#include <map>

namespace cradlepost {

/** A device in one state from a moment on. */
struct StateSpan
{
    EquipmentState state = EquipmentState::InUse;
    MoveReason reason = MoveReason::NotKnown;
    Instant from;
    bool operator==(const StateSpan&) const = default;
};

template <class T> struct Dated
{
    Instant at;
    T what;
    bool operator==(const Dated&) const = default;
};

/** How one device stands after its events. */
struct EquipmentStanding
{
    Equipment device;
    std::vector<StateSpan> spans; ///< in order of time, at least one; the last one goes on
    std::optional<Instant> serviced; ///< the last time
    std::optional<Instant> calibrated;
    std::optional<Dated<ScaleChecked>> scaleCheck; ///< the last one
    std::optional<Dated<ThermometerChecked>> thermometerCheck;
    bool operator==(const EquipmentStanding&) const = default;

    [[nodiscard]] EquipmentState state() const { return spans.back().state; }
};

struct EquipmentRegister
{
    std::map<std::string, EquipmentStanding> devices; ///< by id
    std::vector<FactId> strays; ///< events of a device that nobody had added, or that was added twice
    bool operator==(const EquipmentRegister&) const = default;
};

/** The register of all these events in the order in which they happened, whatever order they are given in. */
EquipmentRegister foldEquipment(std::vector<Recorded<EquipmentEvent>> events);

enum class UpkeepKind { Service, Calibration };

struct UpkeepDue
{
    std::string device;
    UpkeepKind kind = UpkeepKind::Service;
    Date due; ///< counted from the last time, or from when the device was added
    bool overdue = false; ///< today is after it
    bool operator==(const UpkeepDue&) const = default;
};

/** Planned upkeep of every device that is not retired, first due first. */
std::vector<UpkeepDue> upkeepOf(const EquipmentRegister& devices, const TimeZone& zone, Date today);

/** The spare that can step in for a device: one kept for it, else one of its kind kept for no other; by id.
 */
std::optional<std::string> spareFor(const EquipmentRegister& devices, const std::string& device);

/** The events to record when a device fails: it goes out, and its spare, if there is one, steps in. */
std::vector<EquipmentEvent> takeOut(
    const EquipmentRegister& devices, const std::string& device, MoveReason reason, Instant at);

/**
 * The events to record when a device is back in use: what stepped in for it, and for no other since, is the
 * spare again.
 */
std::vector<EquipmentEvent> bringBack(
    const EquipmentRegister& devices, const std::string& device, Instant at);

const char* codeName(UpkeepKind kind);

}
