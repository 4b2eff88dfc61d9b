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
    bm::policies::rounding_error<bm::policies::ignore_error>,
    bm::policies::promote_double<false>>; // long double would cost five times as much for digits below 1e-12
const Quiet quiet;
// Where a double runs out of exponent on the way, the slower form still has digits.
using Wide = bm::policies::normalise<Quiet, bm::policies::promote_double<true>>::type;
const Wide wide;
constexpr double tiny = 1e-200;

double lowerBeta(double a, double b, double x)
{
    const double value = bm::ibeta(a, b, x, quiet);
    return value > tiny ? value : bm::ibeta(a, b, x, wide);
}
double upperBeta(double a, double b, double x)
{
    const double value = bm::ibetac(a, b, x, quiet);
    return value > tiny ? value : bm::ibetac(a, b, x, wide);
}
double betaDensity(double a, double b, double x)
{
    const double value = bm::ibeta_derivative(a, b, x, quiet);
    return value > tiny ? value : bm::ibeta_derivative(a, b, x, wide);
}
double gammaDensity(double shape, double x)
{
    const double value = bm::gamma_p_derivative(shape, x, quiet);
    return value > tiny ? value : bm::gamma_p_derivative(shape, x, wide);
}
double lowerGamma(double shape, double x)
{
    const double value = bm::gamma_p(shape, x, quiet);
    return value > tiny ? value : bm::gamma_p(shape, x, wide);
}
double upperGamma(double shape, double x)
{
    const double value = bm::gamma_q(shape, x, quiet);
    return value > tiny ? value : bm::gamma_q(shape, x, wide);
}

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

struct Shape
{
    double mean = 0;
    double variance = 0;
    double skew = 0;
};

template <class Distribution>
std::int64_t discreteQuantile(const Distribution& d, double q, const Shape& shape, std::int64_t most)
{
    constexpr double slack = 64 * std::numeric_limits<double>::epsilon();
    if (q <= 0)
        return 0;
    const double z = normalQuantile(std::clamp(q, 1e-300, 1 - 1e-16));
    // Cornish-Fisher: mostly right or next to it.
    const double guess
        = std::floor(shape.mean + std::sqrt(shape.variance) * (z + shape.skew * (z * z - 1) / 6) + 0.5);
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

double chiSquareUpper(double x, double df) { return upperGamma(df / 2, x / 2); }
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
    return betaDensity(real(k + 1), real(n - k + 1), p) / real(n + 1);
}

double Binomial::atMost(std::int64_t k) const
{
    if (k < 0)
        return 0;
    if (k >= n || p <= 0)
        return 1;
    if (p >= 1)
        return 0;
    return upperBeta(real(k + 1), real(n - k), p);
}

double Binomial::moreThan(std::int64_t k) const
{
    if (k < 0)
        return 1;
    if (k >= n || p <= 0)
        return 0;
    if (p >= 1)
        return 1;
    return lowerBeta(real(k + 1), real(n - k), p);
}

std::int64_t Binomial::quantile(double q) const
{
    if (q >= 1)
        return p <= 0 ? 0 : n;
    if (p <= 0 || p >= 1)
        return p <= 0 || q <= 0 ? 0 : n;
    const double variance = real(n) * p * (1 - p);
    const double skew = n > 0 ? (1 - 2 * p) / std::sqrt(variance) : 0;
    return discreteQuantile(*this, q, {.mean = real(n) * p, .variance = variance, .skew = skew}, n);
}

double Poisson::pmf(std::int64_t k) const
{
    if (k < 0)
        return 0;
    if (mean <= 0)
        return k == 0 ? 1 : 0;
    return k == 0 ? std::exp(-mean) : gammaDensity(real(k + 1), mean);
}

double Poisson::atMost(std::int64_t k) const
{
    if (k < 0)
        return 0;
    return mean <= 0 ? 1 : upperGamma(real(k + 1), mean);
}

double Poisson::moreThan(std::int64_t k) const
{
    if (k < 0)
        return 1;
    return mean <= 0 ? 0 : lowerGamma(real(k + 1), mean);
}

std::int64_t Poisson::quantile(double q) const
{
    if (mean <= 0)
        return 0;
    return discreteQuantile(*this, q, {.mean = mean, .variance = mean, .skew = 1 / std::sqrt(mean)}, farAway);
}

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
    const double density = mean < size ? betaDensity(real(k + 1), size, mean / (size + mean))
                                       : betaDensity(size, real(k + 1), success);
    return success / (size + real(k)) * density;
}

double NegativeBinomial::atMost(std::int64_t k) const
{
    if (k < 0)
        return 0;
    if (mean <= 0)
        return 1;
    return mean < size ? upperBeta(real(k + 1), size, mean / (size + mean))
                       : lowerBeta(size, real(k + 1), size / (size + mean));
}

double NegativeBinomial::moreThan(std::int64_t k) const
{
    if (k < 0)
        return 1;
    if (mean <= 0)
        return 0;
    return mean < size ? lowerBeta(real(k + 1), size, mean / (size + mean))
                       : upperBeta(size, real(k + 1), size / (size + mean));
}

std::int64_t NegativeBinomial::quantile(double q) const
{
    if (mean <= 0)
        return 0;
    const double skew = (size + 2 * mean) / std::sqrt(size * mean * (size + mean));
    return discreteQuantile(
        *this, q, {.mean = mean, .variance = mean + mean * mean / size, .skew = skew}, farAway);
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
