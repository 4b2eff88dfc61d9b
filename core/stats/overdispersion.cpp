// SPDX-License-Identifier: MIT
#include "core/stats/overdispersion.h"

#include "core/stats/check.h"
#include "core/stats/distributions.h"
#include "core/stats/orderstats.h"

#include <algorithm>
#include <cmath>

namespace cradlepost::stats {

namespace {

Result<void> checkVariances(std::span<const double> variances)
{
    CRADLEPOST_TRY(checkFinite(variances, "the variance"));
    for (std::size_t i = 0; i < variances.size(); ++i) {
        if (variances[i] <= 0)
            return wrong("row " + std::to_string(i + 1) + ": the variance must be above 0");
    }
    if (variances.size() < 2)
        return undefined("spread between units needs at least two of them");
    return {};
}

}

Result<std::vector<double>> winsorised(std::span<const double> z, double share)
{
    if (!(share >= 0 && share < 0.5))
        return wrong("the share to pull in lies in [0, 0.5), not " + shortest(share));
    const auto low = quantile(z, share);
    if (!low)
        return tl::unexpected(low.error());
    const auto high = quantile(z, 1 - share);
    std::vector<double> pulled(z.begin(), z.end());
    for (double& v : pulled)
        v = std::clamp(v, *low, std::max(*low, *high));
    return pulled;
}

Result<double> dispersionFactor(std::span<const double> z)
{
    CRADLEPOST_TRY(checkFinite(z, "z"));
    if (z.empty())
        return undefined("no units, so no dispersion");
    double sum = 0;
    for (const double v : z)
        sum += v * v;
    return sum / static_cast<double>(z.size());
}

Result<double> betweenVariance(double phi, std::span<const double> variances)
{
    CRADLEPOST_TRY(checkVariances(variances));
    if (!std::isfinite(phi) || phi < 0)
        return wrong("phi is at least 0, not " + shortest(phi));
    double w = 0;
    double ww = 0;
    for (const double v : variances) {
        w += 1 / v;
        ww += 1 / v / v;
    }
    const double units = static_cast<double>(variances.size());
    return std::max(0.0, (units * phi - (units - 1)) / (w - ww / w));
}

Result<RandomEffects> randomEffects(
    std::span<const double> estimates, std::span<const double> variances, double level)
{
    CRADLEPOST_TRY(checkLevel(level));
    if (estimates.size() != variances.size())
        return wrong("each estimate needs its variance");
    CRADLEPOST_TRY(checkFinite(estimates, "the estimate"));
    CRADLEPOST_TRY(checkVariances(variances));
    const auto units = estimates.size();
    const auto mean = [&](double tau2, double& weightSum) {
        double sum = 0;
        weightSum = 0;
        for (std::size_t i = 0; i < units; ++i) {
            const double w = 1 / (variances[i] + tau2);
            weightSum += w;
            sum += w * estimates[i];
        }
        return sum / weightSum;
    };
    RandomEffects r;
    double weights = 0;
    r.fixedMean = mean(0, weights);
    for (std::size_t i = 0; i < units; ++i)
        r.q += (estimates[i] - r.fixedMean) * (estimates[i] - r.fixedMean) / variances[i];
    const double df = static_cast<double>(units - 1);
    r.tau2 = *betweenVariance(r.q / static_cast<double>(units), variances);
    r.mean = mean(r.tau2, weights);
    r.se = std::sqrt(1 / weights);
    const double half = normalWidth(level) * r.se;
    r.interval = {.low = r.mean - half, .high = r.mean + half};
    r.h2 = r.q / df;
    r.i2 = r.q > df ? 100 * (r.q - df) / r.q : 0;
    return r;
}

}
