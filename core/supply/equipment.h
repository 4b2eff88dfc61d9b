// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/decimal.h"
#include "core/base/json.h"
#include "core/supply/recorded.h"

namespace cradlepost {

enum class EquipmentKind {
    Warmer,
    BagMask,
    Suction,
    OxygenSource,
    Oximeter,
    Scale,
    Thermometer,
    Fridge,
    Clock,
    Other,
};

enum class EquipmentState { InUse, Spare, OutForRepair, Retired };

enum class MoveReason {
    Broken,
    FailedTest,
    Service, ///< planned: no failure
    Repaired,
    StepsIn, ///< a spare takes the place of another
    StepsBack, ///< back to being the spare
    WornOut,
    Lost,
    NotKnown,
};

/** One device of the ward, known by its id; the number is what is painted on it. */
struct Equipment
{
    std::string id; ///< [a-z0-9-]{1,40}
    EquipmentKind kind = EquipmentKind::Other;
    std::string label; ///< as the ward calls it, at most 60 characters
    std::string number; ///< serial or inventory number, at most 40; may be empty
    std::vector<std::string> serves; ///< checklist items that depend on it, sorted
    std::string spareFor; ///< id of the device that it stands in for; empty: any of its kind
    int serviceDays = 0; ///< between services; 0: none planned
    int calibrationDays = 0; ///< between calibrations; 0: none planned
    bool operator==(const Equipment&) const = default;
};

struct Added
{
    Equipment device;
    EquipmentState state = EquipmentState::InUse;
    bool operator==(const Added&) const = default;
};
struct Changed
{
    Equipment device;
    bool operator==(const Changed&) const = default;
};
struct Moved
{
    EquipmentState to = EquipmentState::InUse;
    MoveReason reason = MoveReason::NotKnown;
    bool operator==(const Moved&) const = default;
};
struct Serviced
{
    bool operator==(const Serviced&) const = default;
};
struct Calibrated
{
    bool operator==(const Calibrated&) const = default;
};
/** A scale with a known weight on it, in grams. */
struct ScaleChecked
{
    int known = 0; ///< 1..50 000
    int read = 0; ///< 0..50 000
    bool operator==(const ScaleChecked&) const = default;
};
/** A thermometer beside a reference, in degrees C, -90..200. */
struct ThermometerChecked
{
    Decimal reference;
    Decimal read;
    bool operator==(const ThermometerChecked&) const = default;
};

using EquipmentDeed
    = std::variant<Added, Changed, Moved, Serviced, Calibrated, ScaleChecked, ThermometerChecked>;

/** Something done to a device. The body of an `equipment` record. */
struct EquipmentEvent
{
    std::string device; ///< id
    Instant at;
    EquipmentDeed deed;
    bool operator==(const EquipmentEvent&) const = default;
};

Result<void> checkEvent(const EquipmentEvent& event);
Json toBody(const EquipmentEvent& event);
Result<EquipmentEvent> equipmentEventFromBody(const Json& body);

const char* codeName(EquipmentKind kind);
const char* codeName(EquipmentState state);
const char* codeName(MoveReason reason);
std::optional<EquipmentKind> equipmentKindFromCode(std::string_view code);
std::optional<EquipmentState> equipmentStateFromCode(std::string_view code);
std::optional<MoveReason> moveReasonFromCode(std::string_view code);

}
