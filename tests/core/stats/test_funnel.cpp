// SPDX-License-Identifier: MIT
#include "core/stats/funnel.h"

#include "core/stats/distributions.h"
#include "core/stats/overdispersion.h"
#include "tests/core/stats/near.h"
#include "tests/core/stats/random.h"

#include <algorithm>
#include <cmath>

using namespace cradlepost;
using namespace cradlepost::stats;

namespace {

struct Unit
{
    std::int64_t x, n;
    double share, s, z, zw, low95, high95, low998, high998;
};

struct UnitLimits
{
    double p, adjusted, phiLow, phiHigh, tauLow, tauHigh;
};

// Made data, 12 units; eight digits, so 1e-7.
const Unit units[] = {
    {12, 80, 0.15, 0.04189334, -0.45227639, -0.45227639, 0.084362845, 0.24863431, 0.046068082, 0.30303508},
    {30, 150, 0.2, 0.03059457, 1.014972, 1.014972, 0.1077317, 0.22764157, 0.077686803, 0.26597352},
    {7, 60, 0.11666667, 0.048374262, -1.0807545, -1.0807545, 0.070654211, 0.26114572, 0.028792482,
        0.32507018},
    {55, 310, 0.17741935, 0.021281838, 0.39808528, 0.39808528, 0.12660653, 0.21003795, 0.10468443,
        0.23598856},
    {21, 140, 0.15, 0.031668388, -0.59830542, -0.59830542, 0.10549876, 0.22966037, 0.074497297, 0.26966451},
    {9, 75, 0.12, 0.043267256, -1.1312797, -1.1312797, 0.081720492, 0.25129041, 0.042363472, 0.30668657},
    {44, 200, 0.22, 0.026495675, 1.9268289, 1.8356432, 0.11604891, 0.21985352, 0.089788528, 0.25291539},
    {18, 95, 0.18947368, 0.038443965, 0.53392816, 0.53392816, 0.091432018, 0.24200685, 0.055420918,
        0.29191325},
    {61, 420, 0.1452381, 0.018283753, -1.29674, -1.280194, 0.13264859, 0.20434303, 0.11357471, 0.22638111},
    {5, 20, 0.25, 0.08378668, 0.96736894, 0.96736894, 0.00015298479, 0.32670751, 0, 0.44327871},
    {33, 260, 0.12692308, 0.023238244, -1.8084108, -1.280194, 0.12272397, 0.2138399, 0.099019491, 0.24218662},
    {26, 90, 0.28888889, 0.03949742, 3.0366926, 1.8356432, 0.089680192, 0.24402246, 0.052876601, 0.2955223},
};
const UnitLimits unitLimits[] = {
    {0.78542194, 0.78542194, 0.022114049, 0.31578069, 0.026318979, 0.31157576},
    {0.36238413, 0.62870396, 0.061715474, 0.27617926, 0.057047609, 0.28084713},
    {0.36674398, 0.62870396, 0, 0.33849588, 0.0079209696, 0.32997377},
    {0.73597686, 0.78542194, 0.094355968, 0.24353877, 0.08002004, 0.2578747},
    {0.64122371, 0.78542194, 0.057951812, 0.27994292, 0.054230196, 0.28366454},
    {0.32856933, 0.62870396, 0.017298568, 0.32059617, 0.022454412, 0.31544032},
    {0.07344968, 0.30871776, 0.076081823, 0.26181291, 0.067523019, 0.27037172},
    {0.67287566, 0.78542194, 0.034203874, 0.30369086, 0.035918979, 0.30197576},
    {0.21499838, 0.62870396, 0.10486405, 0.23303068, 0.086635194, 0.25125954},
    {0.48032951, 0.72049426, 0, 0.46261401, 0, 0.43469659},
    {0.07717944, 0.30871776, 0.087498897, 0.25039584, 0.07546032, 0.26243442},
    {0.0064823198, 0.077787838, 0.030511587, 0.30738315, 0.03300384, 0.3048909},
};

std::vector<Tally> rows()
{
    std::vector<Tally> tallies;
    for (const auto& unit : units)
        tallies.push_back({unit.x, unit.n});
    return tallies;
}

}

TEST_CASE("interpolated limits equal the formula in every corner")
{
    // Spiegelhalter (2005), appendix A.1.1, from R 4.2.2 qbinom, pbinom, dbinom; raw, before cutting.
    const struct
    {
        double target;
        std::int64_t n;
        double limits[4];
    } table[] = {
        {0.1, 1, -0.9988888889, -0.9722222222, 0.75, 0.99},
        {0.1, 5, -0.1996612982, -0.1915324561, 0.3548971193, 0.5866666667},
        {0.1, 10, -0.0997132028, -0.09283007002, 0.2787356598, 0.4426695263},
        {0.1, 20, -0.04958873683, -0.03971842083, 0.228467607, 0.3351718217},
        {0.1, 50, -0.01611934957, 0.01386292696, 0.1797227276, 0.2401284188},
        {0.1, 100, 0.01417886501, 0.04038059552, 0.1577186116, 0.1983567185},
        {0.1, 500, 0.05998868655, 0.07344752831, 0.1260148989, 0.142689313},
        {0.85, 1, -0.9933333333, -0.8333333333, 0.9705882353, 0.9988235294},
        {0.85, 5, 0.08589687727, 0.3867794438, 0.9887312596, 0.9995492504},
        {0.85, 10, 0.3693081651, 0.5377245092, 0.9873015489, 0.999492062},
        {0.85, 20, 0.5347801781, 0.6533774576, 0.9677498678, 0.9987099947},
        {0.85, 50, 0.6652575691, 0.7340092452, 0.9332127175, 0.9746029159},
        {0.85, 100, 0.7250472209, 0.7716677971, 0.9116169893, 0.9449031441},
        {0.85, 500, 0.7977438055, 0.8170128909, 0.8796385682, 0.8962529891},
    };
    const double tails[] = {0.001, 0.025, 0.975, 0.999};
    for (const auto& row : table) {
        CAPTURE(row.target);
        CAPTURE(row.n);
        for (std::size_t i = 0; i < 4; ++i)
            CHECK(*funnelLimit(row.target, row.n, tails[i]) == near(row.limits[i]));
    }
    const auto cut = funnelLimits(0.1, 5, 0.998);
    CHECK(cut->low == 0.0);
    CHECK(cut->high == near(0.5866666667));
}

TEST_CASE("a funnel of twelve units equals the formula in every column")
{
    const auto f = funnel(rows());
    REQUIRE(f);
    CHECK(f->target == near(0.1689473684));
    CHECK(f->phi == near(1.942160408));
    CHECK(f->phiWinsorised == near(1.286402877));
    CHECK(f->tau2 == near(0.000375193763));
    CHECK(f->chiSquare == near(23.3059249));
    CHECK(f->df == 11);
    CHECK(f->pOverdispersion == near(0.01599878022));
    CHECK(f->applied == DispersionModel::None);
    std::vector<double> pulled;
    std::vector<double> variances;
    for (const auto& unit : f->units) {
        pulled.push_back(unit.zWinsorised);
        variances.push_back(unit.s * unit.s);
    }
    CHECK(std::ranges::min(pulled) == near(-1.280193966));
    CHECK(std::ranges::max(pulled) == near(1.835643207));
    CHECK(*betweenVariance(f->phi, variances) == near(0.001040630713));
    for (std::size_t i = 0; i < std::size(units); ++i) {
        const auto& unit = f->units[i];
        CAPTURE(i);
        CHECK(unit.share == near(units[i].share, 1e-7));
        CHECK(unit.s == near(units[i].s, 1e-7));
        CHECK(unit.z == near(units[i].z, 1e-7));
        CHECK(unit.zWinsorised == near(units[i].zw, 1e-7));
        CHECK(unit.inner.low == near(units[i].low95, 1e-7));
        CHECK(unit.inner.high == near(units[i].high95, 1e-7));
        CHECK(unit.outer.low == near(units[i].low998, 1e-7));
        CHECK(unit.outer.high == near(units[i].high998, 1e-7));
        CHECK(unit.p == near(unitLimits[i].p, 1e-7));
        CHECK(unit.pAdjusted == near(unitLimits[i].adjusted, 1e-7));
        CHECK(unit.side == 0);
    }
}

TEST_CASE("over-dispersion widens the limits by the model that is stated")
{
    const auto phi = funnel(rows(), {.target = {}, .model = DispersionModel::Multiplicative});
    const auto tau = funnel(rows(), {.target = {}, .model = DispersionModel::Additive});
    REQUIRE(phi);
    REQUIRE(tau);
    CHECK(phi->applied == DispersionModel::Multiplicative);
    CHECK(tau->applied == DispersionModel::Additive);
    for (std::size_t i = 0; i < std::size(units); ++i) {
        CHECK(phi->units[i].outer.low == near(unitLimits[i].phiLow, 1e-7));
        CHECK(phi->units[i].outer.high == near(unitLimits[i].phiHigh, 1e-7));
        CHECK(tau->units[i].outer.low == near(unitLimits[i].tauLow, 1e-7));
        CHECK(tau->units[i].outer.high == near(unitLimits[i].tauHigh, 1e-7));
    }
}

TEST_CASE("units that vary less than chance keep plain limits")
{
    const std::vector<Tally> even(8, {10, 50});
    for (const auto model : {DispersionModel::Multiplicative, DispersionModel::Additive}) {
        const auto f = funnel(even, {.target = {}, .model = model});
        CHECK(f->applied == DispersionModel::None);
        CHECK(f->phi == near(0));
        CHECK(f->tau2 == 0.0);
    }
    CHECK(std::string(dispersionName(DispersionModel::Additive)) == "additive");
    CHECK(std::string(dispersionName(DispersionModel::Multiplicative)) == "multiplicative");
    CHECK(std::string(dispersionName(DispersionModel::None)) == "none");
}

TEST_CASE("a unit beyond the outer limits is named with its side")
{
    auto tallies = rows();
    tallies.push_back({90, 150});
    tallies.push_back({0, 0});
    const auto f = funnel(tallies, {.target = 0.17});
    REQUIRE(f->units.size() == 13);
    CHECK(f->units.back().side == 1);
    CHECK(f->df == 13);
    const auto low = funnel(std::vector<Tally>{{0, 100}, {50, 100}}, {.target = 0.3});
    CHECK(low->units[0].side == -1);
    CHECK(low->units[1].side == 1);
    CHECK(funnel(std::vector<Tally>{{3, 10}})->pOverdispersion == 1);
}

TEST_CASE("a funnel that cannot be drawn says why")
{
    CHECK(isUndefined(funnel({})));
    CHECK(isUndefined(funnel(std::vector<Tally>{{0, 0}})));
    CHECK(isUndefined(funnel(std::vector<Tally>{{0, 5}, {0, 9}})));
    CHECK(isUndefined(funnel(std::vector<Tally>{{5, 5}})));
    CHECK(isRefused(funnel(std::vector<Tally>{{6, 5}})));
    CHECK(isRefused(funnel(rows(), {.target = 0.0})));
    CHECK(isRefused(funnel(rows(), {.target = {}, .winsorise = 0.5})));
    CHECK(isRefused(funnelLimit(0.1, 0, 0.025)));
    CHECK(isRefused(funnelLimit(1.0, 5, 0.025)));
    CHECK(isRefused(funnelLimit(0.1, 5, 0)));
    CHECK(isRefused(funnelLimits(0.1, 5, 1)));
    CHECK(isUndefined(exactTwoSided({0, 0}, 0.1)));
    CHECK(isRefused(exactTwoSided({1, 2}, 1.5)));
}

TEST_CASE("the exact test is never more eager than stated, and the limits are about as eager where n allows")
{
    for (const std::int64_t n : {8, 30, 90, 400}) {
        for (const double target : {0.2, 0.5, 0.85}) {
            const auto limits = *funnelLimits(target, n, 0.95);
            const Binomial count{.n = n, .p = target};
            double beyond = 0;
            double exact = 0;
            for (std::int64_t x = 0; x <= n; ++x) {
                const double share = static_cast<double>(x) / static_cast<double>(n);
                beyond += share < limits.low || share > limits.high ? count.pmf(x) : 0;
                exact += *exactTwoSided({x, n}, target) < 0.05 ? count.pmf(x) : 0;
            }
            CAPTURE(n);
            CAPTURE(target);
            CHECK(exact < 0.05 + 1e-12);
            if (n >= 30)
                CHECK(beyond < 0.09);
            CHECK(limits.low <= target);
            CHECK(limits.high >= target);
        }
    }
}

TEST_CASE("a small unit with nothing amiss is no alarm though its interpolated limit lies below 1")
{
    const auto f = funnel(std::vector<Tally>{{5, 5}, {80, 100}, {88, 100}}, {.target = 0.85});
    CHECK(f->units[0].outer.high < 1);
    CHECK(f->units[0].p > 0.5);
    CHECK(f->units[0].side == 0);
}

TEST_CASE("the order of the units does not matter")
{
    auto tallies = rows();
    const auto there = funnel(tallies, {.target = {}, .model = DispersionModel::Additive});
    std::reverse(tallies.begin(), tallies.end());
    const auto back = funnel(tallies, {.target = {}, .model = DispersionModel::Additive});
    CHECK(back->tau2 == near(there->tau2));
    CHECK(back->units.front().outer.high == near(there->units.back().outer.high));
    CHECK(back->units.front().pAdjusted == near(there->units.back().pAdjusted));
}
