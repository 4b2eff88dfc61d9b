// SPDX-License-Identifier: MIT
#include "core/stats/rate.h"

#include "core/stats/distributions.h"
#include "tests/core/stats/near.h"

using namespace cradlepost;
using namespace cradlepost::stats;

TEST_CASE("the exact interval of a count meets the published table")
{
    // Garwood F (1936) Biometrika 28:437-442, 95 %, as printed.
    CHECK(isPrinted(garwood(0)->high, 3.69, 2));
    CHECK(isPrinted(garwood(1)->low, 0.0253, 4));
    CHECK(isPrinted(garwood(1)->high, 5.57, 2));
    CHECK(isPrinted(garwood(5)->low, 1.62, 2));
    CHECK(isPrinted(garwood(5)->high, 11.67, 2));
    CHECK(isPrinted(garwood(10)->low, 4.80, 2));
    CHECK(isPrinted(garwood(10)->high, 18.39, 2));
    // R 4.2.2 poisson.test.
    const struct
    {
        std::int64_t x;
        double low95, high95, low99, high99;
    } rows[] = {
        {0, 0, 3.688879454, 0, 5.298317367},
        {1, 0.02531780798, 5.571643391, 0.005012541824, 7.4301295},
        {2, 0.2422092785, 7.224687668, 0.1034945467, 9.273792089},
        {3, 0.6186721229, 8.76727307, 0.3378633887, 10.9774775},
        {5, 1.62348639, 11.66833208, 1.077928241, 14.14975941},
        {10, 4.795388696, 18.39035604, 3.716922131, 21.3978275},
        {20, 12.21651959, 30.8883779, 10.35326766, 34.66799873},
        {50, 37.11096374, 65.91876666, 33.66378165, 71.26608848},
        {100, 81.36399125, 121.6267938, 76.12049584, 128.7605801},
    };
    for (const auto& row : rows) {
        CAPTURE(row.x);
        CHECK(garwood(row.x)->low == near(row.low95));
        CHECK(garwood(row.x)->high == near(row.high95));
        CHECK(garwood(row.x, 0.99)->low == near(row.low99));
        CHECK(garwood(row.x, 0.99)->high == near(row.high99));
    }
}

TEST_CASE("a rate carries its interval in its own unit")
{
    const auto rate = exactRate(5, 250);
    REQUIRE(rate);
    CHECK(rate->estimate == near(0.02));
    CHECK(rate->interval.low == near(1.62348639 / 250));
    CHECK(rate->interval.high == near(11.66833208 / 250));
    CHECK(isUndefined(exactRate(5, 0)));
    CHECK(isRefused(exactRate(5, -1)));
    CHECK(isRefused(exactRate(5, none)));
    CHECK(isRefused(exactRate(5, 1e-320)));
    CHECK(isRefused(exactRate(-1, 10)));
    CHECK(isRefused(garwood(-1)));
    CHECK(isRefused(garwood(1, 1)));
}

TEST_CASE("the exact interval covers at least its level for every true mean")
{
    for (double mean = 0.25; mean < 25; mean += 0.75) {
        double covered = 0;
        for (std::int64_t x = 0; x < 120; ++x) {
            const auto g = *garwood(x);
            covered += g.low <= mean && mean <= g.high ? Poisson{.mean = mean}.pmf(x) : 0;
        }
        CAPTURE(mean);
        CHECK(covered >= 0.95 - 1e-12);
    }
}
