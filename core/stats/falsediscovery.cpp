// SPDX-License-Identifier: MIT
#include "core/stats/falsediscovery.h"

#include "core/stats/check.h"

#include <algorithm>

namespace cradlepost::stats {

namespace {

using List = std::vector<std::optional<double>>;

Result<void> checkChances(std::span<const std::optional<double>> p)
{
    for (std::size_t i = 0; i < p.size(); ++i) {
        if (p[i] && !(*p[i] >= 0 && *p[i] <= 1))
            return wrong("row " + std::to_string(i + 1) + ": a p value lies in 0..1, not " + shortest(*p[i]));
    }
    return {};
}

/** Positions of the p values that are there, smallest first. */
std::vector<std::size_t> inOrder(std::span<const std::optional<double>> p)
{
    std::vector<std::size_t> order;
    order.reserve(p.size());
    for (std::size_t i = 0; i < p.size(); ++i) {
        if (p[i])
            order.push_back(i);
    }
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return *p[a] < *p[b]; });
    return order;
}

}

Result<List> benjaminiHochberg(std::span<const std::optional<double>> p)
{
    CRADLEPOST_TRY(checkChances(p));
    List adjusted(p.size());
    const auto order = inOrder(p);
    const double m = static_cast<double>(order.size());
    double least = 1;
    for (std::size_t rank = order.size(); rank > 0; --rank) {
        const auto i = order[rank - 1];
        least = std::min(least, m / static_cast<double>(rank) * *p[i]);
        adjusted[i] = least;
    }
    return adjusted;
}

Result<List> bonferroni(std::span<const std::optional<double>> p)
{
    CRADLEPOST_TRY(checkChances(p));
    List adjusted(p.size());
    const double m = static_cast<double>(inOrder(p).size());
    for (std::size_t i = 0; i < p.size(); ++i) {
        if (p[i])
            adjusted[i] = std::min(1.0, m * *p[i]);
    }
    return adjusted;
}

Result<List> holm(std::span<const std::optional<double>> p)
{
    CRADLEPOST_TRY(checkChances(p));
    List adjusted(p.size());
    const auto order = inOrder(p);
    double most = 0;
    for (std::size_t rank = 0; rank < order.size(); ++rank) {
        most = std::max(most, std::min(1.0, static_cast<double>(order.size() - rank) * *p[order[rank]]));
        adjusted[order[rank]] = most;
    }
    return adjusted;
}

}
