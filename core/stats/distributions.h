// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

/**
 * The distributions that the methods stand on. This is the ground layer: the callers have checked their
 * arguments, and the comments state what they must be. Both tails are computed directly, so that a tail of
 * 1e-17 keeps its digits.
 */
namespace cradlepost::stats {

double normalCdf(double z);
/** P(Z > z). */
double normalUpper(double z);
/** 0 < p < 1. */
double normalQuantile(double p);
/** z of a two-sided level, 1.959963984540054 at 0.95; 0 < level < 1. */
double normalWidth(double level);
/** P(|Z| > |z|). */
double normalTwoSided(double z);

/** P(X > x) with df > 0 degrees of freedom, x >= 0. */
double chiSquareUpper(double x, double df);
/** 0 < p < 1, shape > 0, scale > 0. */
double gammaQuantile(double p, double shape, double scale);
/** As gammaQuantile(1 - p), without losing digits of a small p. */
double gammaUpperQuantile(double p, double shape, double scale);
/** 0 < p < 1, a > 0, b > 0. */
double betaQuantile(double p, double a, double b);
double betaUpperQuantile(double p, double a, double b);

/** Where the distribution of a count reaches q. */
struct Crossing
{
    std::int64_t k = 0; ///< the quantile
    double excess = 0; ///< P(X <= k) - q
    double pmf = 0; ///< P(X = k)
};

/** Number of events in n independent trials; n >= 0, 0 <= p <= 1. */
struct Binomial
{
    std::int64_t n = 0;
    double p = 0;
    [[nodiscard]] double pmf(std::int64_t k) const;
    [[nodiscard]] double atMost(std::int64_t k) const;
    [[nodiscard]] double moreThan(std::int64_t k) const;
    /** Smallest k with P(X <= k) >= q; 0 <= q <= 1. Equal to within 64 rounding units counts as reached. */
    [[nodiscard]] std::int64_t quantile(double q) const;
    /**
     * Quantile of q = tail, or of 1 - tail when `upper`, with what is needed to interpolate; 0 < tail <= 0.5,
     * n
     * >= 1, 0 < p < 1. z is the normal quantile of q: callers with many n have it at hand.
     */
    [[nodiscard]] Crossing crossing(double tail, double z, bool upper) const;
};

/** mean >= 0. */
struct Poisson
{
    double mean = 0;
    [[nodiscard]] double pmf(std::int64_t k) const;
    [[nodiscard]] double atMost(std::int64_t k) const;
    [[nodiscard]] double moreThan(std::int64_t k) const;
    /** 0 <= q < 1. */
    [[nodiscard]] std::int64_t quantile(double q) const;
};

/** Gamma-Poisson with variance mean + mean^2/size; mean >= 0, size > 0. */
struct NegativeBinomial
{
    double mean = 0;
    double size = 1;
    [[nodiscard]] double pmf(std::int64_t k) const;
    [[nodiscard]] double atMost(std::int64_t k) const;
    [[nodiscard]] double moreThan(std::int64_t k) const;
    /** 0 <= q < 1. */
    [[nodiscard]] std::int64_t quantile(double q) const;
};

/** Number right in a sample drawn without putting back; 0 <= right <= lot, 0 <= sample <= lot. */
struct Hypergeometric
{
    std::int64_t lot = 0;
    std::int64_t right = 0;
    std::int64_t sample = 0;
    [[nodiscard]] std::int64_t least() const;
    [[nodiscard]] std::int64_t most() const;
    [[nodiscard]] double pmf(std::int64_t k) const;
    [[nodiscard]] double atMost(std::int64_t k) const;
    [[nodiscard]] double moreThan(std::int64_t k) const;
};

}
