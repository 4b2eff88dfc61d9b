// SPDX-License-Identifier: MIT
#include "core/stats/inequality.h"

#include "core/stats/check.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace cradlepost::stats {

Result<Gini> gini(std::span<const double> values)
{
    CRADLEPOST_TRY(checkNotNegative(values, "the value"));
    std::vector<double> sorted(values.begin(), values.end());
    std::sort(sorted.begin(), sorted.end());
    const double n = static_cast<double>(sorted.size());
    const double largest = sorted.empty() ? 0 : sorted.back();
    if (!(largest > 0))
        return undefined("nothing to share out: there are no values, or all are 0");
    double sum = 0;
    double weighted = 0;
    for (std::size_t i = 0; i < sorted.size(); ++i) {
        const double part = sorted[i] / largest; // so that no sum overflows
        sum += part;
        weighted += (2 * static_cast<double>(i + 1) - n - 1) * part;
    }
    Gini result{.value = std::max(0.0, weighted / (n * sum)), .unbiased = {}};
    if (sorted.size() > 1)
        result.unbiased = result.value * n / (n - 1);
    return result;
}

Result<std::vector<ParetoRow>> pareto(std::span<const Cause> causes, double share)
{
    if (!(share > 0 && share <= 1))
        return wrong("the share of the vital few lies in (0, 1], not " + shortest(share));
    double total = 0;
    for (std::size_t i = 0; i < causes.size(); ++i) {
        if (!(causes[i].count >= 0 && causes[i].count <= largestValue))
            return wrong("row " + std::to_string(i + 1) + ": a count cannot be " + shortest(causes[i].count));
        total += causes[i].count;
    }
    if (total <= 0)
        return undefined("nothing was counted, so there is nothing to rank");
    std::vector<std::size_t> order(causes.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        if (causes[a].count > causes[b].count || causes[a].count < causes[b].count)
            return causes[a].count > causes[b].count;
        return causes[a].name < causes[b].name;
    });
    std::vector<ParetoRow> rows;
    rows.reserve(order.size());
    double sum = 0;
    bool reached = false;
    for (const auto i : order) {
        sum += causes[i].count;
        rows.push_back({.row = i, .count = causes[i].count, .cumulative = sum / total, .vital = !reached});
        reached = reached || sum / total >= share - 1e-12;
    }
    return rows;
}

}
