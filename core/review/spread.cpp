// SPDX-License-Identifier: MIT
#include "core/review/spread.h"

#include "core/review/share.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

namespace cradlepost {

namespace {

double real(std::int64_t n) { return static_cast<double>(n); }

std::vector<stats::Tally> groupsOf(std::span<const GroupedTally> rounds)
{
    std::vector<stats::Tally> groups;
    for (const GroupedTally& round : rounds) {
        if (groups.size() <= round.group)
            groups.resize(round.group + 1);
        groups[round.group] += round.tally;
    }
    return groups;
}

/** (x - np)/sqrt(np(1 - p)) of each round; none where the group met all or none. */
std::vector<std::optional<double>> residualsOf(std::span<const GroupedTally> rounds)
{
    const auto groups = groupsOf(rounds);
    std::vector<std::optional<double>> residuals;
    for (const GroupedTally& round : rounds) {
        const stats::Tally& group = groups[round.group];
        if (round.tally.n == 0 || group.x == 0 || group.x == group.n) {
            residuals.emplace_back();
            continue;
        }
        const double p = real(group.x) / real(group.n);
        residuals.emplace_back(
            (real(round.tally.x) - real(round.tally.n) * p) / std::sqrt(real(round.tally.n) * p * (1 - p)));
    }
    return residuals;
}

}

Spread spreadOf(std::span<const GroupedTally> rounds)
{
    const auto residuals = residualsOf(rounds);
    double squares = 0;
    double products = 0;
    int counted = 0;
    for (std::size_t i = 0; i < residuals.size(); ++i) {
        if (!residuals[i])
            continue;
        ++counted;
        squares += *residuals[i] * *residuals[i];
        if (i > 0 && residuals[i - 1])
            products += *residuals[i] * *residuals[i - 1];
    }
    const auto groups = groupsOf(rounds);
    const auto used = static_cast<int>(std::count_if(groups.begin(), groups.end(),
        [](const stats::Tally& group) { return group.x > 0 && group.x < group.n; }));
    Spread spread;
    if (counted > used)
        spread.dispersion = std::max(1.0, squares / (counted - used));
    if (squares > 0) {
        constexpr double most = 0.95;
        const double r = std::clamp(products / squares, 0.0, most);
        spread.carryOver = (1 + r) / (1 - r);
    }
    return spread;
}

}
