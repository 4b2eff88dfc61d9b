// SPDX-License-Identifier: MIT
#include "core/stats/countquantile.h"
#include "core/stats/distributions.h"
#include "core/stats/saddlepoint.h"
#include "core/stats/specialfunctions.h"

namespace cradlepost::stats {

namespace {

constexpr std::int64_t farAway = std::int64_t{1} << 60;
/** Below this variance a tail is a sum of at most some eighty terms, cheaper than a continued fraction. */
constexpr double shortVariance = 100;
/** Below this mean the first chance of all is no remote one. */
constexpr double climbable = 60;
/** A first term below this has lost digits, or would on the way. */
constexpr double leastTerm = 1e-280;
constexpr double negligible = 1e-17;

/** Binomial or Poisson chances from one count to the next. */
struct Ladder
{
    double n = 0; ///< 0 for Poisson
    double odds = 0; ///< p/(1 - p), or the mean
    [[nodiscard]] double up(double k) const { return (n > 0 ? n - k : 1) * odds / (k + 1); }
    [[nodiscard]] double down(double k) const { return k / ((n > 0 ? n - k + 1 : 1) * odds); }

    /** Chances of k and more; `term` is the chance of k. */
    [[nodiscard]] double above(double k, double term) const
    {
        double sum = term;
        for (; term > sum * negligible; ++k) {
            term *= up(k);
            sum += term;
        }
        return sum;
    }
    /** Chances of k and less. */
    [[nodiscard]] double below(double k, double term) const
    {
        double sum = term;
        for (; term > sum * negligible; --k) {
            term *= down(k);
            sum += term;
        }
        return sum;
    }
};

/**
 * From a near guess step by step to the count at which the tail crosses. Nothing where the guess lies far off
 * or a tail comes too near to what is asked to tell.
 */
std::optional<Crossing> walked(const Binomial& b, double tail, double z, bool upper)
{
    const double n = real(b.n);
    const double variance = n * b.p * (1 - b.p);
    if (b.n > largestSaddle || variance >= shortVariance || tail < 1e-12)
        return std::nullopt;
    const double skew = (1 - 2 * b.p) * (z * z - 1) / 6;
    double k = std::clamp(std::floor(n * b.p + std::sqrt(variance) * z + skew + 0.5), 0.0, n);
    const Ladder ladder{.n = n, .odds = b.p / (1 - b.p)};
    double term = b.pmf(static_cast<std::int64_t>(k));
    if (!(term > leastTerm))
        return std::nullopt;
    // The sum over the tail with k itself: P(X <= k), or P(X >= k).
    double sum = upper ? ladder.above(k, term) : ladder.below(k, term);
    const auto outwards = [&] {
        sum -= term;
        term *= upper ? ladder.up(k) : ladder.down(k);
        k += upper ? 1 : -1;
    };
    const auto inwards = [&] {
        term *= upper ? ladder.down(k) : ladder.up(k);
        k += upper ? -1 : 1;
        sum += term;
    };
    for (int step = 0; step < 20 && !(sum > tail); ++step)
        inwards();
    for (int step = 0; step < 20 && sum - term > tail; ++step)
        outwards();
    const double doubt = tail * quantileDoubt;
    if (!(sum > tail + doubt && sum - term < tail - doubt))
        return std::nullopt;
    // Both ways round sum - term <= tail < sum: the mass at k straddles the tail.
    return Crossing{
        .k = static_cast<std::int64_t>(k), .excess = upper ? tail - (sum - term) : sum - tail, .pmf = term};
}

}

double Binomial::pmf(std::int64_t k) const
{
    if (k < 0 || k > n)
        return 0;
    if (p <= 0 || p >= 1)
        return k == (p <= 0 ? 0 : n) ? 1 : 0;
    if (n <= largestSaddle || k == 0 || k == n)
        return binomialSaddle(n, k, p).value();
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
    if (n <= largestSaddle && real(n) * p * (1 - p) < shortVariance) {
        if (real(k) > real(n) * p)
            return 1 - moreThan(k);
        if (const double term = pmf(k); term > leastTerm)
            return Ladder{.n = real(n), .odds = p / (1 - p)}.below(real(k), term);
    }
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
    if (n <= largestSaddle && real(n) * p * (1 - p) < shortVariance) {
        if (real(k) <= real(n) * p)
            return 1 - atMost(k);
        if (const double term = pmf(k + 1); term > leastTerm)
            return Ladder{.n = real(n), .odds = p / (1 - p)}.above(real(k + 1), term);
    }
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

Crossing Binomial::crossing(double tail, double z, bool upper) const
{
    if (const auto near = walked(*this, tail, z, upper))
        return *near;
    const auto k = quantile(upper ? 1 - tail : tail);
    return {.k = k, .excess = upper ? tail - moreThan(k) : atMost(k) - tail, .pmf = pmf(k)};
}

double Poisson::pmf(std::int64_t k) const
{
    if (k < 0)
        return 0;
    if (mean <= 0)
        return k == 0 ? 1 : 0;
    if (k <= largestSaddle)
        return poissonSaddle(k, mean).value();
    return gammaDensity(real(k + 1), mean);
}

double Poisson::atMost(std::int64_t k) const
{
    if (k < 0)
        return 0;
    if (mean <= 0)
        return 1;
    if (mean < shortVariance) {
        if (real(k) > mean)
            return 1 - moreThan(k);
        if (const double term = pmf(k); term > leastTerm)
            return Ladder{.odds = mean}.below(real(k), term);
    }
    return upperGamma(real(k + 1), mean);
}

double Poisson::moreThan(std::int64_t k) const
{
    if (k < 0)
        return 1;
    if (mean <= 0)
        return 0;
    if (mean < shortVariance) {
        if (real(k) <= mean)
            return 1 - atMost(k);
        if (const double term = pmf(k + 1); term > leastTerm)
            return Ladder{.odds = mean}.above(real(k + 1), term);
    }
    return lowerGamma(real(k + 1), mean);
}

std::int64_t Poisson::quantile(double q) const
{
    if (mean <= 0)
        return 0;
    if (mean < climbable) {
        if (const auto k = climbed(q, std::exp(-mean), [&](int i) { return mean / (i + 1); }))
            return *k;
    }
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
    if (mean < climbable) {
        const double share = mean / (size + mean);
        const auto ratio = [&](int i) { return (size + i) * share / (i + 1); };
        if (const auto k = climbed(q, pmf(0), ratio))
            return *k;
    }
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
    if (lot <= largestSaddle) {
        const auto r = binomialSaddle(right, k, p);
        const auto w = binomialSaddle(lot - right, sample - k, p);
        const auto all = binomialSaddle(lot, sample, p);
        return Saddle{
            .exponent = r.exponent + w.exponent - all.exponent, .square = r.square * w.square / all.square}
            .value();
    }
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
