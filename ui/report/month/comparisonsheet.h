// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/store.h"
#include "ui/charts/chartsaving.h"
#include "ui/report/month/monthscene.h"

namespace cradlepost {

/** The span of the scene set against another one, with the same shifts and items. */
Result<ChartContent> comparisonSheet(const Store& store, const MonthScene& scene, const ReviewSpan& against);

}
