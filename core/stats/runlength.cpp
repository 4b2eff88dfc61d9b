// SPDX-License-Identifier: MIT
#include "core/stats/runlength.h"

#include "core/stats/check.h"
#include "core/stats/distributions.h"
#include "core/stats/linear.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>
#include <utility>

namespace cradlepost::stats {

namespace {

constexpr int mostSteps = 2000;

Result<void> checkLattice(const LatticeCusum& c)
{
    if (c.n < 1 || c.n > 10000 || c.perEvent < 1 || c.perSample < 0)
        return wrong("a sum needs 1 to 10000 checks in a sample and steps that are not negative");
    if (c.perEvent > 1'000'000 || c.perSample > 1'000'000)
        return wrong("the steps of a sum are at most 1000000");
    if (c.threshold < 1 || c.threshold > mostSteps)
        return wrong("the threshold of a sum is 1 to 2000 steps, not " + std::to_string(c.threshold));
    if (static_cast<std::int64_t>(c.perEvent) * c.n <= c.perSample)
        return undefined("the sum never grows, so it never signals");
    return {};
}

/** Nodes and weights of Gauss-Legendre quadrature on [-1, 1], by Newton's method on the polynomial. */
void legendre(std::vector<double>& nodes, std::vector<double>& weights)
{
    const auto n = nodes.size();
    const double count = static_cast<double>(n);
    for (std::size_t i = 0; i < n; ++i) {
        double x = std::cos(std::numbers::pi * (static_cast<double>(i) + 0.75) / (count + 0.5));
        double slope = 1;
        for (int round = 0; round < 100; ++round) {
            double before = 1;
            double now = x;
            for (std::size_t k = 2; k <= n; ++k) {
                const double kk = static_cast<double>(k);
                before = std::exchange(now, ((2 * kk - 1) * x * now - (kk - 1) * before) / kk);
            }
            slope = count * (x * now - before) / (x * x - 1);
            const double step = now / slope;
            x -= step;
            if (std::abs(step) < 1e-15)
                break;
        }
        nodes[i] = x;
        weights[i] = 2 / ((1 - x * x) * slope * slope);
    }
}

}

Result<double> meanRunLength(const LatticeCusum& cusum, double p)
{
    CRADLEPOST_TRY(checkLattice(cusum));
    if (!(p >= 0 && p <= 1))
        return wrong("a chance lies in 0..1, not " + shortest(p));
    if (p == 0)
        return undefined("without events the sum never signals");
    const auto size = static_cast<std::size_t>(cusum.threshold);
    std::vector<double> chances;
    for (int x = 0; x <= cusum.n; ++x)
        chances.push_back(Binomial{.n = cusum.n, .p = p}.pmf(x));
    Matrix a(size);
    for (std::size_t state = 0; state < size; ++state) {
        a.at(state, state) = 1;
        for (int x = 0; x <= cusum.n; ++x) {
            const auto next
                = static_cast<std::int64_t>(state) + std::int64_t{cusum.perEvent} * x - cusum.perSample;
            if (next >= cusum.threshold)
                break;
            a.at(state, static_cast<std::size_t>(std::max<std::int64_t>(0, next)))
                -= chances[static_cast<std::size_t>(x)];
        }
    }
    const auto runs = solve(std::move(a), std::vector<double>(size, 1.0));
    if (!runs || !std::isfinite(runs->front()) || runs->front() < 1)
        return undefined("the run is too long to be worked out");
    return runs->front();
}

Result<CusumDesign> designShareCusum(ShareChange change, int n, double inControl)
{
    const auto wish = cusumWeights(change);
    if (!wish)
        return tl::unexpected(wish.error());
    if (change.p1 < change.p0)
        return wrong("the design looks for a rise: p1 must be above p0");
    if (n < 1 || n > 200)
        return wrong("a sample has 1 to 200 checks, not " + std::to_string(n));
    if (!std::isfinite(inControl) || inControl < 1)
        return wrong("the wished run must be at least 1 sample, not " + shortest(inControl));
    const int m = std::clamp(static_cast<int>(std::lround(1 / wish->gamma)), 2, 200);
    // p1 for which gamma is exactly 1/m: gamma rises with p1 from p0 to 1.
    if (1.0 / m <= change.p0)
        return wrong("p1 is too near p0 for a whole-step chart");
    double low = change.p0;
    double high = 1;
    for (int i = 0; i < 200; ++i) {
        const double middle = std::midpoint(low, high);
        const auto weights = cusumWeights({.p0 = change.p0, .p1 = middle});
        (weights && weights->gamma > 1.0 / m ? high : low) = middle;
    }
    CusumDesign design{
        .change = {.p0 = change.p0, .p1 = low}, .m = m, .lattice = {.n = n, .perEvent = m, .perSample = n}};
    const auto weights = cusumWeights(design.change);
    if (!weights || low <= change.p0)
        return wrong("p1 is too near p0 for a whole-step chart");
    const auto runAt = [&](int threshold) {
        design.lattice.threshold = threshold;
        return meanRunLength(design.lattice, change.p0);
    };
    int below = 0;
    int enough = 1;
    for (auto run = runAt(enough); run && *run < inControl; run = runAt(enough)) {
        below = enough;
        if (enough >= 600)
            return wrong("no threshold within reach gives so long a run");
        enough = std::min(600, enough * 2);
    }
    while (enough - below > 1) {
        const int middle = (enough + below) / 2;
        const auto run = runAt(middle);
        (run && *run < inControl ? below : enough) = middle;
    }
    const auto atP0 = runAt(enough);
    if (!atP0)
        return wrong("no threshold within reach gives so long a run");
    const auto atP1 = meanRunLength(design.lattice, design.change.p1);
    if (!atP1)
        return tl::unexpected(atP1.error());
    design.threshold = enough * weights->r2 / m;
    design.inControl = *atP0;
    design.afterChange = *atP1;
    return design;
}

Result<double> ewmaRunLength(double lambda, double width, double shift)
{
    if (!(lambda >= 0.05 && lambda <= 1))
        return wrong("run lengths are worked out for lambda in 0.05..1, not " + shortest(lambda));
    if (!(width > 0 && width <= 6) || !std::isfinite(shift))
        return wrong("the width lies in (0, 6] and the shift is finite");
    constexpr std::size_t nodeCount = 64;
    std::vector<double> nodes(nodeCount);
    std::vector<double> weights(nodeCount);
    legendre(nodes, weights);
    const double limit = width * std::sqrt(lambda / (2 - lambda));
    const auto density = [&](double from, double to) {
        const double u = (to - (1 - lambda) * from) / lambda - shift;
        return std::exp(-u * u / 2) / std::sqrt(2 * std::numbers::pi) / lambda;
    };
    Matrix a(nodeCount);
    for (std::size_t i = 0; i < nodeCount; ++i) {
        for (std::size_t j = 0; j < nodeCount; ++j)
            a.at(i, j) = (i == j ? 1 : 0) - limit * weights[j] * density(limit * nodes[i], limit * nodes[j]);
    }
    const auto runs = solve(std::move(a), std::vector<double>(nodeCount, 1.0));
    if (!runs)
        return undefined("the run is too long to be worked out");
    double run = 1;
    for (std::size_t j = 0; j < nodeCount; ++j)
        run += limit * weights[j] * density(0, limit * nodes[j]) * (*runs)[j];
    if (!std::isfinite(run) || run < 1)
        return undefined("the run is too long to be worked out");
    return run;
}

}
