// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/handover.h"

namespace cradlepost {

/** What changed; the order of the list is the order of telling. */
enum class HandoverChangeCode {
    StateChanged, ///< before, after: codes of the verdict
    GapOpened,
    GapChanged, ///< other owner or due time
    GapMended,
    StockWorse, ///< before, after: codes of the status, "" when not below par
    StockBetter,
    DeviceOut, ///< after: its state
    DeviceBack, ///< before: its state
    WarmerOn,
    WarmerOff,
    BirthExpected,
    BirthChanged,
    BirthGone,
};

struct HandoverChange
{
    HandoverChangeCode code = HandoverChangeCode::StateChanged;
    std::string subject; ///< item, stock item, device or birth
    int nth = 0; ///< of a gap
    std::string before;
    std::string after;
    bool operator==(const HandoverChange&) const = default;
};

/** From the handover before to this one; empty when nothing changed. Pure. */
std::vector<HandoverChange> differenceOf(const Handover& before, const Handover& after);

const char* codeName(HandoverChangeCode code);

}
