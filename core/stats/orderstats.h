// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <span>

namespace cradlepost::stats {

/** The middle value, or the mean of the two middle ones. Undefined for an empty list. Unit of the values. */
Result<double> median(std::span<const double> values);

/**
 * Quantile by linear interpolation between order statistics, position (n - 1)p (type 7 of Hyndman RJ, Fan Y
 * (1996) The American Statistician 50:361-365). Undefined for an empty list; 0 <= p <= 1.
 */
Result<double> quantile(std::span<const double> values, double p);

/** Median of the distances from the median, not scaled; 0 when more than half of the values are equal. */
Result<double> medianDeviation(std::span<const double> values);

}
