// SPDX-License-Identifier: MIT
#include "core/stats/pchart.h"

#include "tests/core/stats/near.h"
#include "tests/core/stats/random.h"

#include <algorithm>
#include <cmath>

using namespace cradlepost;
using namespace cradlepost::stats;

namespace {

using Rows = std::vector<std::size_t>;

std::vector<Tally> tallies(const std::vector<std::int64_t>& x, const std::vector<std::int64_t>& n)
{
    std::vector<Tally> rows;
    for (std::size_t i = 0; i < x.size(); ++i)
        rows.push_back({x[i], n.size() == 1 ? n[0] : n[i]});
    return rows;
}

/** Rows beyond the limits, from 1. */
Rows out(const ControlChart& chart)
{
    Rows rows;
    for (const auto& signal : chart.signals) {
        if (signal.rule == SignalRule::BeyondLimit)
            rows.push_back(signal.at + 1);
    }
    return rows;
}

const std::vector<std::int64_t> cans = {12, 15, 8, 10, 4, 7, 16, 9, 14, 10, 5, 6, 17, 12, 22, 8, 10, 5, 13,
    11, 20, 18, 24, 15, 9, 12, 7, 13, 9, 6};
const std::vector<std::int64_t> peaches = {
    47, 42, 55, 51, 46, 61, 39, 44, 41, 51, 88, 101, 101, 40, 48, 47, 50, 48, 57, 45, 43, 105, 98, 100, 96};
const std::vector<std::int64_t> peachSizes = {250, 250, 250, 250, 250, 250, 250, 250, 250, 250, 500, 500, 500,
    250, 250, 250, 250, 250, 250, 250, 250, 500, 500, 500, 500};

struct Point
{
    std::size_t i;
    std::int64_t x, n;
    double p, z, low, high;
    bool out;
};

}

TEST_CASE("a p chart with constant n meets the handbook")
{
    // NIST/SEMATECH e-Handbook 6.3.3.2 and Montgomery, Introduction to Statistical Quality Control: 30
    // samples of 50; printed mean 0.2313, limits 0.0524 and 0.4102, samples 15 and 23 out.
    const auto chart = pChart(tallies(cans, {50}));
    REQUIRE(chart);
    const auto& point = chart->points.front();
    CHECK(isPrinted(point.centre, 0.2313, 4));
    CHECK(isPrinted(point.limits->low, 0.0524, 4));
    CHECK(isPrinted(point.limits->high, 0.4102, 4));
    CHECK(out(*chart) == Rows{15, 23});
    CHECK(point.centre == near(0.2313333333));
    CHECK(point.sigma == near(0.05963526175));
    CHECK(point.limits->low == near(0.05242754807));
    CHECK(point.limits->high == near(0.4102391186));
}

TEST_CASE("rows left out of the baseline are still plotted and judged")
{
    // Montgomery: revised mean 0.2150, limits 0.0407 and 0.3893; sample 21 then lies beyond the limit.
    ChartOptions options;
    options.excluded = {14, 22};
    const auto chart = pChart(tallies(cans, {50}), options);
    REQUIRE(chart);
    CHECK(chart->points.size() == 30);
    CHECK(chart->phases.front().baselinePoints == 28);
    CHECK(chart->phases.front().centre == near(0.215));
    CHECK(chart->points[0].limits->low == near(0.04070283995));
    CHECK(chart->points[0].limits->high == near(0.38929716));
    CHECK(out(*chart) == Rows{15, 21, 23});
}

TEST_CASE("a p chart with varying n has limits of its own for each point")
{
    // Pyzdek T, Keller P, The Handbook for Quality Management, Table 9.6: totals 1544 of 8000.
    const auto chart = pChart(tallies(peaches, peachSizes));
    REQUIRE(chart);
    CHECK(chart->phases.front().centre == near(0.193));
    CHECK(chart->points[0].sigma == near(0.02496004808));
    CHECK(chart->points[0].limits->low == near(0.1181198558));
    CHECK(chart->points[0].limits->high == near(0.2678801442));
    CHECK(chart->points[10].sigma == near(0.01764941925));
    CHECK(chart->points[10].limits->low == near(0.1400517422));
    CHECK(chart->points[10].limits->high == near(0.2459482578));
    CHECK(out(*chart).empty());
}

TEST_CASE("a shift without observation has no point and a limit below 0 is cut")
{
    // Made data as on a labour ward; formula of the handbook.
    const Point points[] = {
        {1, 3, 14, 0.2142857143, 0.11683726, 0, 0.5235180507, false},
        {2, 1, 9, 0.1111111111, -0.6776057453, 0, 0.6030641836, false},
        {3, 0, 11, 0, -1.667399106, 0, 0.564752756, false},
        {4, 2, 20, 0.1, -1.133935555, 0, 0.4709611823, false},
        {5, 9, 16, 0.5625, 3.5956821, 0, 0.5027367342, true},
        {6, 1, 8, 0.125, -0.5409640843, 0, 0.6274077049, false},
        {8, 2, 12, 0.1666666667, -0.3028767944, 0, 0.5492988655, false},
        {9, 4, 18, 0.2222222222, 0.2163856337, 0, 0.4855232653, false},
        {10, 1, 6, 0.1666666667, -0.2141662352, 0, 0.6932565025, false},
    };
    const auto chart = pChart(tallies({3, 1, 0, 2, 9, 1, 0, 2, 4, 1}, {14, 9, 11, 20, 16, 8, 0, 12, 18, 6}));
    REQUIRE(chart);
    REQUIRE(chart->points.size() == std::size(points));
    for (std::size_t k = 0; k < chart->points.size(); ++k) {
        const auto& point = chart->points[k];
        CAPTURE(points[k].i);
        CHECK(point.row + 1 == points[k].i);
        CHECK(point.value == near(points[k].p));
        CHECK(*point.z == near(points[k].z));
        CHECK(point.limits->low == near(points[k].low));
        CHECK(point.lowerCut);
        CHECK(point.limits->high == near(points[k].high));
    }
    CHECK(out(*chart) == Rows{5});
    const double sigmas[] = {0.1072545549, 0.1337699326, 0.1209994567, 0.08973559876, 0.1003274494,
        0.1418844396, 0.1158481599, 0.09458962643, 0.1638340388};
    for (std::size_t k = 0; k < chart->points.size(); ++k)
        CHECK(chart->points[k].sigma == near(sigmas[k]));
}

TEST_CASE("a p-prime chart stretches the limits by the spread between points")
{
    // Laney DB (2002) Quality Engineering 14:531-537, constant 1.128; data of the peaches above.
    const auto chart = pPrimeChart(tallies(peaches, peachSizes));
    REQUIRE(chart);
    CHECK(chart->phases.front().dispersion == near(0.9994551975));
    // The constant of the tables, not 2 over the root of pi, with which the same moving range gives the last.
    const double meanMovingRange = chart->phases.front().dispersion * 1.128;
    CHECK(meanMovingRange == near(1.127385463));
    CHECK(meanMovingRange * std::sqrt(M_PI) / 2 == near(0.9991193524));
    CHECK(chart->points[0].limits->low == near(0.1181606507));
    CHECK(chart->points[0].limits->high == near(0.2678393493));
    CHECK(chart->points[10].limits->low == near(0.1400805886));
    CHECK(chart->points[10].limits->high == near(0.2459194114));
}

TEST_CASE("large n with more spread than chance signals on the p chart and not on the p-prime chart")
{
    // Made data; formula of Laney (2002).
    const Point points[] = {
        {1, 612, 5010, 0.1221556886, -1.741615876, 0.09418316981, 0.1667020172, false},
        {2, 548, 4870, 0.1125256674, -3.71252291, 0.0936656799, 0.1672195071, false},
        {3, 701, 5200, 0.1348076923, 0.9346239566, 0.09485176578, 0.1660334212, false},
        {4, 655, 5105, 0.1283055828, -0.4533626475, 0.09452213373, 0.1663630533, false},
        {5, 590, 4950, 0.1191919192, -2.350294641, 0.09396407764, 0.1669211094, false},
        {6, 720, 5320, 0.1353383459, 1.060269862, 0.09525545553, 0.1656297315, false},
        {7, 801, 5400, 0.1483333333, 3.90360925, 0.09551707356, 0.1653681134, false},
        {8, 688, 5150, 0.133592233, 0.6711284082, 0.0946794121, 0.1662057749, false},
        {9, 560, 4800, 0.1166666667, -2.833887492, 0.09339848552, 0.1674867015, false},
        {10, 645, 5025, 0.128358209, -0.4387195984, 0.0942373288, 0.1666478582, false},
        {11, 777, 5310, 0.1463276836, 3.436988679, 0.09522233821, 0.1656628488, false},
        {12, 690, 5090, 0.1355599214, 1.08403498, 0.09446924468, 0.1664159423, false},
    };
    std::vector<Tally> rows;
    for (const auto& p : points)
        rows.push_back({p.x, p.n});
    CHECK(out(*pChart(rows)) == Rows{2, 7, 11});
    const auto chart = pPrimeChart(rows);
    REQUIRE(chart);
    CHECK(out(*chart).empty());
    CHECK(chart->phases.front().centre == near(0.1304425935));
    CHECK(chart->phases.front().dispersion == near(2.540151757));
    for (std::size_t k = 0; k < rows.size(); ++k) {
        CHECK(chart->points[k].limits->low == near(points[k].low));
        CHECK(chart->points[k].limits->high == near(points[k].high));
        CHECK(*chart->points[k].z * chart->phases.front().dispersion == near(points[k].z));
    }
}

TEST_CASE("limits can be set anew from a row on, or fixed by the first rows")
{
    const auto rows = tallies({10, 10, 10, 10, 30, 30, 30, 30}, {100});
    ChartOptions rebased;
    rebased.phaseStarts = {4};
    const auto two = pChart(rows, rebased);
    REQUIRE(two);
    REQUIRE(two->phases.size() == 2);
    CHECK(two->phases[0].centre == near(0.1));
    CHECK(two->phases[1].centre == near(0.3));
    CHECK(two->signals.empty());
    ChartOptions fixed;
    fixed.baselineRows = 4;
    const auto one = pChart(rows, fixed);
    CHECK(one->phases[0].centre == near(0.1));
    CHECK(out(*one) == Rows{5, 6, 7, 8});
    ChartOptions given;
    given.fixedCentre = 0.3;
    CHECK(out(*pChart(rows, given)) == Rows{1, 2, 3, 4});
    CHECK(pChart(rows, given)->points[7].centre == 0.3);
}

TEST_CASE("a chart at an end of the scale has no limits and cannot signal")
{
    for (const std::int64_t x : {0, 9}) {
        const auto chart = pChart(std::vector<Tally>(12, {x, 9}));
        REQUIRE(chart);
        CHECK(chart->phases.front().state == LimitsState::NoSpread);
        CHECK_FALSE(chart->points.front().limits);
        CHECK_FALSE(chart->points.front().z);
        CHECK(chart->signals.empty());
    }
    const auto equal = pPrimeChart(std::vector<Tally>(5, {3, 9}));
    CHECK(equal->phases.front().state == LimitsState::NoSpread);
    const auto single = pPrimeChart(std::vector<Tally>{{3, 9}});
    CHECK(single->phases.front().state == LimitsState::TooFewPoints);
    CHECK(single->points.front().limits->high
        == near(pChart(std::vector<Tally>{{3, 9}})->points[0].limits->high));
}

TEST_CASE("a chart that cannot be drawn says why")
{
    CHECK(isUndefined(pChart({})));
    CHECK(isUndefined(pChart(std::vector<Tally>(3, {0, 0}))));
    const std::vector<Tally> rows{{0, 0}, {1, 5}, {2, 5}};
    ChartOptions options;
    options.baselineRows = 1;
    CHECK(isUndefined(pChart(rows, options)));
    CHECK(isRefused(pChart(std::vector<Tally>{{6, 5}})));
    ChartOptions beyond;
    beyond.phaseStarts = {3};
    CHECK(isRefused(pChart(rows, beyond)));
    ChartOptions falling;
    falling.excluded = {2, 1};
    CHECK(isRefused(pChart(rows, falling)));
    ChartOptions centre;
    centre.fixedCentre = 1.2;
    CHECK(isRefused(pChart(rows, centre)));
    centre.fixedCentre = none;
    CHECK(isRefused(pPrimeChart(rows, centre)));
    for (const auto state :
        {LimitsState::Set, LimitsState::NoSpread, LimitsState::TooFewPoints, LimitsState::NoData})
        CHECK(std::string(limitsStateName(state)).size() > 2);
}

TEST_CASE("limits narrow as n grows, and false alarms stay rare under chance alone")
{
    const auto chart = pChart(std::vector<Tally>{{5, 10}, {10, 20}, {20, 40}, {40, 80}, {80, 160}});
    for (std::size_t i = 1; i < chart->points.size(); ++i)
        CHECK(chart->points[i].limits->high - chart->points[i].limits->low
            < chart->points[i - 1].limits->high - chart->points[i - 1].limits->low);
    Dice dice(36);
    std::size_t alarms = 0;
    constexpr int charts = 400;
    for (int i = 0; i < charts; ++i) {
        std::vector<Tally> rows;
        for (int month = 0; month < 36; ++month)
            rows.push_back({dice.events(90, 0.7), 90});
        alarms += out(*pChart(rows)).size();
    }
    // 0.0027 a point for a normal count: about 39 in 14400.
    CHECK(alarms < 80);
    CHECK(alarms > 5);
}
