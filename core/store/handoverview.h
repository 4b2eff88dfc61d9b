// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/boardview.h"
#include "core/supply/handoverdifference.h"

namespace cradlepost {

/** What the shift would hand over at one moment, and what there is to compare it with. */
struct HandoverView
{
    Handover what;
    std::optional<LastHandover> last;
    std::vector<HandoverChange> changes; ///< since `last`
    std::map<std::string, std::string> stockNames; ///< by item
};

/** `shift` and `board`: the same unit at `now`. */
Result<HandoverView> handoverView(
    const Store& store, const ShiftView& shift, const BoardView& board, Instant now);

}
