// SPDX-License-Identifier: MIT
#include "core/review/unitlevels.h"

#include "core/review/widened.h"
#include "core/stats/falsediscovery.h"

#include <algorithm>
#include <map>

namespace cradlepost {

std::vector<UnitInLevel> unitsInLevels(const DistrictHistory& history, const DistrictOptions& options)
{
    std::map<std::string, stats::Tally> pooled;
    std::map<std::string, int> members;
    for (const DistrictUnit& unit : history.units) {
        pooled[unit.level] += unit.span.noCriticalGap();
        members[unit.level] += unit.span.rounds() > 0 ? 1 : 0;
    }
    std::vector<UnitInLevel> result;
    std::vector<std::optional<double>> p;
    for (std::size_t i = 0; i < history.units.size(); ++i) {
        const DistrictUnit& unit = history.units[i];
        const stats::Tally own = unit.span.noCriticalGap();
        const stats::Tally level = pooled[unit.level];
        const stats::Tally others{.x = level.x - own.x, .n = level.n - own.n};
        UnitInLevel one{.unit = i, .level = unit.level, .share = shareOf(own), .others = shareOf(others)};
        p.emplace_back();
        if (own.n == 0)
            one.why = CannotSay::NoData;
        else if (others.n == 0)
            one.why = CannotSay::NotApplicable;
        else {
            one.difference = widenedDifference(own, others, unit.span.carryOver());
            p.back() = widenedP(own, others, unit.span.carryOver());
        }
        result.push_back(std::move(one));
    }
    if (const auto adjusted = stats::benjaminiHochberg(p)) {
        for (std::size_t i = 0; i < result.size(); ++i) {
            result[i].pAdjusted = (*adjusted)[i];
            if (result[i].pAdjusted && *result[i].pAdjusted <= options.level)
                result[i].band = result[i].difference->estimate < 0 ? UnitBand::Lower : UnitBand::Higher;
        }
    }
    std::stable_sort(result.begin(), result.end(),
        [](const UnitInLevel& a, const UnitInLevel& b) { return a.level < b.level; });
    return result;
}

std::vector<UnitShiftMix> unitShiftMixes(const DistrictHistory& history)
{
    std::map<std::string, stats::Tally> gaps; // rounds with a critical gap by shift, all units
    const auto gapsOf = [](stats::Tally clear) { return stats::Tally{.x = clear.n - clear.x, .n = clear.n}; };
    for (const DistrictUnit& unit : history.units) {
        for (const UnitShift& shift : unit.shifts)
            gaps[shift.shift] += gapsOf(shift.noCriticalGap);
    }
    std::vector<UnitShiftMix> mixes;
    for (std::size_t i = 0; i < history.units.size(); ++i) {
        UnitShiftMix mix{.unit = i};
        std::vector<stats::IndirectStratum> strata;
        for (const UnitShift& shift : history.units[i].shifts) {
            const stats::Tally all = gaps[shift.shift];
            mix.observed += gapsOf(shift.noCriticalGap).x;
            if (shift.noCriticalGap.n > 0)
                strata.push_back({.exposure = static_cast<double>(shift.noCriticalGap.n),
                    .standardRate = static_cast<double>(all.x) / static_cast<double>(all.n)});
        }
        if (strata.empty())
            continue;
        if (const auto ratio = stats::indirectRatio(mix.observed, strata))
            mix.ratio = *ratio;
        mixes.push_back(mix);
    }
    return mixes;
}

}
