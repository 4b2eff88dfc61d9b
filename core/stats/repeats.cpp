// SPDX-License-Identifier: MIT
#include "core/stats/repeats.h"

#include "core/stats/check.h"
#include "core/stats/distributions.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace cradlepost::stats {

namespace {

Result<void> checkChances(std::span<const double> chances)
{
    double sum = 0;
    for (const double p : chances) {
        if (!(p >= 0 && p <= 1))
            return wrong("a chance lies in 0..1, not " + shortest(p));
        sum += p;
    }
    if (std::abs(sum - 1) > 1e-9)
        return wrong("the chances of one reading must sum to 1, not " + shortest(sum));
    return {};
}

}

Result<double> identicalRunChance(std::span<const double> chances, int n, int length)
{
    CRADLEPOST_TRY(checkChances(chances));
    if (n < 0 || n > 100'000)
        return wrong("the number of readings lies in 0..100000, not " + std::to_string(n));
    if (length > n)
        return 0.0;
    if (length <= 1)
        return n > 0 ? 1.0 : 0.0;
    // begun[t % L][j]: chance that a run of value j starts at reading t, no long run before. A run that
    // started at t is still going L - 1 readings later with chance p^(L - 1), and that is a long one.
    const auto width = static_cast<std::size_t>(length);
    const auto values = chances.size();
    std::vector<double> begun(width * values, 0.0);
    std::vector<double> going(values, 0.0); // chance that the current run is of value j and short
    std::vector<double> completes(values);
    for (std::size_t j = 0; j < values; ++j)
        completes[j] = std::pow(chances[j], length - 1);
    double found = 0;
    for (std::size_t t = 0; t < static_cast<std::size_t>(n); ++t) {
        double all = 0;
        for (const double g : going)
            all += g;
        double* const now = &begun[(t % width) * values];
        const double* const oldest = t + 1 >= width ? &begun[((t + 1 - width) % width) * values] : nullptr;
        for (std::size_t j = 0; j < values; ++j) {
            const double fresh = chances[j] * (t == 0 ? 1 : std::max(0.0, all - going[j]));
            const double done = oldest != nullptr ? oldest[j] * completes[j] : 0;
            going[j] = std::max(0.0, going[j] * chances[j] - done) + fresh;
            now[j] = fresh;
            found += done;
        }
    }
    return std::min(1.0, found);
}

int longestIdenticalRun(std::span<const std::string> readings)
{
    int longest = 0;
    int run = 0;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        run = i > 0 && readings[i] == readings[i - 1] ? run + 1 : 1;
        longest = std::max(longest, run);
    }
    return longest;
}

Result<double> sameRoundChance(std::span<const std::vector<double>> items)
{
    if (items.empty())
        return wrong("a round has at least one item");
    double chance = 1;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (auto sound = checkChances(items[i]); !sound)
            return wrong("item " + std::to_string(i + 1) + ": " + sound.error().message);
        double same = 0;
        for (const double p : items[i])
            same += p * p;
        chance *= same;
    }
    return std::min(1.0, chance);
}

Result<RepeatedRounds> repeatedRounds(std::int64_t rounds, double sameChance, std::int64_t seen)
{
    if (rounds < 2 || rounds > 100'000'000)
        return wrong("equal pairs need 2 to 100000000 rounds, not " + std::to_string(rounds));
    if (!(sameChance >= 0 && sameChance <= 1))
        return wrong("a chance lies in 0..1, not " + shortest(sameChance));
    const auto pairs = rounds * (rounds - 1) / 2;
    if (seen < 0 || seen > pairs)
        return wrong("among " + std::to_string(pairs) + " pairs there cannot be " + std::to_string(seen)
            + " equal ones");
    RepeatedRounds r{.pairs = static_cast<double>(pairs), .seen = seen};
    r.expected = r.pairs * sameChance;
    r.anyChance = -std::expm1(-r.expected);
    r.chanceOfSeen = Poisson{.mean = r.expected}.moreThan(seen - 1);
    return r;
}

std::int64_t equalPairs(std::span<const std::string> rounds)
{
    std::map<std::string_view, std::int64_t> seen;
    std::int64_t pairs = 0;
    for (const auto& round : rounds)
        pairs += seen[round]++;
    return pairs;
}

}
