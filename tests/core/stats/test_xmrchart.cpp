// SPDX-License-Identifier: MIT
#include "core/stats/xmrchart.h"

#include "tests/core/stats/near.h"

using namespace cradlepost;
using namespace cradlepost::stats;

namespace {

using Values = std::vector<std::optional<double>>;
const Values flow = {49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1};

}

TEST_CASE("a chart of individuals meets the handbook")
{
    // NIST/SEMATECH e-Handbook 6.3.2.2, flow rate in ten batches: mean 50.81, mean moving range 1.8778,
    // limits 55.8041 and 45.8159, no point out.
    const auto chart = xmrChart(flow);
    REQUIRE(chart);
    const auto& phase = chart->values.phases.front();
    const auto& point = chart->values.points.front();
    CHECK(phase.centre == near(50.81));
    CHECK(isPrinted(phase.dispersion, 1.8778, 4));
    CHECK(isPrinted(point.limits->high, 55.8041, 4));
    CHECK(isPrinted(point.limits->low, 45.8159, 4));
    CHECK(phase.dispersion == near(1.877777778));
    CHECK(point.sigma == near(1.664696612));
    CHECK(point.limits->high == near(55.80408983));
    CHECK(point.limits->low == near(45.81591017));
    CHECK(*chart->ranges.front().upper == near(6.1347));
    CHECK(chart->ranges.size() == 9);
    CHECK(chart->values.signals.empty());
}

TEST_CASE("a missing value takes two moving ranges with it")
{
    // Made data; formula of the handbook.
    const auto chart = xmrChart(Values{36.5, 36.7, {}, 36.9, 36.4});
    REQUIRE(chart);
    REQUIRE(chart->ranges.size() == 2);
    CHECK(chart->ranges[0].row == 1);
    CHECK(chart->ranges[1].row == 4);
    CHECK(chart->values.phases[0].dispersion == near(0.35));
    CHECK(chart->values.phases[0].centre == near(36.625));
    CHECK(chart->values.points[0].sigma == near(0.3102836879));
    CHECK(chart->values.points[0].limits->low == near(35.69414894));
    CHECK(chart->values.points[0].limits->high == near(37.55585106));
}

TEST_CASE("individuals without spread have no limits, and without values no chart")
{
    CHECK(xmrChart(Values{4.0, 4.0, 4.0})->values.phases[0].state == LimitsState::NoSpread);
    const auto one = xmrChart(Values{4.0});
    CHECK(one->values.phases[0].state == LimitsState::TooFewPoints);
    CHECK_FALSE(one->values.points[0].limits);
    CHECK(xmrChart(Values{4.0, {}, 5.0})->values.phases[0].state == LimitsState::TooFewPoints);
    CHECK(isUndefined(xmrChart({})));
    CHECK(isUndefined(xmrChart(Values{{}, {}})));
    CHECK(isRefused(xmrChart(Values{none, 1.0})));
    CHECK(isRefused(xmrChart(Values{1e308, -1e308, 1e308})));
    ChartOptions options;
    options.baselineRows = 1;
    CHECK(isUndefined(xmrChart(Values{{}, 1.0}, options)));
    options = {};
    options.fixedCentre = none;
    CHECK(isRefused(xmrChart(flow, options)));
}

TEST_CASE("phases keep their own mean and no range bridges them")
{
    Values values;
    for (int i = 0; i < 10; ++i)
        values.emplace_back((i < 5 ? 10.0 : 30.0) + i % 2);
    ChartOptions options;
    options.phaseStarts = {5};
    const auto chart = xmrChart(values, options);
    REQUIRE(chart);
    CHECK(chart->ranges.size() == 8);
    CHECK(chart->values.signals.empty());
    ChartOptions fixed;
    fixed.baselineRows = 5;
    const auto frozen = xmrChart(values, fixed);
    CHECK(frozen->values.phases[0].centre == near(10.4));
    CHECK(frozen->values.signals.size() > 5);
    CHECK(frozen->ranges[4].beyond);
}

TEST_CASE("shifting and scaling the values shifts and scales the limits")
{
    Values other;
    for (const auto& v : flow)
        other.emplace_back(*v * 2 + 7);
    const auto a = xmrChart(flow);
    const auto b = xmrChart(other);
    CHECK(b->values.points[0].limits->high == near(a->values.points[0].limits->high * 2 + 7));
    CHECK(*b->values.points[3].z == near(*a->values.points[3].z, 1e-8));
}
