// SPDX-License-Identifier: MIT
#pragma once

#include "core/ledger/stationkey.h"
#include "core/store/unit.h"

namespace cradlepost::demo {

// Ids of the units; each has a story, see story.h.
inline constexpr char sorrelHill[] = "sorrel-hill";
inline constexpr char tarnFerry[] = "tarn-ferry";
inline constexpr char quillmere[] = "quillmere";
inline constexpr char ostrey[] = "ostrey";
inline constexpr char pennyWeir[] = "penny-weir";
inline constexpr char ashLock[] = "ash-lock";
inline constexpr char hallowDown[] = "hallow-down";
inline constexpr char marlGate[] = "marl-gate";

/** How a ward works when nothing special happens. */
struct Habits
{
    double birthsPerDay = 1;
    double roundsDone = 0.95; ///< share of shifts with a round
    double checksDone = 0.7; ///< share of births with a check before, and with one after
    double actsOnGaps = 0.15; ///< chance that a gap without an owner gets one after a round
    double gapLoad = 1; ///< how often things fail, against the usual
    double pace = 1; ///< seconds an item, against the usual
    double leftOut = 0.002; ///< chance that an item is passed over in a round
    double halfDegrees = 0; ///< share of readings that are written to the nearest half, or five
};

struct UnitPlan
{
    Unit unit;
    ShiftPattern pattern;
    std::vector<Person> people; ///< the first one is in charge
    ChosenLimits limits;
    std::string cylinder; ///< id of a cylinder size
    std::vector<std::string> without; ///< items that do not apply here
    Habits habits;

    [[nodiscard]] bool is(std::string_view id) const { return unit.id == id; }
};

/** The eight units of the invented district of Larkmere. */
std::vector<UnitPlan> larkmere();

/** Always the same key for the same unit: nothing in the demo needs a secret. */
StationKey stationOf(const UnitPlan& plan);

}
