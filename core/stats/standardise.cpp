// SPDX-License-Identifier: MIT
#include "core/stats/standardise.h"

#include "core/stats/check.h"
#include "core/stats/distributions.h"
#include "core/stats/rate.h"

#include <algorithm>
#include <cmath>

namespace cradlepost::stats {

namespace {

std::string rowText(std::size_t i) { return "stratum " + std::to_string(i + 1) + ": "; }

/** Sum of the weights. */
template <class Strata> Result<double> weightSum(const Strata& strata)
{
    double sum = 0;
    for (std::size_t i = 0; i < strata.size(); ++i) {
        if (!isExposure(strata[i].weight))
            return wrong(rowText(i) + "a weight cannot be " + shortest(strata[i].weight));
        sum += strata[i].weight;
    }
    if (sum <= 0)
        return undefined("no stratum carries a weight");
    return sum;
}

tl::unexpected<Error> wrongExposure(std::size_t i, double exposure)
{
    return wrong(rowText(i) + "an exposure cannot be " + shortest(exposure));
}

}

Result<Standardised> directShare(std::span<const ShareStratum> strata, double level)
{
    CRADLEPOST_TRY(checkLevel(level));
    const auto weights = weightSum(strata);
    if (!weights)
        return tl::unexpected(weights.error());
    Standardised s;
    Tally all;
    double variance = 0;
    for (std::size_t i = 0; i < strata.size(); ++i) {
        if (!isSound(strata[i].tally))
            return wrong(rowText(i) + checkTally(strata[i].tally).error().message);
        if (strata[i].weight <= 0)
            continue;
        if (strata[i].tally.n == 0)
            return undefined(rowText(i) + "it has a weight but no observation");
        const double n = static_cast<double>(strata[i].tally.n);
        const double p = static_cast<double>(strata[i].tally.x) / n;
        const double w = strata[i].weight / *weights;
        s.adjusted += w * p;
        variance += w * w * p * (1 - p) / n;
        all.x += strata[i].tally.x;
        all.n += strata[i].tally.n;
    }
    s.crude = static_cast<double>(all.x) / static_cast<double>(all.n);
    s.se = std::sqrt(variance);
    const double half = normalWidth(level) * s.se;
    s.interval = {.low = std::max(0.0, s.adjusted - half), .high = std::min(1.0, s.adjusted + half)};
    return s;
}

Result<Standardised> directRate(std::span<const RateStratum> strata, double level)
{
    CRADLEPOST_TRY(checkLevel(level));
    const auto weights = weightSum(strata);
    if (!weights)
        return tl::unexpected(weights.error());
    Standardised s;
    double events = 0;
    double exposure = 0;
    double variance = 0;
    double largest = 0;
    for (std::size_t i = 0; i < strata.size(); ++i) {
        const auto& k = strata[i];
        if (!isExposure(k.exposure))
            return wrongExposure(i, k.exposure);
        if (k.events < 0 || k.events > maxCount)
            return wrong(rowText(i) + "a count of events cannot be " + std::to_string(k.events));
        if (k.weight <= 0)
            continue;
        if (k.exposure <= 0)
            return undefined(rowText(i) + "it has a weight but no exposure");
        const double w = k.weight / *weights / k.exposure;
        s.adjusted += w * static_cast<double>(k.events);
        variance += w * w * static_cast<double>(k.events);
        largest = std::max(largest, w);
        events += static_cast<double>(k.events);
        exposure += k.exposure;
    }
    s.crude = events / exposure;
    s.se = std::sqrt(variance);
    const double tail = (1 - level) / 2;
    if (variance > 0)
        s.interval.low = gammaQuantile(tail, s.adjusted * s.adjusted / variance, variance / s.adjusted);
    const double mean = s.adjusted + largest;
    const double spread = variance + largest * largest;
    s.interval.high = gammaUpperQuantile(tail, mean * mean / spread, spread / mean);
    if (!std::isfinite(s.interval.low) || !std::isfinite(s.interval.high))
        return wrong("weights and exposures are too far apart for a rate");
    return s;
}

Result<Indirect> indirectRatio(std::int64_t observed, std::span<const IndirectStratum> strata, double level)
{
    const auto limits = garwood(observed, level);
    if (!limits)
        return tl::unexpected(limits.error());
    Indirect result;
    for (std::size_t i = 0; i < strata.size(); ++i) {
        if (!isExposure(strata[i].exposure))
            return wrongExposure(i, strata[i].exposure);
        if (!isExposure(strata[i].standardRate))
            return wrong(rowText(i) + "a rate cannot be " + shortest(strata[i].standardRate));
        result.expected += strata[i].exposure * strata[i].standardRate;
    }
    if (result.expected <= 0)
        return undefined("nothing is expected, so there is no ratio");
    result.ratio = static_cast<double>(observed) / result.expected;
    result.interval = {.low = limits->low / result.expected, .high = limits->high / result.expected};
    return result;
}

}
