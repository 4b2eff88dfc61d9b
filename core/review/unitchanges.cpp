// SPDX-License-Identifier: MIT
#include "core/review/unitchanges.h"

#include "core/review/widened.h"
#include "core/stats/falsediscovery.h"

#include <algorithm>

namespace cradlepost {

std::vector<UnitChange> unitChanges(const DistrictHistory& history, const DistrictOptions& options)
{
    std::vector<UnitChange> changes;
    std::vector<std::optional<double>> p;
    for (std::size_t i = 0; i < history.units.size(); ++i) {
        const DistrictUnit& unit = history.units[i];
        const stats::Tally before = unit.before.noCriticalGap();
        const stats::Tally after = unit.span.noCriticalGap();
        UnitChange change{.unit = i,
            .before = shareOf(before),
            .after = shareOf(after),
            .dispersion = std::max(unit.before.carryOver(), unit.span.carryOver())};
        p.emplace_back();
        if (std::min(before.n, after.n) < options.fewestRounds)
            change.why = CannotSay::TooFew;
        else {
            change.difference = widenedDifference(after, before, change.dispersion);
            p.back() = widenedP(after, before, change.dispersion);
        }
        changes.push_back(std::move(change));
    }
    const auto adjusted = stats::benjaminiHochberg(p);
    for (std::size_t i = 0; adjusted && i < changes.size(); ++i) {
        UnitChange& change = changes[i];
        change.pAdjusted = (*adjusted)[i];
        const bool isReal = change.pAdjusted && *change.pAdjusted <= options.level;
        change.fell = isReal && change.difference->estimate < 0;
        change.rose = isReal && change.difference->estimate > 0;
    }
    return changes;
}

}
