// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/districtfindings.h"
#include "core/review/unitchanges.h"
#include "core/review/unitfunnel.h"
#include "core/review/unititems.h"
#include "core/review/unitlevels.h"
#include "core/review/unitreporting.h"
#include "core/review/visitneed.h"
#include "core/review/visitsample.h"

namespace cradlepost {

/** All units of a database over one span, compared fairly: which one needs a visit first, and what for. */
struct DistrictReview
{
    ReviewSpan span;
    ReviewSpan before;
    Instant now;
    std::string level; ///< of all units, when the comparison was cut to one
    DistrictOptions options;
    std::vector<DistrictUnit> units; ///< that the parts point to, by name
    std::vector<ReviewItem> items;
    std::vector<std::chrono::year_month> months; ///< of DistrictUnit::months
    UnitFunnel funnel;
    std::vector<UnitInLevel> levels;
    std::vector<UnitShiftMix> shiftMixes;
    UnitItems itemMap;
    std::vector<UnitReporting> reporting;
    std::vector<UnitChange> changes;
    std::vector<VisitNeed> visits;
    std::optional<VisitSample> sample;
    std::optional<TransferPlan> transfers; ///< none: no shelves were read
    std::vector<DistrictFinding> findings; ///< see findingsOf
};

DistrictReview reviewDistrict(const DistrictHistory& history, const DistrictOptions& options = {});

}
