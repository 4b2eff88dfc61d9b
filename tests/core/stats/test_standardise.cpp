// SPDX-License-Identifier: MIT
#include "core/stats/standardise.h"

#include "core/stats/distributions.h"
#include "tests/core/stats/near.h"

#include <cmath>
#include <vector>

using namespace cradlepost;
using namespace cradlepost::stats;

TEST_CASE("direct standardisation of rates meets the published table")
{
    // Births by mother's age and birth order: Stark & Mantel (1966), Fleiss (1981) p. 249; gamma limits as in
    // Table 1 of Fay & Feuer (1997). Figures: epitools 0.5-10.1 ageadjust.direct, per 100000.
    const struct
    {
        const char* age;
        double births1;
        std::int64_t cases1;
        double births2;
        std::int64_t cases2;
        double births3;
        std::int64_t cases3;
        double standard;
    } rows[] = {
        {"<20", 230061, 107, 72202, 25, 15050, 3, 63986.6},
        {"20-24", 329449, 141, 326701, 150, 175702, 71, 186263.6},
        {"25-29", 114920, 60, 208667, 110, 207081, 114, 157302.2},
        {"30-34", 39487, 40, 83228, 84, 117300, 103, 97647},
        {"35-39", 14208, 39, 28466, 82, 45026, 108, 47572.6},
        {"40+", 3052, 25, 5375, 39, 8660, 75, 12262.6},
    };
    std::vector<RateStratum> first;
    std::vector<RateStratum> second;
    std::vector<RateStratum> third;
    for (const auto& row : rows) {
        first.push_back({row.cases1, row.births1, row.standard});
        second.push_back({row.cases2, row.births2, row.standard});
        third.push_back({row.cases3, row.births3, row.standard});
    }
    const struct
    {
        int order;
        double crude, adjusted, low, high;
    } results[] = {
        {1, 56.34750546, 92.30452553, 80.44174985, 105.7633457},
        {2, 67.61987693, 91.17411683, 82.36121165, 100.8675763},
        {3, 83.33054979, 85.06922134, 77.1834534, 94.22356983},
    };
    for (const auto& expected : results) {
        const auto s = directRate(expected.order == 1 ? first : (expected.order == 2 ? second : third));
        REQUIRE(s);
        CHECK(s->crude * 1e5 == near(expected.crude));
        CHECK(s->adjusted * 1e5 == near(expected.adjusted));
        CHECK(s->interval.low * 1e5 == near(expected.low));
        CHECK(s->interval.high * 1e5 == near(expected.high));
    }
}

TEST_CASE("indirect standardisation takes exact limits of the observed count")
{
    // US cancer deaths 1940 against 1960: Selvin S (2004) Statistical Analysis of Epidemiologic Data, data
    // with the R package epitools; exact limits by Garwood.
    const struct
    {
        const char* age;
        std::int64_t deaths40;
        double people40;
        std::int64_t deaths60;
        double people60;
    } rows[] = {
        {"<1", 45, 906897, 141, 1784033},
        {"1-4", 201, 3794573, 926, 7065148},
        {"5-14", 320, 10003544, 1253, 15658730},
        {"15-24", 670, 10629526, 1080, 10482916},
        {"25-34", 1126, 9465330, 1869, 9939972},
        {"35-44", 3160, 8249558, 4891, 10563872},
        {"45-54", 9723, 7294330, 14956, 9114202},
        {"55-64", 17935, 5022499, 30888, 6850263},
        {"65-74", 22179, 2920220, 41725, 4702482},
        {"75-84", 13461, 1019504, 26501, 1874619},
        {"85+", 2238, 142532, 5928, 330915},
    };
    std::vector<IndirectStratum> strata;
    std::vector<RateStratum> direct;
    std::int64_t observed = 0;
    for (const auto& row : rows) {
        strata.push_back({row.people40, static_cast<double>(row.deaths60) / row.people60});
        direct.push_back({row.deaths40, row.people40, row.people60});
        observed += row.deaths40;
    }
    const auto r = indirectRatio(observed, strata);
    REQUIRE(r);
    CHECK(observed == 71058);
    CHECK(r->expected == near(85556.88884));
    CHECK(r->ratio == near(0.830535109));
    CHECK(r->interval.low == near(0.8244395852));
    CHECK(r->interval.high == near(0.8366645047));
    // epitools gives the log-normal interval, which parts from the exact one in the fifth digit.
    const double spread = std::exp(normalQuantile(0.975) / std::sqrt(static_cast<double>(observed)));
    CHECK(r->ratio / spread == near(0.824450902));
    CHECK(r->ratio * spread == near(0.8366642156));
    CHECK(r->interval.low != near(r->ratio / spread));
    CHECK(directRate(direct)->adjusted * 1e5 == near(139.250544));
    CHECK(directRate(direct)->crude * 1e5 == near(119.5286415));
}

TEST_CASE("direct standardisation of shares equals the formula")
{
    // Made data: compliant checks by shift.
    const std::vector<ShareStratum> strata{{{180, 200}, 50}, {{95, 110}, 30}, {{40, 60}, 20}};
    const auto s = directShare(strata);
    REQUIRE(s);
    CHECK(s->crude == near(0.8513513514));
    CHECK(s->adjusted == near(0.8424242424));
    CHECK(s->se == near(0.01889455666));
    CHECK(s->interval.low == near(0.8053915919));
    CHECK(s->interval.high == near(0.879456893));
}

TEST_CASE("a stratum with a weight but nothing seen is reported, one without weight is dropped")
{
    CHECK(isUndefined(directShare(std::vector<ShareStratum>{{{1, 2}, 1}, {{0, 0}, 1}})));
    const auto dropped = directShare(std::vector<ShareStratum>{{{1, 2}, 1}, {{0, 0}, 0}});
    CHECK(dropped->adjusted == near(0.5));
    CHECK(isUndefined(directRate(std::vector<RateStratum>{{1, 2, 1}, {0, 0, 1}})));
    CHECK(isUndefined(directShare({})));
    CHECK(isUndefined(directRate(std::vector<RateStratum>{{1, 2, 0}})));
    CHECK(isRefused(directShare(std::vector<ShareStratum>{{{1, 2}, -1}})));
    CHECK(isRefused(directShare(std::vector<ShareStratum>{{{3, 2}, 1}})));
    CHECK(isRefused(directShare(std::vector<ShareStratum>{{{1, 2}, 1e308}, {{1, 2}, 1e308}})));
    CHECK(isRefused(directRate(std::vector<RateStratum>{{-1, 2, 1}})));
    CHECK(isRefused(directRate(std::vector<RateStratum>{{1, none, 1}})));
    CHECK(isRefused(directRate(std::vector<RateStratum>{{1, 2, 1}}, 0)));
    CHECK(isRefused(directRate(std::vector<RateStratum>{{1, 1e-320, 1}})));
    const auto calm = directRate(std::vector<RateStratum>{{0, 10, 1}, {0, 20, 1}});
    CHECK(calm->adjusted == 0.0);
    CHECK(calm->interval.low == 0.0);
    CHECK(calm->interval.high > 0);
}

TEST_CASE("an indirect ratio needs something expected")
{
    CHECK(isUndefined(indirectRatio(3, std::vector<IndirectStratum>{{0, 1}})));
    CHECK(isUndefined(indirectRatio(3, {})));
    CHECK(indirectRatio(0, std::vector<IndirectStratum>{{10, 0.5}})->interval.low == 0.0);
    CHECK(isRefused(indirectRatio(-3, std::vector<IndirectStratum>{{10, 0.5}})));
    CHECK(isRefused(indirectRatio(3, std::vector<IndirectStratum>{{-10, 0.5}})));
    CHECK(isRefused(indirectRatio(3, std::vector<IndirectStratum>{{10, none}})));
    CHECK(isRefused(indirectRatio(3, std::vector<IndirectStratum>{{1e308, 1e308}})));
    CHECK(isRefused(indirectRatio(3, std::vector<IndirectStratum>{{1e-320, 1e-3}})));
}

TEST_CASE(
    "equal strata make the adjusted figure the crude one, and one stratum makes the gamma limits Garwood's")
{
    const auto s = directRate(std::vector<RateStratum>{{5, 100, 3}, {5, 100, 7}});
    CHECK(s->adjusted == near(s->crude));
    const auto one = directRate(std::vector<RateStratum>{{5, 1, 1}});
    CHECK(one->interval.low == near(1.62348639));
    CHECK(one->interval.high == near(11.66833208));
}
