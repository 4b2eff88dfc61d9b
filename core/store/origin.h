// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/clock.h"
#include "core/round/roundrecord.h"

namespace cradlepost {

/**
 * Where a fact comes from and when. Of two facts that exclude each other the later one holds, by time, then
 * by station and seq: the same on every station, in whatever order the records arrive.
 */
struct Origin
{
    Instant at; ///< by a clock that never goes back: the latest time the record's chain had seen
    RecordId id;
    auto operator<=>(const Origin&) const = default;
};

}
