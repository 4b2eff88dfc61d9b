// SPDX-License-Identifier: MIT
#pragma once

#include "core/stats/distributions.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

/** How the count distributions find a quantile; for their own source file. */
namespace cradlepost::stats {

inline double real(std::int64_t k) { return static_cast<double>(k); }

/** Equal to within this share counts as reached. */
inline constexpr double quantileSlack = 64 * std::numeric_limits<double>::epsilon();
/** A sum that comes this near to what is asked leaves the word to the search. */
inline constexpr double quantileDoubt = 1e-12;

/** Smallest k in [low, high] at which `reached` turns true, looked for outwards from `guess`. */
template <class Reached>
std::int64_t firstReached(Reached reached, double guess, std::int64_t low, std::int64_t high)
{
    std::int64_t k
        = std::clamp(static_cast<std::int64_t>(std::clamp(guess, real(low), real(high))), low, high);
    std::int64_t step = 1;
    if (reached(k)) {
        // `high` becomes a k that has reached, `low` one below the first candidate.
        high = k;
        while (high > low && reached(std::max(low, high - step))) {
            high = std::max(low, high - step);
            step *= 2;
        }
        low = std::max(low - 1, high - step);
    } else {
        low = k;
        while (low < high && !reached(std::min(high, low + step))) {
            low = std::min(high, low + step);
            step *= 2;
        }
        high = std::min(high, low + step);
    }
    while (high - low > 1) {
        const auto middle = low + (high - low) / 2;
        (reached(middle) ? high : low) = middle;
    }
    return high;
}

struct Shape
{
    double mean = 0;
    double variance = 0;
    double skew = 0;
};

/** Cornish-Fisher: mostly right or next to it. */
inline double guessed(double q, const Shape& shape)
{
    const double z = normalQuantile(std::clamp(q, 1e-300, 1 - 1e-16));
    return std::floor(shape.mean + std::sqrt(shape.variance) * (z + shape.skew * (z * z - 1) / 6) + 0.5);
}

template <class Distribution>
std::int64_t discreteQuantile(const Distribution& d, double q, const Shape& shape, std::int64_t most)
{
    if (q <= 0)
        return 0;
    const double guess = guessed(q, shape);
    // In the upper half the small tail decides: 1 - q is exact there, the sum of the lower tail is not.
    if (q > 0.5) {
        const double tail = 1 - q;
        return firstReached(
            [&](std::int64_t k) { return d.moreThan(k) <= tail + quantileSlack * q; }, guess, 0, most);
    }
    return firstReached(
        [&](std::int64_t k) { return d.atMost(k) >= q * (1 - quantileSlack); }, guess, 0, most);
}

/**
 * Adds up chances from 0, `first`, until they reach q; `ratio(k)` is the chance of k + 1 over that of k.
 * Nothing where the sum comes too near to q to tell or takes more than a few hundred steps.
 */
template <class Ratio> std::optional<std::int64_t> climbed(double q, double first, Ratio ratio)
{
    constexpr int mostSteps = 400;
    double term = first;
    double below = 0;
    double sum = first;
    for (int k = 0; k < mostSteps; ++k) {
        if (sum >= q) {
            const double doubt = q * quantileDoubt;
            return sum > q + doubt && below < q - doubt ? std::optional<std::int64_t>(k) : std::nullopt;
        }
        below = sum;
        term *= ratio(k);
        sum += term;
    }
    return std::nullopt;
}

}
