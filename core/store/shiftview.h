// SPDX-License-Identifier: MIT
#pragma once

#include "core/round/strip.h"
#include "core/store/store.h"

namespace cradlepost {

/** Everything that answers "is this room ready for the next baby?" for one unit at one moment. */
struct ShiftView
{
    Unit unit;
    ShiftCalendar calendar;
    Shift shift;
    AdoptedChecklist adopted; ///< the shift round in force
    std::vector<SavedRound> saved; ///< rounds and checks of this shift
    std::optional<Standing> standing; ///< nothing before the shift's round is done
    std::vector<Gap> gaps; ///< open ones, critical first, then by due time
    std::vector<Draft> drafts; ///< those that can be taken up
    std::vector<UnreadableDraft> unreadable; ///< the others
};

/** Fails when the unit is not known, or has no shifts or no checklist yet. */
Result<ShiftView> shiftView(const Store& store, const std::string& unit, Instant now);

/** The item of that id, in the shift's checklist or else in the check before a birth or after use. */
std::optional<Item> itemNamed(const Store& store, const ShiftView& view, const std::string& id);

/** One column of the strip: a shift and how each section stood in its round; no states: no round. */
struct StripColumn
{
    Shift shift;
    std::vector<SectionState> sections; ///< in the order of the checklist in force today, by section id
};

/** The last `days` days up to and with `last`, each shift, oldest first. */
Result<std::vector<StripColumn>> strip(const Store& store, const ShiftView& view, int days);

}
