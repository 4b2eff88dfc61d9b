// SPDX-License-Identifier: MIT
#include "core/supply/transfer.h"

#include "core/stats/transport.h"

#include <algorithm>
#include <cmath>

namespace cradlepost {

namespace {

std::int64_t usedIn(const ShelfStand& shelf, int days)
{
    return static_cast<std::int64_t>(std::ceil(shelf.perDay.value_or(0.0) * days - 1e-9));
}

/** One item over the units that have it. */
struct ItemStands
{
    std::string item;
    std::vector<ItemBalance> balances;
};

std::vector<ItemStands> byItem(const std::vector<UnitShelves>& units, const TransferRules& rules)
{
    std::map<std::string, std::vector<ItemBalance>> found;
    for (std::size_t unit = 0; unit < units.size(); ++unit) {
        for (const ShelfStand& shelf : units[unit].shelves) {
            if (shelf.item.retired)
                continue;
            ItemBalance one{.item = shelf.item.id,
                .name = shelf.item.name,
                .unit = unit,
                .usable = shelf.usable,
                .cover = ownCover(shelf, rules),
                .lacks = shortage(shelf)};
            one.spare = one.lacks > 0 ? 0 : std::max<std::int64_t>(0, one.usable - one.cover);
            one.unmet = one.lacks;
            if (one.lacks > 0 || one.spare > 0)
                found[one.item].push_back(std::move(one));
        }
    }
    std::vector<ItemStands> items;
    for (auto& [item, balances] : found)
        items.push_back({.item = item, .balances = std::move(balances)});
    return items;
}

/** Who gives and who takes of one item, by position in its balances. */
struct Sides
{
    std::vector<std::size_t> givers;
    std::vector<std::size_t> takers;
};

Sides sidesOf(const std::vector<ItemBalance>& balances)
{
    Sides sides;
    for (std::size_t i = 0; i < balances.size(); ++i) {
        if (balances[i].spare > 0)
            sides.givers.push_back(i);
        if (balances[i].lacks > 0)
            sides.takers.push_back(i);
    }
    return sides;
}

class Planner
{
public:
    Planner(const std::vector<UnitShelves>& units, const DistanceTable& distances)
        : m_units(units)
        , m_distances(distances)
    {
        m_plan.byDistance = !distances.empty();
    }

    Result<void> add(ItemStands item)
    {
        const Sides sides = sidesOf(item.balances);
        const auto solved = stats::transport(problem(item.balances, sides));
        if (!solved)
            return tl::unexpected(solved.error());
        for (const stats::Move& move : solved->moves) {
            const ItemBalance& giver = item.balances[sides.givers[move.from]];
            ItemBalance& taker = item.balances[sides.takers[move.to]];
            const std::int64_t metres = m_distances.between(unitOf(giver), unitOf(taker)).value_or(0);
            m_plan.moves.push_back({.item = item.item,
                .name = taker.name,
                .from = giver.unit,
                .to = taker.unit,
                .pieces = move.pieces,
                .metres = metres});
            taker.unmet -= move.pieces;
            m_plan.pieceMetres += move.pieces * metres;
        }
        std::move(item.balances.begin(), item.balances.end(), std::back_inserter(m_plan.balances));
        return {};
    }
    TransferPlan done() { return std::move(m_plan); }

private:
    [[nodiscard]] const std::string& unitOf(const ItemBalance& balance) const
    {
        return m_units[balance.unit].unit;
    }

    [[nodiscard]] stats::TransportProblem problem(
        const std::vector<ItemBalance>& balances, const Sides& sides) const
    {
        stats::TransportProblem problem;
        for (const std::size_t giver : sides.givers)
            problem.givers.push_back({.onHand = balances[giver].usable, .keep = balances[giver].cover});
        for (const std::size_t taker : sides.takers)
            problem.needs.push_back(balances[taker].lacks);
        for (const std::size_t giver : sides.givers) {
            for (const std::size_t taker : sides.takers)
                problem.costs.push_back(m_plan.byDistance
                        ? m_distances.between(unitOf(balances[giver]), unitOf(balances[taker]))
                        : std::optional<std::int64_t>(1));
        }
        return problem;
    }

    const std::vector<UnitShelves>& m_units;
    const DistanceTable& m_distances;
    TransferPlan m_plan;
};

}

std::int64_t ownCover(const ShelfStand& shelf, const TransferRules& rules)
{
    return std::max(shelf.item.levels.par, usedIn(shelf, std::max(rules.coverDays, shelf.daysToDelivery)));
}

bool runsOut(const ShelfStand& shelf)
{
    return shelf.usable == 0 || shelf.usable < usedIn(shelf, shelf.daysToDelivery);
}

std::int64_t shortage(const ShelfStand& shelf)
{
    const bool isLow = shelf.usable <= shelf.item.levels.minimum && shelf.usable < shelf.item.levels.par;
    if (!isLow && !runsOut(shelf))
        return 0;
    const std::int64_t wanted = std::max(shelf.item.levels.par, usedIn(shelf, shelf.daysToDelivery));
    return std::max<std::int64_t>(0, wanted - shelf.usable);
}

Result<TransferPlan> planTransfers(
    const std::vector<UnitShelves>& units, const DistanceTable& distances, const TransferRules& rules)
{
    Planner planner(units, distances);
    for (ItemStands& item : byItem(units, rules)) {
        if (const auto added = planner.add(std::move(item)); !added)
            return tl::unexpected(added.error());
    }
    return planner.done();
}

}
