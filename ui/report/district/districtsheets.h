// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/chartsaving.h"
#include "ui/report/district/districtscene.h"

namespace cradlepost {

// Each part of a comparison of units as it is drawn, on the page and in the report alike.

/** Units in the order in which they call for a visit, by points. */
ChartContent visitsSheet(const DistrictScene& scene);
ChartContent funnelSheet(const DistrictScene& scene);
/** Shares with their limits, in bands that pretend to no ranking. */
ChartContent sideBySideSheet(const DistrictScene& scene);
/** Each unit's year on one scale. */
ChartContent unitMonthsSheet(const DistrictScene& scene);
ChartContent unitItemsSheet(const DistrictScene& scene);
ChartContent reportingSheet(const DistrictScene& scene);
/** Against the span before. */
ChartContent unitChangesSheet(const DistrictScene& scene);

/** Transfers that would help, by pieces. */
ChartContent stockSheet(const DistrictScene& scene);

struct DistrictSheet
{
    DistrictPart part = DistrictPart::Funnel;
    ChartContent content;
};

/** All of them, in the order in which a page shows them. */
std::vector<DistrictSheet> districtSheets(const DistrictScene& scene);

}
