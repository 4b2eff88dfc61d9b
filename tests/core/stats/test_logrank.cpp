// SPDX-License-Identifier: MIT
#include "core/stats/logrank.h"

#include "tests/core/stats/near.h"
#include "tests/core/stats/random.h"
#include "tests/core/stats/survivaldata.h"

#include <algorithm>
#include <cmath>
#include <utility>

using namespace cradlepost;
using namespace cradlepost::stats;

using Groups = std::vector<std::vector<Duration>>;

TEST_CASE("the comparison of two curves meets the published chi-square")
{
    // Freireich et al. (1963); chi-square printed as 16.79. Digits: R package survival 3.5-3, survdiff.
    const auto r = logRank(Groups{remissionTreated(), remissionControl()});
    REQUIRE(r);
    CHECK(isPrinted(r->chiSquare, 16.79, 2));
    CHECK(r->groups[0].observed == 9);
    CHECK(r->groups[0].expected == near(19.25050095));
    CHECK(r->groups[1].observed == 21);
    CHECK(r->groups[1].expected == near(10.74949905));
    CHECK(r->variance == near(6.256960574));
    CHECK(r->chiSquare == near(16.79294099));
    CHECK(r->df == 1);
    CHECK(r->p == near(4.168809109e-05));
    // Miller (1997), acute myelogenous leukaemia.
    const auto a = logRank(Groups{leukaemiaMaintained(), leukaemiaOther()});
    CHECK(a->groups[0].observed == 7);
    CHECK(a->groups[0].expected == near(10.68933599));
    CHECK(a->variance == near(4.007550746));
    CHECK(a->chiSquare == near(3.396388699));
    CHECK(a->p == near(0.06533932204));
}

TEST_CASE("three groups are compared at once and an empty one is left out")
{
    Groups groups{remissionTreated(), remissionControl(), leukaemiaOther()};
    const auto three = logRank(groups);
    REQUIRE(three);
    CHECK(three->df == 2);
    groups.emplace(groups.begin() + 1);
    const auto four = logRank(groups);
    REQUIRE(four);
    CHECK(four->df == 2);
    CHECK(four->chiSquare == near(three->chiSquare, 1e-12));
    CHECK(four->groups[1].n == 0);
    std::swap(groups[0], groups[3]);
    CHECK(logRank(groups)->chiSquare == near(three->chiSquare, 1e-10));
}

TEST_CASE("curves that cannot be compared say why")
{
    CHECK(isUndefined(logRank({})));
    CHECK(isUndefined(logRank(Groups{remissionTreated(), {}})));
    CHECK(isUndefined(logRank(Groups{durations({1, 2}, {0, 0}), durations({1, 3}, {0, 0})})));
    // Events only once the other group has left.
    CHECK(isUndefined(logRank(Groups{durations({1}, {0}), durations({2}, {1})})));
    CHECK(isRefused(logRank(Groups{durations({-1}, {0}), durations({2}, {1})})));
    CHECK(isRefused(logRank(Groups{durations({none}, {0}), durations({2}, {1})})));
}

TEST_CASE("equal curves are told apart about as often as the level says")
{
    Dice dice(1966);
    int rejected = 0;
    constexpr int rounds = 2000;
    for (int i = 0; i < rounds; ++i) {
        Groups groups(2);
        for (int n = 0; n < 60; ++n) {
            const double lasts = -std::log(1 - dice.share()) * 10;
            const double open = dice.share() * 30;
            groups[static_cast<std::size_t>(n % 2)].push_back({std::min(lasts, open), lasts <= open});
        }
        rejected += logRank(groups)->p < 0.05 ? 1 : 0;
    }
    CHECK(rejected > rounds * 0.03);
    CHECK(rejected < rounds * 0.075);
}
