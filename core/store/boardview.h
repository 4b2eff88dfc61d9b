// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/shiftview.h"
#include "core/supply/birthcover.h"
#include "core/supply/notices.h"

namespace cradlepost {

struct WarmerRow
{
    Equipment device;
    EquipmentState state = EquipmentState::InUse;
    WarmerStanding standing;
};

/** The warmers of one unit and the births it expects, at one moment. */
struct BoardView
{
    std::vector<WarmerRow> warmers; ///< in use, then the spares; by label
    std::vector<BirthCover> births; ///< the first expected first
    std::vector<OffTooSoon> offTooSoon;
    /** Whole kits as counted last in this shift, less one for each birth since; none: nobody has counted. */
    std::optional<std::int64_t> kits;
    std::chrono::minutes warmUp = usualWarmUp; ///< as the unit's checklist wants it
    EquipmentRegister devices;
};

/** `shift`: the same unit at `now`. While nobody has counted the kits, none is said to be missing. */
Result<BoardView> boardView(const Store& store, const ShiftView& shift, Instant now);

/** How long after the beginning of a shift its round is on time. Common practice, no source. */
inline constexpr std::chrono::minutes roundOnTime{60};

/** What is due in the unit at `now`, first due first. `shift` and `board`: the same unit at the same time. */
Result<std::vector<Notice>> noticesOf(
    const Store& store, const ShiftView& shift, const BoardView& board, Instant now);

}
