// SPDX-License-Identifier: MIT
#include "core/stats/agreement.h"
#include "core/stats/cochranarmitage.h"
#include "core/stats/demand.h"
#include "core/stats/ewma.h"
#include "core/stats/falsediscovery.h"
#include "core/stats/funnel.h"
#include "core/stats/kinetictemperature.h"
#include "core/stats/logrank.h"
#include "core/stats/lqas.h"
#include "core/stats/mannkendall.h"
#include "core/stats/overdispersion.h"
#include "core/stats/pchart.h"
#include "core/stats/proportion.h"
#include "core/stats/rate.h"
#include "core/stats/repeats.h"
#include "core/stats/runchart.h"
#include "core/stats/runlength.h"
#include "core/stats/standardise.h"
#include "core/stats/survival.h"
#include "core/stats/terminaldigit.h"
#include "core/stats/transport.h"
#include "core/stats/twoproportions.h"
#include "core/stats/xmrchart.h"
#include "tests/core/stats/random.h"

#include <chrono>
#include <cmath>
#include <cstdio>
#include <functional>
#include <string_view>

using namespace cradlepost::stats;

namespace {

using Clock = std::chrono::steady_clock;

double sink = 0; // keeps the compiler from dropping a call

/** Nanoseconds of one call: the best of five rounds of at least 30 ms. */
double measure(const std::function<double(int)>& call)
{
    double best = 1e300;
    for (int round = 0; round < 5; ++round) {
        int calls = 0;
        const auto begin = Clock::now();
        std::chrono::duration<double, std::nano> spent{};
        do {
            for (int i = 0; i < 8; ++i)
                sink += call(calls++);
            spent = Clock::now() - begin;
        } while (spent.count() < 3e7);
        best = std::min(best, spent.count() / calls);
    }
    return best;
}

std::string_view only; // the one method to run; all when empty

void print(const char* method, const std::function<double(int)>& call)
{
    if (!only.empty() && only != method)
        return;
    std::printf("%s,%.1f\n", method, measure(call));
    std::fflush(stdout);
}

std::vector<Tally> months(Dice& dice, std::size_t count)
{
    std::vector<Tally> rows;
    for (std::size_t i = 0; i < count; ++i)
        rows.push_back({dice.events(90, 0.8), 90 - dice.whole(0, 3)});
    for (auto& row : rows)
        row.x = std::min(row.x, row.n);
    return rows;
}

std::vector<Duration> gaps(Dice& dice, int count)
{
    std::vector<Duration> list;
    for (int i = 0; i < count; ++i)
        list.push_back({std::ceil(-std::log(1 - dice.share()) * 20), dice.chance(0.7)});
    return list;
}

void counts()
{
    print("wilson", [](int i) { return wilson({15 + i % 40, 148})->low; });
    print("clopper-pearson", [](int i) { return clopperPearson({15 + i % 40, 148})->low; });
    print("newcombe", [](int i) { return newcombeDifference({40 + i % 20, 70}, {48, 80})->interval.low; });
    print("fisher", [](int i) { return *fisherExact({40 + i % 20, 70}, {48, 80}); });
    print("garwood", [](int i) { return garwood(5 + i % 50)->low; });
    print("poisson-tail", [](int i) { return outlook({.mean = 16.1, .size = {}}, 20 + i % 10)->stockOut; });
    print("negbin-quantile",
        [](int i) { return static_cast<double>(*stockFor({.mean = 16.1 + i % 5, .size = 4.0}, 0.95)); });
    print("lqas-finite",
        [](int i) { return lqasRisks({.good = 0.8, .poor = 0.5, .lot = 100}, 19, 10 + i % 6)->goodFailed; });
    print("digit-preference", [](int i) {
        const std::int64_t c[]{62 + i % 9, 14, 18, 15, 17, 58, 16, 13, 19, 8};
        return digitPreference(c)->p;
    });
    print("kappa", [](int i) {
        return kappa({.q = 3, .counts = {13 + i % 7, 0, 0, 0, 20, 7, 0, 4, 56}})->se;
    });
}

void series()
{
    Dice dice(36);
    const auto rows = months(dice, 36);
    std::vector<double> values;
    std::vector<std::optional<double>> gapped;
    std::vector<TimedValue> timed;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        values.push_back(static_cast<double>(rows[i].x) + dice.share());
        gapped.emplace_back(values.back());
        timed.push_back({static_cast<double>(i), values.back()});
    }
    print("p-chart-36-rules", [&](int) { return pChart(rows)->points.back().limits->high; });
    print("xmr-36-rules", [&](int) { return xmrChart(gapped)->values.points.back().limits->high; });
    print("run-chart-36", [&](int) { return static_cast<double>(runChart(values)->longestRun); });
    print("ewma-36", [&](int) {
        return ewma(values, {.target = 70, .sigma = 4, .lambda = 0.2, .width = 3})->back().average;
    });
    print("mann-kendall-36", [&](int) { return mannKendall(timed)->p; });
    print("identical-runs-60", [](int) {
        const double chances[]{0.5, 0.3, 0.15, 0.05};
        return *identicalRunChance(chances, 60, 6);
    });
    print("cusum-run-length-60",
        [](int) { return *meanRunLength({.n = 10, .perEvent = 6, .perSample = 10, .threshold = 60}, 0.1); });
    std::vector<StoreReading> readings;
    for (int i = 0; i < 100; ++i)
        readings.push_back({2 + 6 * dice.share(), 1 + dice.share()});
    print("mkt-100", [&](int) { return *meanKineticTemperature(readings); });
}

void units()
{
    Dice dice(60);
    const auto rows = months(dice, 60);
    std::vector<std::optional<double>> p;
    std::vector<double> y;
    std::vector<double> v;
    std::vector<RateStratum> strata;
    std::vector<ScoredTally> groups;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        p.emplace_back(dice.share());
        y.push_back(dice.share());
        v.push_back(0.1 + dice.share());
        if (i < 6)
            strata.push_back({rows[i].x, 1000, 10.0 + static_cast<double>(i)});
        if (i < 5)
            groups.push_back({rows[i], static_cast<double>(i)});
    }
    print("funnel-60",
        [&](int) { return funnel(rows, {.target = {}, .model = DispersionModel::Additive})->tau2; });
    print("benjamini-hochberg-60", [&](int) { return **benjaminiHochberg(p)->begin(); });
    print("random-effects-60", [&](int) { return randomEffects(y, v)->tau2; });
    print("direct-rate-6", [&](int) { return directRate(strata)->interval.low; });
    print("cochran-armitage-5", [&](int) { return cochranArmitage(groups)->p; });
}

void durations()
{
    Dice dice(80);
    const std::vector<std::vector<Duration>> groups{gaps(dice, 100), gaps(dice, 100)};
    print("kaplan-meier-100", [&](int) { return kaplanMeier(groups[0])->steps.back().survival; });
    print("log-rank-200", [&](int) { return logRank(groups)->p; });
    TransportProblem problem;
    for (int i = 0; i < 6; ++i) {
        problem.givers.push_back({.onHand = dice.whole(5, 40)});
        problem.needs.push_back(dice.whole(1, 30));
    }
    for (int i = 0; i < 36; ++i)
        problem.costs.emplace_back(dice.whole(0, 99));
    print("transport-6x6", [&](int) { return static_cast<double>(transport(problem)->cost); });
}

/** The month review of a district: 80 items of 60 units over 36 months, each a chart with rules. */
void district()
{
    if (!only.empty() && only != "district")
        return;
    Dice dice(4800);
    std::vector<std::vector<Tally>> charts;
    for (int i = 0; i < 80 * 60; ++i)
        charts.push_back(months(dice, 36));
    double best = 1e300;
    std::size_t signals = 0;
    for (int round = 0; round < 7; ++round) {
        signals = 0;
        const auto begin = Clock::now();
        for (const auto& rows : charts)
            signals += pChart(rows)->signals.size();
        best = std::min(best, std::chrono::duration<double, std::milli>(Clock::now() - begin).count());
    }
    std::printf("district-4800-charts-ms,%.3f\n", best);
    sink += static_cast<double>(signals);
}

}

/** bench_stats [METHOD]: nanoseconds a call of each method, as method,ns lines; see run for the comparison.
 */
int main(int count, char** words)
{
    only = count > 1 ? words[1] : "";
    std::puts("method,ns");
    counts();
    series();
    units();
    durations();
    district();
    return std::isfinite(sink) ? 0 : 1;
}
