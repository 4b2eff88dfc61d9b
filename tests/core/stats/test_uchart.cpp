// SPDX-License-Identifier: MIT
#include "core/stats/uchart.h"

#include "tests/core/stats/near.h"

using namespace cradlepost;
using namespace cradlepost::stats;

TEST_CASE("a u chart with varying exposure equals the textbook")
{
    // Montgomery, Introduction to Statistical Quality Control: dyed cloth, units of 50 square metres,
    // mean 1.42.
    const struct
    {
        std::int64_t events;
        double exposure, u, low, high, z;
    } points[] = {
        {14, 10, 1.4, 0.2914739301, 2.555037698, -0.06164389345},
        {12, 8, 1.5, 0.1578852, 2.688626428, 0.1819487157},
        {20, 13, 1.538461538, 0.4306174366, 2.415894191, 0.3481803459},
        {11, 10, 1.1, 0.2914739301, 2.555037698, -0.856850119},
        {7, 9.5, 0.7368421053, 0.2620721019, 2.584439526, -1.773398218},
        {10, 10, 1, 0.2914739301, 2.555037698, -1.121918861},
        {21, 12, 1.75, 0.390085034, 2.456426594, 0.9487614025},
        {16, 10.5, 1.523809524, 0.318749791, 2.527761837, 0.2731185917},
        {19, 12, 1.583333333, 0.390085034, 2.456426594, 0.4648143051},
        {23, 12.5, 1.84, 0.4109593228, 2.435552305, 1.235045828},
    };
    std::vector<EventCount> rows;
    for (const auto& p : points)
        rows.push_back({p.events, p.exposure});
    const auto chart = uChart(rows);
    REQUIRE(chart);
    CHECK(isPrinted(chart->phases.front().centre, 1.42, 2));
    CHECK(chart->phases.front().centre == near(1.423255814));
    for (std::size_t i = 0; i < rows.size(); ++i) {
        CHECK(chart->points[i].value == near(points[i].u));
        CHECK(chart->points[i].limits->low == near(points[i].low));
        CHECK(chart->points[i].limits->high == near(points[i].high));
        CHECK(*chart->points[i].z == near(points[i].z));
    }
    CHECK(chart->signals.empty());
}

TEST_CASE("a u chart with constant exposure meets the textbook")
{
    // Montgomery: personal computers, five in a sample; printed mean 1.93, limits 0.07 and 3.79.
    std::vector<EventCount> rows;
    for (const std::int64_t c : {10, 12, 8, 14, 10, 16, 11, 7, 10, 15, 9, 5, 7, 11, 12, 6, 8, 10, 7, 5})
        rows.push_back({c, 5});
    const auto chart = uChart(rows);
    REQUIRE(chart);
    CHECK(chart->phases.front().centre == near(1.93));
    CHECK(isPrinted(chart->points[0].limits->low, 0.07, 2));
    CHECK(isPrinted(chart->points[0].limits->high, 3.79, 2));
    CHECK(chart->points[0].limits->low == near(0.06613305196));
    CHECK(chart->points[0].limits->high == near(3.793866948));
    for (const auto& signal : chart->signals)
        CHECK(signal.rule != SignalRule::BeyondLimit);
}

TEST_CASE("a u chart leaves out rows without exposure and says what it cannot draw")
{
    const auto chart = uChart(std::vector<EventCount>{{2, 3.5}, {0, 0}, {1, 2}});
    REQUIRE(chart);
    CHECK(chart->points.size() == 2);
    CHECK(chart->points[1].row == 2);
    const auto calm = uChart(std::vector<EventCount>(4, {0, 2.5}));
    CHECK(calm->phases.front().state == LimitsState::NoSpread);
    CHECK_FALSE(calm->points[0].limits);
    CHECK(isUndefined(uChart({})));
    CHECK(isUndefined(uChart(std::vector<EventCount>{{0, 0}})));
    CHECK(isRefused(uChart(std::vector<EventCount>{{1, 0}})));
    CHECK(isRefused(uChart(std::vector<EventCount>{{-1, 2}})));
    CHECK(isRefused(uChart(std::vector<EventCount>{{1, -2}})));
    CHECK(isRefused(uChart(std::vector<EventCount>{{1, none}})));
    CHECK(isRefused(uChart(std::vector<EventCount>{{1000000, 1e-320}})));
    ChartOptions options;
    options.fixedCentre = -1;
    CHECK(isRefused(uChart(std::vector<EventCount>{{1, 2}}, options)));
    options.fixedCentre = {};
    options.baselineRows = 1;
    CHECK(isUndefined(uChart(std::vector<EventCount>{{0, 0}, {1, 2}}, options)));
}

TEST_CASE("measuring the exposure in another unit scales the chart and keeps the signals")
{
    std::vector<EventCount> days;
    std::vector<EventCount> hours;
    for (int i = 0; i < 20; ++i) {
        days.push_back({(i * 7) % 11 + (i == 15 ? 40 : 0), 3.0 + i % 4});
        hours.push_back({days.back().events, days.back().exposure * 24});
    }
    const auto a = uChart(days);
    const auto b = uChart(hours);
    CHECK(a->signals == b->signals);
    CHECK(!a->signals.empty());
    CHECK(a->points[3].limits->high == near(b->points[3].limits->high * 24));
}
