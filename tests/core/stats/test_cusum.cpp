// SPDX-License-Identifier: MIT
#include "core/stats/cusum.h"

#include "tests/core/stats/near.h"

#include <cmath>

using namespace cradlepost;
using namespace cradlepost::stats;

TEST_CASE("tabular sums meet the handbook")
{
    // NIST/SEMATECH e-Handbook 6.3.2.3: target 325, slack 0.3175, threshold 4.1959; the upper sum is 4.94 at
    // group 14.
    const struct
    {
        double x, high, low;
        bool signal;
    } rows[] = {
        {324.925, 0, 0, false},
        {324.675, 0, 0.0075, false},
        {324.725, 0, 0, false},
        {324.35, 0, 0.3325, false},
        {325.35, 0.0325, 0, false},
        {325.225, 0, 0, false},
        {324.125, 0, 0.5575, false},
        {324.525, 0, 0.715, false},
        {325.225, 0, 0.1725, false},
        {324.6, 0, 0.255, false},
        {324.625, 0, 0.3125, false},
        {325.15, 0, 0, false},
        {328.325, 3.0075, 0, false},
        {327.25, 4.94, 0, true},
        {327.825, 7.4475, 0, true},
        {328.5, 10.63, 0, true},
        {326.675, 11.9875, 0, true},
        {327.775, 14.445, 0, true},
        {326.875, 16.0025, 0, true},
        {328.35, 19.035, 0, true},
    };
    std::vector<double> values;
    for (const auto& row : rows)
        values.push_back(row.x);
    const auto points = tabularCusum(values, 325, 0.3175, 4.1959);
    REQUIRE(points);
    for (std::size_t i = 0; i < values.size(); ++i) {
        CAPTURE(i);
        // The values are written in decimals: sums of them are off by rounding units of 325.
        CHECK(std::abs((*points)[i].high - rows[i].high) < 1e-11);
        CHECK(std::abs((*points)[i].low - rows[i].low) < 1e-11);
        CHECK((*points)[i].signal == rows[i].signal);
    }
}

TEST_CASE("weights of the likelihood sum have their closed form")
{
    const auto w = cusumWeights({.p0 = 0.05, .p1 = 0.15});
    REQUIRE(w);
    // Reynolds & Stoumbos (1999), formulas of r1, r2 and gamma.
    CHECK(w->onEvent == near(1.098612289));
    CHECK(w->onPass == near(-0.1112256351));
    CHECK(w->r1 == near(0.1112256351));
    CHECK(w->r2 == near(1.209837924));
    CHECK(w->gamma == near(0.09193432684));
}

TEST_CASE("a sum over single checks holds or starts again after its signal")
{
    // Made data, 30 checks; formula of Reynolds & Stoumbos (1999).
    const std::vector<std::int64_t> checks
        = {0, 0, 1, 0, 0, 0, 0, 0, 1, 0, 1, 0, 0, 1, 0, 0, 0, 1, 1, 0, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0};
    const std::vector<double> sums = {0, 0, 1.098612289, 0.9873866536, 0.8761610184, 0.7649353833,
        0.6537097482, 0.5424841131, 1.641096402, 1.529870767, 2.628483055, 2.51725742, 2.406031785,
        3.504644074, 3.393418439, 3.282192804, 3.170967168, 4.269579457, 5.368191746, 5.256966111,
        6.355578399, 6.244352764, 6.133127129, 6.021901494, 5.910675859, 5.799450224, 5.688224589,
        5.576998954, 5.465773318, 5.354547683};
    std::vector<Tally> rows;
    for (const auto x : checks)
        rows.push_back({x, 1});
    const auto points = shareCusum(rows, {.p0 = 0.05, .p1 = 0.15}, 2.5);
    REQUIRE(points);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        CAPTURE(i);
        CHECK((*points)[i].sum == near(sums[i]));
        CHECK((*points)[i].signal == (sums[i] >= 2.5));
    }
    CHECK((*points)[10].signal);
    CHECK_FALSE((*points)[9].signal);
    const auto reset = shareCusum(rows, {.p0 = 0.05, .p1 = 0.15}, 2.5, AfterSignal::Reset);
    CHECK((*reset)[10].sum == near(2.628483055));
    CHECK((*reset)[11].sum == 0.0);
}

TEST_CASE("a sum over samples of varying size equals the formula")
{
    const struct
    {
        std::int64_t x, n;
        double weight, sum;
        bool signal;
    } rows[] = {
        {1, 12, -0.6024662117, 0, false},
        {2, 15, -0.1448851024, 0, false},
        {0, 8, -0.9422642853, 0, false},
        {3, 14, 0.7838281495, 0.7838281495, false},
        {4, 16, 1.359192294, 2.143020444, false},
        {2, 10, 0.4440300759, 2.58705052, false},
        {5, 18, 1.934556439, 4.521606959, true},
        {4, 12, 1.830324437, 6.351931396, true},
        {6, 17, 2.863269691, 9.215201087, true},
    };
    std::vector<Tally> tallies;
    for (const auto& row : rows)
        tallies.push_back({row.x, row.n});
    const auto points = shareCusum(tallies, {.p0 = 0.10, .p1 = 0.20}, 3);
    REQUIRE(points);
    for (std::size_t i = 0; i < tallies.size(); ++i) {
        CHECK((*points)[i].weight == near(rows[i].weight));
        CHECK((*points)[i].sum == near(rows[i].sum));
        CHECK((*points)[i].signal == rows[i].signal);
    }
}

TEST_CASE("sums refuse what they cannot add")
{
    CHECK(isUndefined(tabularCusum({}, 0, 0, 1)));
    CHECK(isRefused(tabularCusum(std::vector<double>{1}, none, 0, 1)));
    CHECK(isRefused(tabularCusum(std::vector<double>{1}, 0, -1, 1)));
    CHECK(isRefused(tabularCusum(std::vector<double>{1}, 0, 0, 0)));
    CHECK(isRefused(tabularCusum(std::vector<double>{none}, 0, 0, 1)));
    CHECK(isRefused(cusumWeights({.p0 = 0.1, .p1 = 0.1})));
    CHECK(isRefused(cusumWeights({.p0 = 0, .p1 = 0.1})));
    CHECK(isRefused(cusumWeights({.p0 = 0.1, .p1 = 1})));
    const std::vector<Tally> rows{{1, 2}};
    CHECK(isUndefined(shareCusum({}, {.p0 = 0.1, .p1 = 0.2}, 1)));
    CHECK(isRefused(shareCusum(rows, {.p0 = 0.1, .p1 = 0.1}, 1)));
    CHECK(isRefused(shareCusum(rows, {.p0 = 0.1, .p1 = 0.2}, none)));
    CHECK(isRefused(shareCusum(std::vector<Tally>{{3, 2}}, {.p0 = 0.1, .p1 = 0.2}, 1)));
}

TEST_CASE("looking for improvement mirrors looking for worsening")
{
    std::vector<Tally> events;
    std::vector<Tally> others;
    for (int i = 0; i < 25; ++i) {
        events.push_back({(i * 5) % 7, 9});
        others.push_back({9 - events.back().x, 9});
    }
    const auto worse = shareCusum(events, {.p0 = 0.2, .p1 = 0.4}, 3);
    const auto mirror = shareCusum(others, {.p0 = 0.8, .p1 = 0.6}, 3);
    for (std::size_t i = 0; i < events.size(); ++i)
        CHECK((*worse)[i].sum == near((*mirror)[i].sum, 1e-12));
}
