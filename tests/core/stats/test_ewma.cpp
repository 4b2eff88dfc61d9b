// SPDX-License-Identifier: MIT
#include "core/stats/ewma.h"

#include "tests/core/stats/near.h"

using namespace cradlepost;
using namespace cradlepost::stats;

namespace {

const std::vector<double> batch = {52, 47, 53, 49.3, 50.1, 47, 51, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3,
    47.8, 51.2, 52.6, 52.4, 53.6, 52.1};
const std::vector<double> averages = {50.6, 49.52, 50.564, 50.1848, 50.15936, 49.211552, 49.7480864,
    49.85366048, 50.25756234, 50.33029364, 50.11120554, 49.35784388, 49.52049072, 50.0543435, 49.37804045,
    49.92462832, 50.72723982, 51.22906787, 51.94034751, 51.98824326};
const EwmaOptions handbook{
    .target = 50, .sigma = 2.0539, .lambda = 0.3, .width = 3, .limits = EwmaLimits::Steady};

}

TEST_CASE("a weighted moving average meets the handbook")
{
    // NIST/SEMATECH e-Handbook 6.3.2.4: limits 52.5884 and 47.4115, no point out; the averages to two
    // decimals.
    const double printed[] = {50.60, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11,
        49.36, 49.52, 50.05, 49.38, 49.92, 50.73, 51.23, 51.94, 51.99};
    const auto points = ewma(batch, handbook);
    REQUIRE(points);
    for (std::size_t i = 0; i < batch.size(); ++i) {
        const auto& point = (*points)[i];
        CHECK(isPrinted(point.average, printed[i], 2));
        CHECK(point.average == near(averages[i]));
        // The handbook prints the lower limit as 47.4115, cut and not rounded.
        CHECK(isPrinted(point.limits.high, 52.5884, 4));
        CHECK(point.limits.high == near(52.58843174));
        CHECK(point.limits.low == near(47.41156826));
        CHECK_FALSE(point.beyond);
    }
}

TEST_CASE("exact limits start narrow and reach the steady ones")
{
    auto options = handbook;
    options.limits = EwmaLimits::Exact;
    const auto points = ewma(batch, options);
    REQUIRE(points);
    // Formula of Lucas & Saccucci (1990).
    CHECK((*points)[0].limits.high == near(51.84851));
    CHECK((*points)[1].limits.high == near(52.25639401));
    CHECK((*points)[2].limits.high == near(52.43140557));
    for (std::size_t i = 1; i < points->size(); ++i)
        CHECK((*points)[i].sd > (*points)[i - 1].sd);
    CHECK(points->back().limits.high < 52.58843175);
    options.lambda = 1;
    const auto plain = ewma(batch, options);
    CHECK((*plain)[4].average == near(batch[4]));
    CHECK((*plain)[4].sd == near(2.0539));
}

TEST_CASE("an average of shares follows varying n and passes over an empty shift")
{
    // Made data; formula of Lucas & Saccucci (1990) with the variance of each share.
    const struct
    {
        std::int64_t x, n;
        double z, sd, high, low;
        bool out;
    } rows[] = {
        {1, 12, 0.09666666667, 0.01732050808, 0.1467653718, 0.0532346282, false},
        {0, 9, 0.07733333333, 0.02433105012, 0.1656938353, 0.03430616467, false},
        {2, 15, 0.08853333333, 0.02487729889, 0.167168707, 0.032831293, false},
        {1, 11, 0.08900848485, 0.02689527704, 0.172617248, 0.02738275198, false},
        {3, 14, 0.1140639307, 0.02683450485, 0.1724531631, 0.0275468369, false},
        {0, 0, 0.1140639307, 0.02683450485, 0.1724531631, 0.0275468369, false},
        {4, 16, 0.1412511446, 0.02618889109, 0.1707100059, 0.02928999406, false},
        {3, 10, 0.1730009157, 0.02826568822, 0.1763173582, 0.02368264181, false},
        {5, 13, 0.2153238095, 0.02807579955, 0.1758046588, 0.02419534121, true},
    };
    std::vector<Tally> tallies;
    for (const auto& row : rows)
        tallies.push_back({row.x, row.n});
    const auto points = binomialEwma(tallies, 0.10, 0.2, 2.7);
    REQUIRE(points);
    for (std::size_t i = 0; i < tallies.size(); ++i) {
        const auto& point = (*points)[i];
        CHECK(point.average == near(rows[i].z));
        CHECK(point.sd == near(rows[i].sd));
        CHECK(point.limits.high == near(rows[i].high));
        CHECK(point.limits.low == near(rows[i].low));
        CHECK(point.beyond == rows[i].out);
    }
}

TEST_CASE("an average that cannot be made says why")
{
    CHECK(isUndefined(ewma({}, handbook)));
    auto options = handbook;
    for (const double lambda : {0.0, 1.5, none}) {
        options.lambda = lambda;
        CHECK(isRefused(ewma(batch, options)));
    }
    options = handbook;
    options.sigma = 0;
    CHECK(isRefused(ewma(batch, options)));
    options = handbook;
    options.width = -1;
    CHECK(isRefused(ewma(batch, options)));
    CHECK(isRefused(ewma(std::vector<double>{none}, handbook)));
    const std::vector<Tally> empty{{0, 0}};
    CHECK(isUndefined(binomialEwma(empty, 0.1)));
    CHECK(isRefused(binomialEwma(empty, 0)));
    CHECK(isRefused(binomialEwma(std::vector<Tally>{{2, 1}}, 0.1)));
    // Before the first observation there is no point.
    const auto late = binomialEwma(std::vector<Tally>{{0, 0}, {1, 5}}, 0.1);
    REQUIRE(late->size() == 1);
    CHECK(late->front().row == 1);
}
