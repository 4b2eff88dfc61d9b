// SPDX-License-Identifier: MIT
#include "core/stats/mannkendall.h"

#include "core/stats/check.h"
#include "core/stats/distributions.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

namespace cradlepost::stats {

namespace {

constexpr std::size_t exactUpTo = 10;

/** Sums over groups of equal values of t(t-1), t(t-1)(t-2) and t(t-1)(2t+5). */
struct Ties
{
    double two = 0;
    double three = 0;
    double five = 0;
};

Ties tiesOf(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    Ties ties;
    for (auto from = values.begin(); from != values.end();) {
        const auto to = std::upper_bound(from, values.end(), *from);
        const double t = static_cast<double>(to - from);
        ties.two += t * (t - 1);
        ties.three += t * (t - 1) * (t - 2);
        ties.five += t * (t - 1) * (2 * t + 5);
        from = to;
    }
    return ties;
}

/** P(|S| >= |s|) over all orders of n untied values, by counting orders by their number of falls. */
double exactChance(std::size_t n, double s)
{
    std::vector<double> orders{1};
    double all = 1;
    for (std::size_t k = 2; k <= n; ++k) {
        std::vector<double> next(orders.size() + k - 1, 0.0);
        for (std::size_t i = 0; i < orders.size(); ++i) {
            for (std::size_t j = 0; j < k; ++j)
                next[i + j] += orders[i];
        }
        orders = std::move(next);
        all *= static_cast<double>(k);
    }
    const double pairs = static_cast<double>(orders.size() - 1);
    double extreme = 0;
    for (std::size_t falls = 0; falls < orders.size(); ++falls) {
        if (std::abs(pairs - 2 * static_cast<double>(falls)) >= std::abs(s))
            extreme += orders[falls];
    }
    return extreme / all;
}

std::vector<double> pairSlopes(const std::vector<TimedValue>& sorted, double& s)
{
    std::vector<double> slopes;
    slopes.reserve(sorted.size() * (sorted.size() - 1) / 2);
    std::int64_t balance = 0;
    for (std::size_t i = 0; i < sorted.size(); ++i) {
        for (std::size_t j = i + 1; j < sorted.size(); ++j) {
            const double step = sorted[j].time - sorted[i].time;
            const double rise = sorted[j].value - sorted[i].value;
            if (step <= 0)
                continue;
            balance += (rise > 0 ? 1 : 0) - (rise < 0 ? 1 : 0);
            slopes.push_back(rise / step);
        }
    }
    s = static_cast<double>(balance);
    std::sort(slopes.begin(), slopes.end());
    return slopes;
}

/** Value at a rank that counts from 1 and need not be whole. */
double atRank(const std::vector<double>& sorted, double rank)
{
    const double below = std::floor(rank);
    const auto i = static_cast<std::size_t>(below) - 1;
    if (i + 1 >= sorted.size())
        return sorted.back();
    return sorted[i] + (rank - below) * (sorted[i + 1] - sorted[i]);
}

double varianceOf(double n, const Ties& value, const Ties& time)
{
    return (n * (n - 1) * (2 * n + 5) - value.five - time.five) / 18
        + value.two * time.two / (2 * n * (n - 1)) + value.three * time.three / (9 * n * (n - 1) * (n - 2));
}

Result<std::vector<TimedValue>> checked(std::span<const TimedValue> series)
{
    for (std::size_t i = 0; i < series.size(); ++i) {
        // Beyond this the difference of two of them, or its ratio, could overflow.
        if (!(std::abs(series[i].time) < 1e150) || !(std::abs(series[i].value) < 1e150))
            return wrong("row " + std::to_string(i + 1) + ": time or value is not a number of sensible size");
    }
    if (series.size() > 10'000)
        return wrong("a trend takes at most 10000 values");
    if (series.size() < 4)
        return undefined("fewer than four values carry no verdict on a trend");
    std::vector<TimedValue> sorted(series.begin(), series.end());
    std::stable_sort(
        sorted.begin(), sorted.end(), [](const auto& a, const auto& b) { return a.time < b.time; });
    return sorted;
}

}

Result<Trend> mannKendall(std::span<const TimedValue> series, double level)
{
    CRADLEPOST_TRY(checkLevel(level));
    const auto sorted = checked(series);
    if (!sorted)
        return tl::unexpected(sorted.error());
    std::vector<double> values;
    std::vector<double> times;
    for (const auto& v : *sorted) {
        values.push_back(v.value);
        times.push_back(v.time);
    }
    const auto valueTies = tiesOf(std::move(values));
    const auto timeTies = tiesOf(std::move(times));
    Trend trend;
    trend.n = static_cast<int>(sorted->size());
    const double n = trend.n;
    if (valueTies.two >= n * (n - 1) || timeTies.two >= n * (n - 1))
        return undefined("all values, or all times, are equal: there is no trend to test");
    const auto slopes = pairSlopes(*sorted, trend.s);
    trend.variance = varianceOf(n, valueTies, timeTies);
    if (!(trend.variance > 0))
        return undefined("the ties leave nothing to test");
    const double root = std::sqrt(trend.variance);
    const double pull = trend.s > 0 ? 1 : (trend.s < 0 ? -1 : 0);
    trend.z = (trend.s - pull) / root;
    trend.pNormal = normalTwoSided(trend.z);
    if (sorted->size() <= exactUpTo && valueTies.two == 0 && timeTies.two == 0)
        trend.pExact = exactChance(sorted->size(), trend.s);
    trend.p = trend.pExact.value_or(trend.pNormal);
    trend.tau = trend.s / (n * (n - 1) / 2);
    const auto middle = slopes.size() / 2;
    trend.slope = slopes.size() % 2 == 1 ? slopes[middle] : std::midpoint(slopes[middle - 1], slopes[middle]);
    const double count = static_cast<double>(slopes.size());
    const double c = normalWidth(level) * root;
    const double low = (count - c) / 2;
    if (low >= 1)
        trend.interval = Interval{.low = atRank(slopes, low), .high = atRank(slopes, (count + c) / 2 + 1)};
    return trend;
}

}
