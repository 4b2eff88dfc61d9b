// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/selection.h"

namespace cradlepost {

enum class DoneState {
    InTime,
    Late,
    Paper, ///< done, typed in later: nothing is said of its time
    Missing,
    Running, ///< no round yet, and the shift is not over
};

const char* codeName(DoneState state);

struct DoneCell
{
    Shift shift;
    DoneState state = DoneState::Missing;
    std::optional<Readiness> readiness; ///< of the round, over the chosen items
    int amended = 0;
};

/** Rounds done against due, shift by shift. */
struct DoneCalendar
{
    std::vector<DoneCell> cells; ///< the due shifts of the span, in order of time
    std::vector<std::string> shifts; ///< codes, in the order of the day
    Share done; ///< of those due; a running shift without a round counts in neither
    Share inTime; ///< of those done by screen
    std::int64_t late = 0;
    std::int64_t missing = 0;
    std::int64_t paper = 0;
    std::int64_t amended = 0;
    std::int64_t hands = 0; ///< how many people recorded rounds
};

DoneCalendar doneCalendar(const Selection& selection);

}
