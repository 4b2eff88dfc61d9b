// SPDX-License-Identifier: MIT
#include "core/stats/runchart.h"

#include "core/stats/check.h"
#include "core/stats/distributions.h"
#include "core/stats/orderstats.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace cradlepost::stats {

namespace {

int runLimit(int useful) { return static_cast<int>(std::lround(std::log2(useful))) + 3; }

int crossingLimit(int useful) { return static_cast<int>(Binomial{.n = useful - 1, .p = 0.5}.quantile(0.05)); }

void countRuns(RunChart& chart, std::span<const double> values)
{
    int side = 0;
    int run = 0;
    for (const double v : values) {
        const int now = v > chart.centre ? 1 : (v < chart.centre ? -1 : 0);
        if (now == 0)
            continue;
        ++chart.useful;
        if (side != 0 && now != side)
            ++chart.crossings;
        run = now == side ? run + 1 : 1;
        side = now;
        chart.longestRun = std::max(chart.longestRun, run);
    }
}

/** Chance of fewer than `crossings` crossings with no run above `longest`, n fair tosses. */
double chanceWithin(int n, int longest, int fewest)
{
    const auto width = static_cast<std::size_t>(longest);
    // weight[c][r - 1]: chance of c crossings so far and a current run of r.
    std::vector<std::vector<double>> weight(static_cast<std::size_t>(n), std::vector<double>(width, 0.0));
    weight[0][0] = 1;
    for (int i = 1; i < n; ++i) {
        for (auto c = static_cast<std::size_t>(i); c < static_cast<std::size_t>(n); --c) {
            double all = 0;
            for (const double w : weight[c])
                all += w;
            for (std::size_t r = width - 1; r > 0; --r)
                weight[c][r] = weight[c][r - 1] / 2;
            weight[c][0] = 0;
            if (c + 1 < static_cast<std::size_t>(n))
                weight[c + 1][0] += all / 2;
        }
    }
    double sum = 0;
    for (auto c = static_cast<std::size_t>(std::max(0, fewest)); c < static_cast<std::size_t>(n); ++c) {
        for (const double w : weight[c])
            sum += w;
    }
    return sum;
}

}

Result<RunChart> runChart(std::span<const double> values, std::optional<double> centre)
{
    CRADLEPOST_TRY(checkFinite(values, "the value"));
    if (centre)
        CRADLEPOST_TRY(checkFinite(*centre, "the centre"));
    if (values.empty())
        return undefined("no values, so no run chart");
    RunChart chart;
    chart.centre = centre ? *centre : *median(values);
    chart.total = static_cast<int>(values.size());
    countRuns(chart, values);
    if (chart.useful == 0)
        return undefined("every value lies on the centre, so there is no run to judge");
    chart.longestRunLimit = runLimit(chart.useful);
    chart.crossingsLimit = crossingLimit(chart.useful);
    chart.runTooLong = chart.longestRun > chart.longestRunLimit;
    chart.crossingsTooFew = chart.crossings < chart.crossingsLimit;
    if (chart.useful < fewestUsefulPoints) {
        chart.runTooLong = false;
        chart.crossingsTooFew = false;
    } else {
        chart.verdict = chart.runTooLong || chart.crossingsTooFew ? RunVerdict::Shift : RunVerdict::NoShift;
    }
    return chart;
}

Result<RunChartRisk> runChartRisk(int n)
{
    if (n < fewestUsefulPoints || n > 400)
        return wrong("the risk is worked out for 10 to 400 useful points, not " + std::to_string(n));
    return RunChartRisk{.run = 1 - chanceWithin(n, runLimit(n), 0),
        .crossings = Binomial{.n = n - 1, .p = 0.5}.atMost(crossingLimit(n) - 1),
        .either = 1 - chanceWithin(n, runLimit(n), crossingLimit(n))};
}

}
