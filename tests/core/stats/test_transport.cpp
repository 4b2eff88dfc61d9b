// SPDX-License-Identifier: MIT
#include "core/stats/transport.h"

#include "tests/core/stats/near.h"
#include "tests/core/stats/random.h"

#include <algorithm>
#include <numeric>

using namespace cradlepost;
using namespace cradlepost::stats;

namespace {

TransportProblem problem(const std::vector<std::int64_t>& supplies, const std::vector<std::int64_t>& needs,
    const std::vector<std::int64_t>& costs)
{
    TransportProblem p{.givers = {}, .needs = needs, .costs = {}};
    for (const auto s : supplies)
        p.givers.push_back({.onHand = s});
    for (const auto c : costs)
        p.costs.emplace_back(c);
    return p;
}

/** Nothing is made from nothing, nothing is lost, nobody gives below its cover. */
void checkSound(const TransportProblem& p, const TransportPlan& plan)
{
    std::vector<std::int64_t> given(p.givers.size());
    std::vector<std::int64_t> got(p.needs.size());
    std::int64_t cost = 0;
    for (const auto& move : plan.moves) {
        CHECK(move.pieces > 0);
        given[move.from] += move.pieces;
        got[move.to] += move.pieces;
        const auto& link = p.costs[move.from * p.needs.size() + move.to];
        REQUIRE(link);
        cost += *link * move.pieces;
    }
    for (std::size_t i = 0; i < given.size(); ++i) {
        CHECK(plan.left[i] == p.givers[i].onHand - given[i]);
        CHECK((given[i] == 0 || plan.left[i] >= p.givers[i].keep));
    }
    for (std::size_t j = 0; j < got.size(); ++j) {
        CHECK(plan.unmet[j] == p.needs[j] - got[j]);
        CHECK(plan.unmet[j] >= 0);
    }
    CHECK(plan.cost == cost);
    CHECK(plan.moved == std::accumulate(got.begin(), got.end(), std::int64_t{0}));
}

std::int64_t costOf(const TransportProblem& p)
{
    const auto plan = transport(p);
    REQUIRE(plan);
    checkSound(p, *plan);
    return plan->cost;
}

}

TEST_CASE("least costs meet the textbooks")
{
    // Hillier FS, Lieberman GJ, Introduction to Operations Research, ch. 9: canned peas, optimum 152535.
    CHECK(costOf(problem(
              {75, 125, 100}, {80, 65, 70, 85}, {464, 513, 654, 867, 352, 416, 690, 791, 995, 682, 388, 685}))
        == 152535);
    // Winston WL, Operations Research, ch. 7: power plants and cities, optimum 1020.
    CHECK(costOf(problem({35, 50, 40}, {45, 20, 30, 30}, {8, 6, 10, 9, 9, 12, 13, 7, 14, 9, 16, 5})) == 1020);
}

TEST_CASE("plenty stays where it is and a shortfall is shown")
{
    // Made data; lpSolve 5.6.18 lp.transport and SciPy 1.10.1 linprog.
    const auto plenty = problem({20, 15}, {8, 10, 6}, {4, 11, 7, 9, 3, 12});
    CHECK(costOf(plenty) == 104);
    CHECK(transport(plenty)->unmet == std::vector<std::int64_t>{0, 0, 0});
    const auto scarce = problem({9, 6}, {8, 10, 6}, {4, 11, 7, 9, 3, 12});
    CHECK(costOf(scarce) == 57);
    CHECK(transport(scarce)->moved == 15);
    // A partial supply equals a partial need.
    CHECK(costOf(problem({10, 10}, {10, 10}, {2, 5, 3, 4})) == 60);
}

TEST_CASE("a giver keeps its own cover and a missing way is never used")
{
    TransportProblem p = problem({10, 10}, {8}, {1, 5});
    p.givers[0].keep = 7;
    const auto plan = transport(p);
    checkSound(p, *plan);
    CHECK(plan->moves == std::vector<Move>{{0, 0, 3}, {1, 0, 5}});
    p.costs[1] = {};
    const auto cut = transport(p);
    checkSound(p, *cut);
    CHECK(cut->moves == std::vector<Move>{{0, 0, 3}});
    CHECK(cut->unmet[0] == 5);
    p.givers[0].keep = 50;
    CHECK(transport(p)->moved == 0);
}

TEST_CASE("no need, no giver and no taker give an empty plan")
{
    CHECK(transport(problem({5}, {0}, {1}))->moves.empty());
    CHECK(transport({})->cost == 0);
    CHECK(transport(problem({5}, {}, {}))->left == std::vector<std::int64_t>{5});
    CHECK(transport(problem({}, {3}, {}))->unmet == std::vector<std::int64_t>{3});
}

TEST_CASE("problems beyond bounds are refused")
{
    CHECK(isRefused(transport(problem({5}, {3}, {}))));
    CHECK(isRefused(transport(problem({-5}, {3}, {1}))));
    CHECK(isRefused(transport(problem({5}, {-3}, {1}))));
    CHECK(isRefused(transport(problem({5}, {3}, {-1}))));
    CHECK(isRefused(transport(problem({5}, {3}, {1000001}))));
    auto keep = problem({5}, {3}, {1});
    keep.givers[0].keep = -1;
    CHECK(isRefused(transport(keep)));
    CHECK(isRefused(
        transport(problem(std::vector<std::int64_t>(401, 1), {1}, std::vector<std::int64_t>(401, 1)))));
}

TEST_CASE("no random plan that moves as much is cheaper")
{
    Dice dice(1962);
    for (int i = 0; i < 120; ++i) {
        const auto givers = static_cast<std::size_t>(dice.whole(1, 5));
        const auto takers = static_cast<std::size_t>(dice.whole(1, 5));
        std::vector<std::int64_t> supplies;
        std::vector<std::int64_t> needs;
        std::vector<std::int64_t> costs;
        for (std::size_t g = 0; g < givers; ++g)
            supplies.push_back(dice.whole(0, 12));
        for (std::size_t t = 0; t < takers; ++t)
            needs.push_back(dice.whole(0, 12));
        for (std::size_t c = 0; c < givers * takers; ++c)
            costs.push_back(dice.whole(0, 20));
        const auto p = problem(supplies, needs, costs);
        const auto best = transport(p);
        REQUIRE(best);
        checkSound(p, *best);
        for (int attempt = 0; attempt < 40; ++attempt) {
            auto have = supplies;
            auto want = needs;
            std::int64_t cost = 0;
            std::int64_t moved = 0;
            // Any order of greedy filling moves as much as can be moved when every way is open.
            std::vector<std::size_t> order(costs.size());
            std::iota(order.begin(), order.end(), std::size_t{0});
            for (std::size_t k = order.size(); k > 1; --k)
                std::swap(order[k - 1],
                    order[static_cast<std::size_t>(dice.whole(0, static_cast<std::int64_t>(k) - 1))]);
            for (const auto link : order) {
                const auto pieces = std::min(have[link / takers], want[link % takers]);
                have[link / takers] -= pieces;
                want[link % takers] -= pieces;
                cost += pieces * costs[link];
                moved += pieces;
            }
            CHECK(moved == best->moved);
            CHECK(best->cost <= cost);
        }
    }
}
