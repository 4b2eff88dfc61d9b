// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/unitchanges.h"
#include "core/review/unitfunnel.h"
#include "core/review/unitreporting.h"

namespace cradlepost {

enum class VisitReasonCode {
    CriticalOpen, ///< critical gaps open: count, items (up to three, oldest first), hours (the oldest)
    OftenMissing, ///< a critical item missing again and again: items (one), share
    Below, ///< clearly lower than the district: share
    Fell, ///< since the span before: before, share
    Silent, ///< no rounds: days in a row, count (days since the last round at the end of the span)
    Questions, ///< about the entries: count
    RunsOut, ///< stock that is out or will not last until its delivery: count, names (up to three)
};

const char* codeName(VisitReasonCode code);

struct VisitReason
{
    VisitReasonCode code = VisitReasonCode::CriticalOpen;
    double points = 0; ///< by VisitWeights
    std::vector<std::string> items; ///< ids
    std::vector<std::string> names; ///< of stock items, as the ward calls them
    std::int64_t count = 0;
    double hours = 0;
    int days = 0;
    Share share;
    Share before;
};

/** Whom most of the points call for: by the kind of the items that are missing. */
enum class VisitHelp {
    Supervisor, ///< habits, people, reporting: what is confirmed by looking
    Supplies, ///< counts, kits, cylinders
    Engineer, ///< function tests, warm-up, readings
};

const char* codeName(VisitHelp help);

struct VisitNeed
{
    std::size_t unit = 0; ///< position in DistrictHistory::units
    double points = 0; ///< sum of the reasons
    std::vector<VisitReason> reasons; ///< most points first
    VisitHelp help = VisitHelp::Supervisor;
};

/** What visits are decided on. */
struct VisitEvidence
{
    const UnitFunnel& funnel;
    const std::vector<UnitChange>& changes;
    const std::vector<UnitReporting>& reporting;
};

/**
 * Units with a reason, most points first, by name on a tie. An order of visits, no ranking of quality: a unit
 * that cannot be told apart may come first for what is missing there today.
 */
std::vector<VisitNeed> visitNeeds(
    const DistrictHistory& history, const VisitEvidence& evidence, const DistrictOptions& options);

}
