// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/store.h"
#include "ui/report/district/districtscene.h"
#include "ui/report/writereport.h"

namespace cradlepost {

/** One visit that is planned. What it is made from must outlive it. */
struct PlannedVisit
{
    const DistrictScene& scene;
    const DistrictHistory& history;
    std::size_t unit = 0; ///< position in the review's units
    Date day; ///< the items are picked by lot for unit and day: printed again, the sheet is the same
};

/** Positions in the latest checklist of the items that the visit looks at, picked by lot; rising. */
std::vector<std::size_t> sampledItems(const PlannedVisit& visit);

/** A sheet to take along: why this unit, what is open, the items to look at with boxes to fill, and the rule.
 */
ReportDocument visitDocument(const PlannedVisit& visit, const ReportSeal& seal);

/** Writes it by the ending of `path`, see writeReport; its tables hold the sample. */
Result<void> writeVisitSheet(const Store& store, const PlannedVisit& visit, const QString& path);

}
