// SPDX-License-Identifier: MIT
#include "core/stats/pace.h"

#include "tests/core/stats/near.h"

using namespace cradlepost;
using namespace cradlepost::stats;

using Seconds = std::vector<double>;

TEST_CASE("rounds that were entered too fast stand out")
{
    // Made data; formula with 1.4826 MAD of ln(seconds).
    const Seconds seconds = {412, 380, 455, 390, 520, 365, 401, 60, 433, 47, 398, 610, 377, 420, 385};
    const Seconds z = {0.4301682527, -0.5758674128, 1.665426939, -0.2526566757, 3.326946542, -1.076992067,
        0.0934390906, -23.54332974, 1.048759979, -26.58185146, 0, 5.313210677, -0.6744907595, 0.6694624307,
        -0.4132126293};
    const auto p = pace(seconds);
    REQUIRE(p);
    CHECK(p->medianLog == near(5.986452005));
    CHECK(p->deviationLog == near(0.05420681784));
    for (std::size_t i = 0; i < seconds.size(); ++i) {
        CAPTURE(i);
        CHECK(*p->points[i].z == near(z[i], 1e-8));
        CHECK(p->points[i].tooFast == (i == 7 || i == 9));
        CHECK_FALSE(p->points[i].belowFloor);
    }
}

TEST_CASE("a floor judges where the spread cannot")
{
    const auto p = pace(Seconds{300, 300, 300, 90, 0, 300}, 100);
    REQUIRE(p);
    CHECK(p->deviationLog == 0.0);
    CHECK_FALSE(p->points[0].z);
    CHECK_FALSE(p->points[0].tooFast);
    CHECK(p->points[3].belowFloor);
    CHECK(p->points[3].tooFast);
    CHECK(p->points[4].tooFast);
    CHECK_FALSE(p->points[4].z);
    CHECK_FALSE(pace(Seconds{100, 300}, 100)->points[0].belowFloor);
}

TEST_CASE("a pace without time is not told")
{
    CHECK(isUndefined(pace({})));
    CHECK(isUndefined(pace(Seconds{0, 0})));
    CHECK(isRefused(pace(Seconds{-1})));
    CHECK(isRefused(pace(Seconds{none})));
    CHECK(isRefused(pace(Seconds{100}, -1)));
    CHECK(isRefused(pace(Seconds{100}, none)));
}

TEST_CASE("the unit of time does not change who is flagged")
{
    Seconds seconds = {412, 380, 455, 390, 520, 365, 401, 60, 433, 47, 398, 610, 377, 420, 385};
    const auto inSeconds = pace(seconds);
    for (double& s : seconds)
        s /= 60;
    const auto inMinutes = pace(seconds);
    for (std::size_t i = 0; i < seconds.size(); ++i)
        CHECK(inMinutes->points[i].tooFast == inSeconds->points[i].tooFast);
}
