// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/storesview.h"

#include <span>

namespace cradlepost {

/** What a round saw, each answer with its time. */
struct SeenAnswers
{
    const Checklist& checklist;
    std::vector<Answer> answers;
    std::vector<Instant> at;
};

/** The cylinder that the device stands for; none when it serves no cylinder's item or nobody read it. */
std::optional<CylinderStand> cylinderOf(const Equipment& device, const SeenAnswers& seen);

/** The register at one moment, out for repair first, then by what is due; `rounds`: those of testDays. */
std::vector<DeviceRow> deviceRows(const EquipmentRegister& known, const ShiftView& shift,
    std::span<const RoundRow> rounds, Instant now, const StoresRules& rules);

/** `readings`: of all fridges since the first day shown. `movements` and `items` say what was inside. */
std::vector<FridgeRow> fridgeRows(const EquipmentRegister& known, const std::vector<FridgeReading>& readings,
    const std::vector<Recorded<StockMovement>>& movements, const std::vector<StockItem>& items,
    const TimeZone& zone, Instant now, const StoresRules& rules);

}
