// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/unitfunnel.h"
#include "core/stats/standardise.h"
#include "core/stats/twoproportions.h"

namespace cradlepost {

/** A unit against the other units of its own level of facility. */
struct UnitInLevel
{
    std::size_t unit = 0; ///< position in DistrictHistory::units
    std::string level;
    Share share; ///< shifts without a critical gap
    Share others; ///< of the other units of the level, pooled
    /** Unit minus others: Newcombe's limits, widened by the root of the unit's carry-over. */
    std::optional<stats::Difference> difference;
    std::optional<double> pAdjusted; ///< pooled test, z over that root; Benjamini-Hochberg over all units
    UnitBand band = UnitBand::NotToldApart;
    std::optional<CannotSay> why; ///< NotApplicable: alone in its level; NoData: no rounds
};

/** By level, then by name. */
std::vector<UnitInLevel> unitsInLevels(const DistrictHistory& history, const DistrictOptions& options);

/** Rounds with a critical gap against what the district's share in the same shifts of the day leads to
 * expect. */
struct UnitShiftMix
{
    std::size_t unit = 0;
    std::int64_t observed = 0; ///< rounds with a critical gap
    /**
     * Indirect standardisation by shift of the day, so that a unit that reports its quiet shifts only gains
     * nothing. Exact limits. A ratio compares a unit with the district, not with another unit.
     */
    std::optional<stats::Indirect> ratio;
};

/** Units with a round, in the order of the history. */
std::vector<UnitShiftMix> unitShiftMixes(const DistrictHistory& history);

}
