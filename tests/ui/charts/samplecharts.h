// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/chartsaving.h"

namespace cradlepost::test {

/// Words of the samples: short English ones, or Hindi ones that run long.
enum class Wording { English, Hindi };

// One invented chart of each kind, with all that it can show.
ChartContent sampleControl(Wording wording = Wording::English);
ChartContent sampleShiftControl(Wording wording = Wording::English); ///< days and nights, a panel each
ChartContent sampleSurvival(Wording wording = Wording::English);
ChartContent sampleHistogram(Wording wording = Wording::English);
ChartContent sampleFunnel(Wording wording = Wording::English);
ChartContent sampleBars(Wording wording = Wording::English);
ChartContent sampleShares(Wording wording = Wording::English);
ChartContent sampleCalendar(Wording wording = Wording::English);
ChartContent sampleMap(Wording wording = Wording::English);
ChartContent sampleMultiples(Wording wording = Wording::English);

std::vector<ChartContent> sampleCharts(Wording wording = Wording::English);

}
