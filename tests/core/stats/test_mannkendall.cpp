// SPDX-License-Identifier: MIT
#include "core/stats/mannkendall.h"

#include "tests/core/stats/near.h"
#include "tests/core/stats/random.h"

#include <algorithm>
#include <cmath>
#include <vector>

using namespace cradlepost;
using namespace cradlepost::stats;

namespace {

std::vector<TimedValue> series(const std::vector<double>& values)
{
    std::vector<TimedValue> list;
    for (std::size_t i = 0; i < values.size(); ++i)
        list.push_back({static_cast<double>(i + 1), values[i]});
    return list;
}

const std::vector<double> outlier{1, 2, 3, 4, 5, 16, 7};
const std::vector<double> flow{49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1};
const std::vector<double> tied = {72, 75, 75, 80, 78, 81, 80, 84, 84, 88, 86, 91};

}

TEST_CASE("trend and slope equal the formulas in every figure")
{
    // a: Helsel & Hirsch, Statistical Methods in Water Resources, ch. 10, slope +1.0 as printed; b: flow
    // rates of NIST/SEMATECH e-Handbook 6.3.2.2; c: made data with ties. S and exact p: R 4.2.2
    // cor.test(method = "kendall").
    const std::vector<double>* data[] = {&outlier, &flow, &tied};
    const double rows[][3] = {
        {7, 10, 12},
        {19, 27, 57},
        {44.33333333, 125, 209.6666667},
        {2.703381341, 2.325510697, 3.867437746},
        {0.006863794985, 0.02004466862, 0.0001099848935},
        {0.9047619048, 0.6, 0.8636363636},
        {1, 0.5, 1.5},
        {13.05008331, 21.91306351, 28.38002583},
        {3.974958345, 11.54346824, 18.80998709},
        {18.02504165, 34.45653176, 48.19001291},
        {1, 0.1423911374, 1.244721863},
        {3.520868046, 0.8782612703, 1.810857881},
    };
    for (std::size_t t = 0; t < 3; ++t) {
        CAPTURE(t);
        const auto r = mannKendall(series(*data[t]));
        REQUIRE(r);
        CHECK(r->n == static_cast<int>(rows[0][t]));
        CHECK(r->s == rows[1][t]);
        CHECK(r->variance == near(rows[2][t]));
        CHECK(r->z == near(rows[3][t]));
        CHECK(r->pNormal == near(rows[4][t]));
        CHECK(r->tau == near(rows[5][t]));
        CHECK(r->slope == near(rows[6][t]));
        CHECK(r->interval->low == near(rows[10][t]));
        CHECK(r->interval->high == near(rows[11][t]));
    }
    CHECK(mannKendall(series(outlier))->slope == near(1.0));
    CHECK(*mannKendall(series(outlier))->pExact == near(0.002777777778));
    CHECK(*mannKendall(series(flow))->pExact == near(0.01666611552));
    CHECK(mannKendall(series(flow))->p == near(0.01666611552));
    // One-sided, as tables print it, is half of it.
    CHECK(*mannKendall(series(outlier))->pExact / 2 == near(0.001388888889));
    CHECK(*mannKendall(series(flow))->pExact / 2 == near(0.00833305776));
    CHECK_FALSE(mannKendall(series(tied))->pExact);
    CHECK(mannKendall(series(tied))->p == near(0.0001099848935));
}

TEST_CASE("times need not be even, and pairs of one time are dropped")
{
    const auto r = mannKendall(std::vector<TimedValue>{{1, 2}, {1, 9}, {3, 4}, {7, 8}, {9, 10}});
    REQUIRE(r);
    // By hand: pairs with different times (1,3) +, - (1,7) +, - (1,9) +, + (3,7) + (3,9) + (7,9) +.
    CHECK(r->s == 5);
    CHECK_FALSE(r->pExact);
    const auto shuffled = mannKendall(std::vector<TimedValue>{{9, 10}, {3, 4}, {1, 9}, {7, 8}, {1, 2}});
    CHECK(shuffled->s == r->s);
    CHECK(shuffled->slope == near(r->slope));
}

TEST_CASE("a trend that cannot be told says why")
{
    CHECK(isUndefined(mannKendall(series({1, 2, 3}))));
    CHECK(isUndefined(mannKendall(series({5, 5, 5, 5, 5}))));
    CHECK(isUndefined(mannKendall(std::vector<TimedValue>{{1, 1}, {1, 2}, {1, 3}, {1, 4}})));
    CHECK(isRefused(mannKendall(series({1, none, 3, 4}))));
    CHECK(isRefused(mannKendall(series({1, 1e200, 3, 4}))));
    CHECK(isRefused(mannKendall(series(outlier), 0)));
    CHECK(isRefused(mannKendall(std::vector<TimedValue>(10001))));
    // Four values give too few slopes for limits at 99 %.
    CHECK_FALSE(mannKendall(series({1, 3, 2, 4}), 0.99)->interval);
}

TEST_CASE("turning time around turns the trend around")
{
    Dice dice(1945);
    for (int i = 0; i < 200; ++i) {
        std::vector<double> values;
        for (auto n = dice.whole(4, 30); n > 0; --n)
            values.push_back(static_cast<double>(dice.whole(0, 12)));
        const auto there = mannKendall(series(values));
        std::reverse(values.begin(), values.end());
        const auto back = mannKendall(series(values));
        REQUIRE(there.has_value() == back.has_value());
        if (!there)
            continue;
        CHECK(there->s == -back->s);
        CHECK(there->p == near(back->p, 1e-12));
        CHECK(there->slope == near(-back->slope, 1e-12));
        if (there->interval) {
            CHECK(there->interval->low <= there->slope);
            CHECK(there->interval->high >= there->slope);
        }
    }
}

TEST_CASE("without a trend it is seen about as often as the level says")
{
    Dice dice(1975);
    int seen = 0;
    constexpr int rounds = 3000;
    for (int i = 0; i < rounds; ++i) {
        std::vector<double> values;
        for (int n = 0; n < 24; ++n)
            values.push_back(dice.share());
        seen += mannKendall(series(values))->p < 0.05 ? 1 : 0;
    }
    CHECK(seen > rounds * 0.03);
    CHECK(seen < rounds * 0.065);
}
