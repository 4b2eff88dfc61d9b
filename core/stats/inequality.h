// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace cradlepost::stats {

struct Gini
{
    double value = 0; ///< 0 all equal .. (n - 1)/n one has all
    std::optional<double> unbiased; ///< times n/(n - 1); none for a single value
};

/**
 * Concentration: sum (2i - n - 1) x_(i)/(n sum x). Values at least 0; Undefined for an empty list and when
 * the sum is 0. Source: Gini C (1912, from memory) Variabilita e mutabilita; Sen A (1973, from memory) On
 * Economic Inequality (the formula).
 */
Result<Gini> gini(std::span<const double> values);

struct Cause
{
    std::string name;
    double count = 0;
};

struct ParetoRow
{
    std::size_t row = 0; ///< in the input
    double count = 0;
    double cumulative = 0; ///< share of the total up to here
    bool vital = false; ///< in the shortest prefix that reaches the share
};

/**
 * Causes from the most to the least frequent (ties by name), with running shares; the "vital few" are the
 * shortest prefix with at least `share` of all. Counts at least 0, share in (0, 1]; Undefined when there are
 * none or all are 0. Source: Juran JM (1951) Quality Control Handbook (from memory).
 */
Result<std::vector<ParetoRow>> pareto(std::span<const Cause> causes, double share = 0.8);

}
