// SPDX-License-Identifier: MIT
#include "core/review/unititems.h"

namespace cradlepost {

UnitItems unitItems(const DistrictHistory& history, const DistrictOptions& options)
{
    UnitItems map;
    for (std::size_t item = 0; item < history.items.size(); ++item) {
        DistrictItem row{.item = item};
        std::vector<stats::Tally> cells;
        for (std::size_t unit = 0; unit < history.units.size(); ++unit) {
            const auto& gaps = history.units[unit].gaps;
            cells.push_back(item < gaps.size() ? gaps[item] : stats::Tally());
            row.gaps += cells.back();
            const Share share = shareOf(cells.back());
            if (share.interval && share.interval->low > options.oftenShare)
                row.oftenIn.push_back(unit);
        }
        if (row.gaps.x == 0)
            continue;
        map.items.push_back(std::move(row));
        map.cells.push_back(std::move(cells));
    }
    return map;
}

}
