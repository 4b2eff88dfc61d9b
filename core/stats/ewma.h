// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/stats/tally.h"

#include <optional>
#include <span>
#include <vector>

/**
 * Exponentially weighted moving average: Z_i = lambda x_i + (1 - lambda) Z_(i-1), starting at the target (not
 * at the first value). Source: NIST/SEMATECH e-Handbook 6.3.2.4; Lucas JM, Saccucci MS (1990, from memory)
 * Technometrics 32:1-12. lambda lies in (0, 1], 1 being the plain chart; width is the L of the limits, above
 * 0.
 */
namespace cradlepost::stats {

enum class EwmaLimits {
    Exact, ///< narrow at the start: target +- L sigma sqrt(lambda/(2 - lambda) (1 - (1 - lambda)^(2i)))
    Steady, ///< the width that they reach, from the first point on
};

struct EwmaPoint
{
    std::size_t row = 0;
    double average = 0; ///< Z, in the unit of the values
    double sd = 0; ///< of Z
    Interval limits;
    bool beyond = false; ///< strictly outside
};

struct EwmaOptions
{
    double target = 0;
    double sigma = 1; ///< of one value; above 0
    double lambda = 0.2;
    double width = 3;
    EwmaLimits limits = EwmaLimits::Exact;
};

/** For single values, in their unit. No values is Undefined. */
Result<std::vector<EwmaPoint>> ewma(std::span<const double> values, const EwmaOptions& options);

/**
 * For shares with varying n: v_i = lambda^2 p0(1 - p0)/n_i + (1 - lambda)^2 v_(i-1), v_0 = 0, limits
 * p0 +- L sqrt(v_i), cut to [0, 1]. A row with n = 0 leaves average and variance as they were; before the
 * first observation there is no point. 0 < p0 < 1. Nothing observed is Undefined.
 */
Result<std::vector<EwmaPoint>> binomialEwma(
    std::span<const Tally> rows, double p0, double lambda = 0.2, double width = 2.7);

}
