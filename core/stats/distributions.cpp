// SPDX-License-Identifier: MIT
#include "core/stats/distributions.h"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/special_functions/beta.hpp>
#include <boost/math/special_functions/gamma.hpp>
#include <cmath>
#include <limits>
#include <numbers>

namespace cradlepost::stats {

namespace {

namespace bm = boost::math;
// The callers have checked; nothing here may throw.
using Quiet = bm::policies::policy<bm::policies::domain_error<bm::policies::ignore_error>,
    bm::policies::pole_error<bm::policies::ignore_error>,
    bm::policies::overflow_error<bm::policies::ignore_error>,
    bm::policies::evaluation_error<bm::policies::ignore_error>,
    bm::policies::rounding_error<bm::policies::ignore_error>>;
const Quiet quiet;

double real(std::int64_t k) { return static_cast<double>(k); }

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

template <class Distribution>
std::int64_t discreteQuantile(
    const Distribution& d, double q, double mean, double variance, std::int64_t most)
{
    constexpr double slack = 64 * std::numeric_limits<double>::epsilon();
    if (q <= 0)
        return 0;
    const double z = normalQuantile(std::clamp(q, 1e-300, 1 - 1e-16));
    const double guess = mean + z * std::sqrt(variance);
    // In the upper half the small tail decides: 1 - q is exact there, the sum of the lower tail is not.
    if (q > 0.5) {
        const double tail = 1 - q;
        return firstReached(
            [&](std::int64_t k) { return d.moreThan(k) <= tail + slack * q; }, guess, 0, most);
    }
    return firstReached([&](std::int64_t k) { return d.atMost(k) >= q * (1 - slack); }, guess, 0, most);
}

constexpr std::int64_t farAway = std::int64_t{1} << 60;

}

double normalCdf(double z) { return 0.5 * std::erfc(-z / std::numbers::sqrt2); }
double normalUpper(double z) { return 0.5 * std::erfc(z / std::numbers::sqrt2); }
double normalTwoSided(double z) { return std::erfc(std::abs(z) / std::numbers::sqrt2); }
double normalQuantile(double p) { return bm::quantile(bm::normal_distribution<double, Quiet>(), p); }
double normalWidth(double level) { return -normalQuantile((1 - level) / 2); }

double chiSquareUpper(double x, double df) { return bm::gamma_q(df / 2, x / 2, quiet); }
double gammaQuantile(double p, double shape, double scale)
{
    return scale * bm::gamma_p_inv(shape, p, quiet);
}
double gammaUpperQuantile(double p, double shape, double scale)
{
    return scale * bm::gamma_q_inv(shape, p, quiet);
}
double betaQuantile(double p, double a, double b) { return bm::ibeta_inv(a, b, p, quiet); }
double betaUpperQuantile(double p, double a, double b) { return bm::ibetac_inv(a, b, p, quiet); }

double Binomial::pmf(std::int64_t k) const
{
    if (k < 0 || k > n)
        return 0;
    if (p <= 0 || p >= 1)
        return k == (p <= 0 ? 0 : n) ? 1 : 0;
    if (k == 0)
        return std::exp(real(n) * std::log1p(-p));
    if (k == n)
        return std::pow(p, real(n));
    return bm::ibeta_derivative(real(k + 1), real(n - k + 1), p, quiet) / real(n + 1);
}

double Binomial::atMost(std::int64_t k) const
{
    if (k < 0)
        return 0;
    if (k >= n || p <= 0)
        return 1;
    if (p >= 1)
        return 0;
    return bm::ibetac(real(k + 1), real(n - k), p, quiet);
}

double Binomial::moreThan(std::int64_t k) const
{
    if (k < 0)
        return 1;
    if (k >= n || p <= 0)
        return 0;
    if (p >= 1)
        return 1;
    return bm::ibeta(real(k + 1), real(n - k), p, quiet);
}

std::int64_t Binomial::quantile(double q) const
{
    if (q >= 1)
        return p <= 0 ? 0 : n;
    return discreteQuantile(*this, q, real(n) * p, real(n) * p * (1 - p), n);
}

double Poisson::pmf(std::int64_t k) const
{
    if (k < 0)
        return 0;
    if (mean <= 0)
        return k == 0 ? 1 : 0;
    return k == 0 ? std::exp(-mean) : bm::gamma_p_derivative(real(k + 1), mean, quiet);
}

double Poisson::atMost(std::int64_t k) const
{
    if (k < 0)
        return 0;
    return mean <= 0 ? 1 : bm::gamma_q(real(k + 1), mean, quiet);
}

double Poisson::moreThan(std::int64_t k) const
{
    if (k < 0)
        return 1;
    return mean <= 0 ? 0 : bm::gamma_p(real(k + 1), mean, quiet);
}

std::int64_t Poisson::quantile(double q) const { return discreteQuantile(*this, q, mean, mean, farAway); }

// Of the two chances size/(size + mean) and mean/(size + mean) the smaller one keeps its digits when it is
// handed on.

double NegativeBinomial::pmf(std::int64_t k) const
{
    if (k < 0)
        return 0;
    if (mean <= 0)
        return k == 0 ? 1 : 0;
    if (k == 0)
        return std::exp(-size * std::log1p(mean / size));
    const double success = size / (size + mean);
    const double density = mean < size ? bm::ibeta_derivative(real(k + 1), size, mean / (size + mean), quiet)
                                       : bm::ibeta_derivative(size, real(k + 1), success, quiet);
    return success / (size + real(k)) * density;
}

double NegativeBinomial::atMost(std::int64_t k) const
{
    if (k < 0)
        return 0;
    if (mean <= 0)
        return 1;
    return mean < size ? bm::ibetac(real(k + 1), size, mean / (size + mean), quiet)
                       : bm::ibeta(size, real(k + 1), size / (size + mean), quiet);
}

double NegativeBinomial::moreThan(std::int64_t k) const
{
    if (k < 0)
        return 1;
    if (mean <= 0)
        return 0;
    return mean < size ? bm::ibeta(real(k + 1), size, mean / (size + mean), quiet)
                       : bm::ibetac(size, real(k + 1), size / (size + mean), quiet);
}

std::int64_t NegativeBinomial::quantile(double q) const
{
    return discreteQuantile(*this, q, mean, mean + mean * mean / size, farAway);
}

std::int64_t Hypergeometric::least() const { return std::max<std::int64_t>(0, sample + right - lot); }
std::int64_t Hypergeometric::most() const { return std::min(sample, right); }

double Hypergeometric::pmf(std::int64_t k) const
{
    if (k < least() || k > most())
        return 0;
    if (sample == 0 || sample == lot)
        return 1;
    // Three binomial terms with one p: far more exact than factorials of large lots (Loader 2000).
    const double p = real(sample) / real(lot);
    return Binomial{right, p}.pmf(k)
        * (Binomial{lot - right, p}.pmf(sample - k) / Binomial{lot, p}.pmf(sample));
}

double Hypergeometric::atMost(std::int64_t k) const
{
    if (k < least())
        return 0;
    if (k >= most())
        return 1;
    if (real(k) * real(lot) > real(sample) * real(right))
        return 1 - moreThan(k);
    double term = pmf(k);
    double sum = term;
    for (auto j = k; j > least() && term > sum * 1e-18; --j) {
        term *= real(j) * real(lot - right - sample + j) / (real(right - j + 1) * real(sample - j + 1));
        sum += term;
    }
    return sum;
}

double Hypergeometric::moreThan(std::int64_t k) const
{
    if (k < least())
        return 1;
    if (k >= most())
        return 0;
    if (real(k) * real(lot) <= real(sample) * real(right))
        return 1 - atMost(k);
    double term = pmf(k + 1);
    double sum = term;
    for (auto j = k + 1; j < most() && term > sum * 1e-18; ++j) {
        term *= real(right - j) * real(sample - j) / (real(j + 1) * real(lot - right - sample + j + 1));
        sum += term;
    }
    return sum;
}

}
