// SPDX-License-Identifier: MIT
#include "core/stats/demand.h"
#include "core/stats/kinetictemperature.h"
#include "core/stats/transport.h"
#include "tests/reference/sheet.h"

#include <algorithm>

#include <numeric>

namespace cradlepost::reference {

using namespace stats;

namespace {

void demands(const std::filesystem::path& folder)
{
    Dice dice(40);
    Family family(folder, "demand", {"mean", "size", "stock", "service"});
    static constexpr std::array<double, 7> services{0.5, 0.8, 0.9, 0.95, 0.98, 0.99, 0.9999};
    for (int i = 0; i < caseCount; ++i) {
        Demand demand;
        demand.mean = dice.chance(0.1)
            ? 0.001
            : (dice.chance(0.1) ? 5000 * dice.share() + 1 : 60 * dice.share() + 0.01);
        if (dice.chance(0.5))
            demand.size = dice.chance(0.2) ? 1e5 : 0.2 + 30 * dice.share();
        const auto stock = dice.whole(0, static_cast<std::int64_t>(demand.mean * 2.5) + 3);
        const double service = services[static_cast<std::size_t>(dice.whole(0, 6))];
        family.begin({text(demand.mean), demand.size ? text(*demand.size) : "0", text(stock), text(service)});
        const auto o = *outlook(demand, stock);
        family.answer("exactly", o.exactly);
        family.answer("at_most", o.atMost);
        family.answer("stock_out", o.stockOut);
        family.answer("empty_shelf", o.emptyShelf);
        family.answer("unmet", o.unmet);
        family.answer("stock_for", static_cast<double>(*stockFor(demand, service)));
    }
}

void fits(const std::filesystem::path& folder)
{
    Dice dice(43);
    Family family(folder, "demandfit", {"counts"});
    for (int i = 0; i < caseCount; ++i) {
        std::vector<std::int64_t> counts{1};
        const auto most = dice.chance(0.1) ? 1 : dice.whole(2, 60);
        for (auto n = dice.whole(1, 60); n > 0; --n)
            counts.push_back(dice.whole(0, most));
        family.begin({series(counts)});
        const auto fit = *fitDemand(counts);
        family.answer("mean", fit.mean);
        family.answer("variance", fit.variance);
        family.answer("size", fit.size);
        family.answer("p", fit.p);
    }
}

void temperatures(const std::filesystem::path& folder)
{
    Dice dice(41);
    Family family(folder, "mkt", {"celsius", "weight"});
    for (int i = 0; i < caseCount; ++i) {
        std::vector<double> celsius;
        std::vector<double> weight;
        std::vector<StoreReading> readings;
        for (auto n = dice.whole(1, 60); n > 0; --n) {
            celsius.push_back(dice.chance(0.05) ? 100 * dice.share() - 50 : 2 + 6 * dice.share());
            weight.push_back(dice.chance(0.1) && weight.size() > 1 ? 0 : 0.1 + 5 * dice.share());
            readings.push_back({celsius.back(), weight.back()});
        }
        family.begin({series(celsius), series(weight)});
        family.answer("mkt", *meanKineticTemperature(readings));
    }
}

void moves(const std::filesystem::path& folder)
{
    Dice dice(42);
    Family family(folder, "transport", {"supply", "need", "cost"});
    for (int i = 0; i < caseCount; ++i) {
        TransportProblem problem;
        std::vector<std::int64_t> supply;
        std::vector<std::int64_t> cost;
        for (auto givers = dice.whole(1, 7); givers > 0; --givers) {
            const auto keep = dice.whole(0, 5);
            problem.givers.push_back({.onHand = dice.whole(0, 40), .keep = keep});
            supply.push_back(std::max<std::int64_t>(0, problem.givers.back().onHand - keep));
        }
        for (auto takers = dice.whole(1, 7); takers > 0; --takers)
            problem.needs.push_back(dice.chance(0.1) ? 0 : dice.whole(1, 30));
        for (std::size_t c = 0; c < supply.size() * problem.needs.size(); ++c) {
            cost.push_back(dice.whole(0, 99));
            problem.costs.emplace_back(cost.back());
        }
        family.begin({series(supply), series(problem.needs), series(cost)});
        const auto plan = *transport(problem);
        family.answer("cost", static_cast<double>(plan.cost));
        family.answer("moved", static_cast<double>(plan.moved));
    }
}

}

void writeStock(const std::filesystem::path& folder)
{
    demands(folder);
    fits(folder);
    temperatures(folder);
    moves(folder);
}

}
