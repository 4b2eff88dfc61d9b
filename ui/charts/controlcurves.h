// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/chartfigure.h"
#include "ui/charts/curves.h"

namespace cradlepost {

/// Centre lines and limits as steps, a phase each, then the lines between the points, interrupted where there
/// is no data and quiet before the span; x is the index of the period. The second series is dashed.
std::vector<Curve> controlCurves(const std::vector<const ControlSeries*>& series, const Theme& theme);

}
