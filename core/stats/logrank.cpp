// SPDX-License-Identifier: MIT
#include "core/stats/logrank.h"

#include "core/stats/check.h"
#include "core/stats/distributions.h"
#include "core/stats/linear.h"

#include <algorithm>
#include <cmath>

namespace cradlepost::stats {

namespace {

struct Case
{
    double time = 0;
    bool ended = false;
    std::size_t group = 0;
};

Result<std::vector<Case>> pool(std::span<const std::vector<Duration>> groups)
{
    std::vector<Case> all;
    for (std::size_t g = 0; g < groups.size(); ++g) {
        for (std::size_t i = 0; i < groups[g].size(); ++i) {
            const auto& d = groups[g][i];
            if (!(d.time >= 0 && d.time <= largestValue))
                return wrong("group " + std::to_string(g + 1) + ", row " + std::to_string(i + 1)
                    + ": a time cannot be " + shortest(d.time));
            all.push_back({.time = d.time, .ended = d.ended, .group = g});
        }
    }
    std::sort(all.begin(), all.end(), [](const Case& a, const Case& b) { return a.time < b.time; });
    return all;
}

/** Adds the expected events and the covariance of one event time. */
void addTime(LogRank& result, Matrix& covariance, const std::vector<double>& atRisk, double n, double d)
{
    const double spread = n > 1 ? d * (n - d) / (n * n * (n - 1)) : 0;
    for (std::size_t g = 0; g < atRisk.size(); ++g) {
        result.groups[g].expected += d * atRisk[g] / n;
        for (std::size_t h = 0; h < atRisk.size(); ++h)
            covariance.at(g, h) += spread * atRisk[g] * ((g == h ? n : 0) - atRisk[h]);
    }
}

}

Result<LogRank> logRank(std::span<const std::vector<Duration>> groups)
{
    const auto cases = pool(groups);
    if (!cases)
        return tl::unexpected(cases.error());
    LogRank result;
    std::vector<double> atRisk;
    std::vector<std::size_t> held;
    for (const auto& group : groups) {
        if (!group.empty())
            held.push_back(atRisk.size());
        result.groups.push_back({.n = static_cast<std::int64_t>(group.size())});
        atRisk.push_back(static_cast<double>(group.size()));
    }
    if (held.size() < 2)
        return undefined("a comparison needs two groups that hold durations");
    Matrix covariance(groups.size());
    for (std::size_t i = 0; i < cases->size();) {
        const double time = (*cases)[i].time;
        const double n = static_cast<double>(cases->size() - i);
        auto left = atRisk;
        double d = 0;
        for (; i < cases->size() && (*cases)[i].time <= time; ++i) {
            const auto& one = (*cases)[i];
            left[one.group] -= 1;
            if (one.ended) {
                result.groups[one.group].observed += 1;
                d += 1;
            }
        }
        if (d > 0)
            addTime(result, covariance, atRisk, n, d);
        atRisk = std::move(left);
    }
    result.df = static_cast<int>(held.size()) - 1;
    result.variance = covariance.at(held.front(), held.front());
    Matrix part(held.size() - 1);
    std::vector<double> gap;
    for (std::size_t g = 0; g < part.size; ++g) {
        gap.push_back(result.groups[held[g]].observed - result.groups[held[g]].expected);
        for (std::size_t h = 0; h < part.size; ++h)
            part.at(g, h) = covariance.at(held[g], held[h]);
    }
    const auto solved = solve(std::move(part), gap);
    if (!solved)
        return undefined("no event falls at a time when the groups are at risk side by side");
    for (std::size_t g = 0; g < gap.size(); ++g)
        result.chiSquare += gap[g] * (*solved)[g];
    result.chiSquare = std::max(0.0, result.chiSquare);
    result.p = chiSquareUpper(result.chiSquare, result.df);
    return result;
}

}
