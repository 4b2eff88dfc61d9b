// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace cradlepost::stats {

/** A unit that could give: it keeps its own cover first. */
struct Giver
{
    std::int64_t onHand = 0;
    std::int64_t keep = 0; ///< its own cover; only what lies above may leave
};

/** Whole pieces; costs for one piece on one link, in any whole unit (metres, minutes, cents), at least 0. */
struct TransportProblem
{
    std::vector<Giver> givers;
    std::vector<std::int64_t> needs;
    /** By rows: giver i to taker j at i * needs + j; nothing where there is no way. */
    std::vector<std::optional<std::int64_t>> costs;
};

struct Move
{
    std::size_t from = 0;
    std::size_t to = 0;
    std::int64_t pieces = 0;
    bool operator==(const Move&) const = default;
};

struct TransportPlan
{
    std::vector<Move> moves; ///< by giver, then taker; only those with pieces
    std::int64_t cost = 0;
    std::int64_t moved = 0;
    std::vector<std::int64_t> unmet; ///< per taker: what could not be brought
    std::vector<std::int64_t> left; ///< per giver: on hand after the moves
};

/**
 * Moves as many pieces as can be moved, and among all ways to do so takes the cheapest: minimum-cost maximum
 * flow. With enough stock and ways this is the transport problem; where need passes stock the shortfall is
 * shown, never "infeasible". Several plans may cost the same: compare costs, not plans. No need gives an
 * empty plan.
 *
 * Stocks, covers and needs from 0 to 1e9, costs from 0 to 1e6; at most 400 givers and 400 takers. Source:
 * Ford LR, Fulkerson DR (1962, from memory) Flows in Networks; successive shortest paths with potentials.
 */
Result<TransportPlan> transport(const TransportProblem& problem);

}
