// SPDX-License-Identifier: MIT
#include "core/stats/transport.h"

#include "core/stats/check.h"

#include <algorithm>
#include <boost/graph/adjacency_list.hpp>
#include <boost/graph/successive_shortest_path_nonnegative_weights.hpp>

namespace cradlepost::stats {

namespace {

constexpr std::int64_t mostPieces = 1'000'000'000;
constexpr std::int64_t mostCost = 1'000'000;
constexpr std::size_t mostUnits = 400;

using Traits = boost::adjacency_list_traits<boost::vecS, boost::vecS, boost::directedS>;
// Costs as doubles, exact for all whole sums here: the algorithm adds the distances of vertices out of reach,
// which overflows in whole numbers and does no harm in these.
using EdgeProperties = boost::property<boost::edge_capacity_t, std::int64_t,
    boost::property<boost::edge_residual_capacity_t, std::int64_t,
        boost::property<boost::edge_reverse_t, Traits::edge_descriptor,
            boost::property<boost::edge_weight_t, double>>>>;
using Network
    = boost::adjacency_list<boost::vecS, boost::vecS, boost::directedS, boost::no_property, EdgeProperties>;

Traits::edge_descriptor addLink(
    Network& network, std::size_t from, std::size_t to, std::int64_t capacity, double cost)
{
    const auto there = boost::add_edge(from, to, network).first;
    const auto back = boost::add_edge(to, from, network).first;
    const auto set = [&](Traits::edge_descriptor edge, Traits::edge_descriptor reverse, std::int64_t room,
                         double price) {
        boost::put(boost::edge_capacity, network, edge, room);
        boost::put(boost::edge_residual_capacity, network, edge, room);
        boost::put(boost::edge_reverse, network, edge, reverse);
        boost::put(boost::edge_weight, network, edge, price);
    };
    set(there, back, capacity, cost);
    set(back, there, 0, -cost);
    return there;
}

Result<void> checkPieces(std::int64_t pieces, const char* what, std::size_t row)
{
    if (pieces < 0 || pieces > mostPieces)
        return wrong(std::string(what) + " " + std::to_string(row + 1) + ": pieces lie in 0..1000000000, not "
            + std::to_string(pieces));
    return {};
}

Result<void> checkProblem(const TransportProblem& problem)
{
    const auto givers = problem.givers.size();
    const auto takers = problem.needs.size();
    if (givers > mostUnits || takers > mostUnits)
        return wrong("at most 400 givers and 400 takers");
    if (problem.costs.size() != givers * takers)
        return wrong("there must be one cost for each giver and taker");
    for (std::size_t i = 0; i < givers; ++i) {
        CRADLEPOST_TRY(checkPieces(problem.givers[i].onHand, "giver", i));
        CRADLEPOST_TRY(checkPieces(problem.givers[i].keep, "giver", i));
    }
    for (std::size_t j = 0; j < takers; ++j)
        CRADLEPOST_TRY(checkPieces(problem.needs[j], "taker", j));
    for (const auto& cost : problem.costs) {
        if (cost && (*cost < 0 || *cost > mostCost))
            return wrong("a cost lies in 0..1000000, not " + std::to_string(*cost));
    }
    return {};
}

std::int64_t toGive(const Giver& giver) { return std::max<std::int64_t>(0, giver.onHand - giver.keep); }

}

Result<TransportPlan> transport(const TransportProblem& problem)
{
    CRADLEPOST_TRY(checkProblem(problem));
    const auto givers = problem.givers.size();
    const auto takers = problem.needs.size();
    TransportPlan plan{.moves = {}, .unmet = problem.needs, .left = {}};
    for (const auto& giver : problem.givers)
        plan.left.push_back(giver.onHand);
    if (givers == 0 || takers == 0)
        return plan;
    const auto source = givers + takers;
    const auto sink = source + 1;
    Network network(givers + takers + 2);
    for (std::size_t i = 0; i < givers; ++i)
        addLink(network, source, i, toGive(problem.givers[i]), 0);
    for (std::size_t j = 0; j < takers; ++j)
        addLink(network, givers + j, sink, problem.needs[j], 0);
    struct Link
    {
        Move move;
        Traits::edge_descriptor edge;
    };
    std::vector<Link> links;
    for (std::size_t i = 0; i < givers; ++i) {
        for (std::size_t j = 0; j < takers; ++j) {
            const auto& cost = problem.costs[i * takers + j];
            const auto most = std::min(toGive(problem.givers[i]), problem.needs[j]);
            if (cost && most > 0)
                links.push_back({{.from = i, .to = j},
                    addLink(network, i, givers + j, most, static_cast<double>(*cost))});
        }
    }
    boost::successive_shortest_path_nonnegative_weights(network, source, sink);
    for (auto& [move, edge] : links) {
        move.pieces = boost::get(boost::edge_capacity, network, edge)
            - boost::get(boost::edge_residual_capacity, network, edge);
        if (move.pieces == 0)
            continue;
        plan.moves.push_back(move);
        plan.cost += move.pieces * *problem.costs[move.from * takers + move.to];
        plan.moved += move.pieces;
        plan.unmet[move.to] -= move.pieces;
        plan.left[move.from] -= move.pieces;
    }
    return plan;
}

}
