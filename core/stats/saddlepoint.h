// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

/**
 * Chances of single counts without cancellation of large logarithms: the exponent is a sum of small
 * deviances. Source: Loader C (2000, from memory) Fast and Accurate Computation of Binomial Probabilities.
 */
namespace cradlepost::stats {

/** A chance as exp(exponent) sqrt(square): products of chances add and multiply before the one exp. */
struct Saddle
{
    double exponent = 0;
    double square = 1;
    [[nodiscard]] double value() const;
};

/** Up to this size the rounding of n p does not show in the first eleven digits. */
inline constexpr std::int64_t largestSaddle = 1'000'000;

/** P(X = k) of n trials; 0 <= k <= n <= largestSaddle, 0 < p < 1. */
Saddle binomialSaddle(std::int64_t n, std::int64_t k, double p);

/** P(X = k); 0 <= k <= largestSaddle, mean > 0. */
Saddle poissonSaddle(std::int64_t k, double mean);

}
