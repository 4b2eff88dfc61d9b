// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/chartfigure.h"

#include <functional>
#include <vector>

namespace cradlepost {

/// A figure that is a list (bars, rows, map, calendar by weeks, panels) in as few pieces as it takes for each
/// to fit, about equally long. One piece when all fits, when it is a curve, or when there is but one row.
std::vector<ChartFigure> figurePieces(
    const ChartFigure& figure, const std::function<bool(const ChartFigure&)>& fits);

}
