// SPDX-License-Identifier: MIT
#include "core/stats/runlength.h"

#include "tests/core/stats/near.h"
#include "tests/core/stats/random.h"

#include <algorithm>

using namespace cradlepost;
using namespace cradlepost::stats;

TEST_CASE("mean checks to a signal equal the exact chain")
{
    // Absorbing Markov chain of Reynolds & Stoumbos (1999), solved in R 4.2.2 and again in NumPy.
    const struct
    {
        double p0;
        int m, h;
        double p1, atP0, atP1, atFour;
    } rows[] = {
        {0.05, 10, 2, 0.1716894014, 304.0513788, 23.44768217, 18.59934234},
        {0.05, 10, 3, 0.1716894014, 1283.706566, 36.5605585, 28.08861009},
        {0.02, 25, 3, 0.06964557058, 2703.606779, 87.78791667, 69.48034667},
        {0.01, 50, 3, 0.03497737067, 5131.900093, 173.3885591, 138.4933599},
    };
    for (const auto& row : rows) {
        CAPTURE(row.m);
        const LatticeCusum cusum{.n = 1, .perEvent = row.m, .perSample = 1, .threshold = row.h * row.m};
        CHECK(*meanRunLength(cusum, row.p0) == near(row.atP0));
        CHECK(*meanRunLength(cusum, row.p1) == near(row.atP1, 1e-8));
        CHECK(*meanRunLength(cusum, 4 * row.p0) == near(row.atFour));
    }
}

TEST_CASE("mean samples to a signal of a counted sum equal the reference")
{
    // R package surveillance 1.20.3, arlCusum(h, k, theta, distr = "binomial", n = 10), start at 0.
    const struct
    {
        double h, k, theta, run;
    } rows[] = {
        {3, 1.5, 0.1, 69.06297509},
        {3, 1.5, 0.2, 5.716996483},
        {4, 1.5, 0.1, 177.593379},
        {4, 1.5, 0.2, 7.62890155},
        {5, 1, 0.05, 3628.634774},
        {5, 1, 0.15, 9.692089016},
    };
    for (const auto& row : rows) {
        CAPTURE(row.h);
        const LatticeCusum cusum{.n = 10,
            .perEvent = 2,
            .perSample = static_cast<int>(row.k * 2),
            .threshold = static_cast<int>(row.h * 2)};
        CHECK(*meanRunLength(cusum, row.theta) == near(row.run));
    }
}

TEST_CASE("a designed chart keeps its promise of false alarms")
{
    const auto design = designShareCusum({.p0 = 0.05, .p1 = 0.15}, 20, 200);
    REQUIRE(design);
    CHECK(design->inControl >= 200);
    CHECK(design->afterChange < 10);
    CHECK(design->change.p1 == doctest::Approx(0.15).epsilon(0.05));
    auto lower = design->lattice;
    --lower.threshold;
    CHECK(*meanRunLength(lower, 0.05) < 200);
    CHECK(cusumWeights(design->change)->gamma == near(1.0 / design->m, 1e-8));

    // The stated threshold on the likelihood scale runs as long in simulation.
    Dice dice(77);
    double samples = 0;
    constexpr int runs = 400;
    for (int run = 0; run < runs; ++run) {
        double sum = 0;
        const auto weights = *cusumWeights(design->change);
        do {
            const auto x = static_cast<double>(dice.events(20, 0.05));
            sum = std::max(0.0, sum + x * weights.onEvent + (20 - x) * weights.onPass);
            samples += 1;
        } while (sum < design->threshold * (1 - 1e-12));
    }
    CHECK(samples / runs == doctest::Approx(design->inControl).epsilon(0.2));
}

TEST_CASE("run lengths of the weighted average meet the published design table")
{
    // Lucas & Saccucci (1990) Technometrics 32:1-12: lambda and width that give a run of 500 (from memory).
    for (const auto& [lambda, width] :
        {std::pair{0.10, 2.814}, {0.20, 2.962}, {0.25, 2.998}, {0.40, 3.054}}) {
        CAPTURE(lambda);
        const auto run = ewmaRunLength(lambda, width);
        REQUIRE(run);
        // The printed width has three decimals: the run is 500 to about its rounding.
        CHECK(*run == doctest::Approx(500).epsilon(0.004));
    }
    // lambda 1 is the plain chart: 1/P(|Z| > 3) = 370.398.
    CHECK(*ewmaRunLength(1, 3) == near(370.3983473, 1e-6));
    CHECK(*ewmaRunLength(1, 3, 1) == doctest::Approx(43.895).epsilon(1e-4));
    // Crowder (1987): lambda 0.25, L 3 gives 502.9 in control and 11.1 at a shift of 1 sigma (from memory).
    CHECK(*ewmaRunLength(0.25, 3) == doctest::Approx(502.9).epsilon(1e-3));
    CHECK(*ewmaRunLength(0.25, 3, 1) == doctest::Approx(11.1).epsilon(0.01));
}

TEST_CASE("longer thresholds run longer, larger changes shorter")
{
    double before = 0;
    for (int h = 2; h < 30; h += 3) {
        const double run = *meanRunLength({.n = 5, .perEvent = 4, .perSample = 5, .threshold = h}, 0.1);
        CHECK(run > before);
        before = run;
    }
    CHECK(*ewmaRunLength(0.2, 3, 0.5) < *ewmaRunLength(0.2, 3));
    CHECK(*ewmaRunLength(0.2, 3, 0.5) == near(*ewmaRunLength(0.2, 3, -0.5), 1e-7));
}

TEST_CASE("a run length that cannot be had says why")
{
    const LatticeCusum good{.n = 1, .perEvent = 10, .perSample = 1, .threshold = 20};
    CHECK(isUndefined(meanRunLength(good, 0)));
    CHECK(*meanRunLength(good, 1) == near(3));
    CHECK(isRefused(meanRunLength(good, 1.1)));
    CHECK(isRefused(meanRunLength(good, none)));
    auto bad = good;
    bad.threshold = 0;
    CHECK(isRefused(meanRunLength(bad, 0.1)));
    bad = good;
    bad.n = 0;
    CHECK(isRefused(meanRunLength(bad, 0.1)));
    bad = good;
    bad.perSample = 10;
    CHECK(isUndefined(meanRunLength(bad, 0.1)));
    CHECK(isRefused(designShareCusum({.p0 = 0.2, .p1 = 0.1}, 10, 100)));
    CHECK(isRefused(designShareCusum({.p0 = 0.1, .p1 = 0.2}, 0, 100)));
    CHECK(isRefused(designShareCusum({.p0 = 0.1, .p1 = 0.2}, 10, none)));
    CHECK(isRefused(designShareCusum({.p0 = 0.1, .p1 = 0.2}, 10, 1e300)));
    CHECK(isRefused(designShareCusum({.p0 = 0.6, .p1 = 0.7}, 10, 100)));
    CHECK(isRefused(ewmaRunLength(0.01, 3)));
    CHECK(isRefused(ewmaRunLength(0.2, 0)));
    CHECK(isRefused(ewmaRunLength(0.2, 3, none)));
}
