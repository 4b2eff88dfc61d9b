// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/districthistory.h"
#include "core/review/districtoptions.h"

namespace cradlepost {

/** An item over all units. */
struct DistrictItem
{
    std::size_t item = 0; ///< position in DistrictHistory::items
    stats::Tally gaps; ///< of rounds that looked, all units
    std::vector<std::size_t>
        oftenIn; ///< units in which it is missing in more than oftenShare, by the lower limit
};

/** Gaps by item and unit: rows as `items`, columns as DistrictHistory::units. */
struct UnitItems
{
    std::vector<DistrictItem> items; ///< with a gap anywhere, in the order of the checklist
    std::vector<std::vector<stats::Tally>> cells; ///< n = 0: nobody looked, or it does not apply there
};

UnitItems unitItems(const DistrictHistory& history, const DistrictOptions& options);

}
