// SPDX-License-Identifier: MIT
#include "core/stats/cusum.h"
#include "core/stats/ewma.h"
#include "core/stats/pchart.h"
#include "core/stats/runchart.h"
#include "core/stats/runlength.h"
#include "core/stats/uchart.h"
#include "core/stats/xmrchart.h"
#include "tests/reference/sheet.h"

#include <algorithm>
#include <cmath>

namespace cradlepost::reference {

using namespace stats;

namespace {

/** Signals as one number a rule: the sum of 1-based rows, each times the place of its rule. */
double fingerprint(const ControlChart& chart)
{
    double sum = 0;
    for (const auto& s : chart.signals)
        sum += static_cast<double>((s.at + 1) * (static_cast<std::size_t>(s.rule) + 1));
    return sum;
}

void answerChart(Family& family, const std::string& name, const ControlChart& chart)
{
    const auto& last = chart.points.back();
    family.answer(name + "_centre", last.centre);
    family.answer(name + "_low", last.limits ? std::optional(last.limits->low) : std::nullopt);
    family.answer(name + "_high", last.limits ? std::optional(last.limits->high) : std::nullopt);
    family.answer(name + "_signals", fingerprint(chart));
}

void shares(const std::filesystem::path& folder)
{
    Dice dice(10);
    Family family(folder, "sharechart", {"x", "n", "p0", "p1", "lambda"});
    for (int i = 0; i < caseCount; ++i) {
        const auto rows = dice.whole(2, 40);
        const double p = dice.chance(0.2) ? 0.02 : dice.share();
        const bool large = dice.chance(0.2);
        std::vector<Tally> tallies{{1, 3}};
        std::vector<std::int64_t> x{1};
        std::vector<std::int64_t> n{3};
        for (std::int64_t r = 1; r < rows; ++r) {
            const auto size = dice.chance(0.1) ? 0 : dice.whole(1, large ? 2000 : 40);
            const double here = std::clamp(p + (dice.chance(0.2) ? 0.3 : 0.0), 0.0, 1.0);
            tallies.push_back({dice.events(size, here), size});
            x.push_back(tallies.back().x);
            n.push_back(size);
        }
        const double p0 = 0.05 + 0.4 * dice.share();
        const double p1 = p0 + 0.05 + 0.3 * dice.share();
        const double lambda = 0.05 + 0.9 * dice.share();
        family.begin({series(x), series(n), text(p0), text(p1), text(lambda)});
        const auto plain = *pChart(tallies);
        answerChart(family, "p", plain);
        const auto prime = *pPrimeChart(tallies);
        answerChart(family, "prime", prime);
        family.answer("prime_sigma_z", prime.phases[0].dispersion);
        const auto average = *binomialEwma(tallies, p0, lambda, 2.7);
        family.answer("ewma_last", average.back().average);
        family.answer("ewma_sd", average.back().sd);
        const auto sum = *shareCusum(tallies, {.p0 = p0, .p1 = p1}, 3);
        family.answer("cusum_last", sum.back().sum);
    }
}

void values(const std::filesystem::path& folder)
{
    Dice dice(11);
    Family family(folder, "valuechart", {"values", "exposure", "lambda"});
    for (int i = 0; i < caseCount; ++i) {
        const auto rows = dice.whole(2, 45);
        const bool coarse = dice.chance(0.3); // ties
        std::vector<double> list;
        std::vector<double> exposure;
        std::vector<EventCount> events;
        std::vector<std::optional<double>> gapped;
        for (std::int64_t r = 0; r < rows; ++r) {
            double v = 20 * dice.share() + (dice.chance(0.15) ? 25 : 0);
            v = coarse ? std::floor(v / 5) : v;
            list.push_back(v);
            gapped.emplace_back(v);
            exposure.push_back(0.5 + 30 * dice.share());
            events.push_back({static_cast<std::int64_t>(v), exposure.back()});
        }
        const double lambda = 0.05 + 0.95 * dice.share();
        family.begin({series(list), series(exposure), text(lambda)});
        const auto x = *xmrChart(gapped);
        answerChart(family, "xmr", x.values);
        const auto u = uChart(events);
        answerChart(family, "u", *u);
        const auto average = *ewma(list, {.target = 10, .sigma = 4, .lambda = lambda, .width = 3});
        family.answer("ewma_last", average.back().average);
        family.answer("ewma_high", average.back().limits.high);
        const auto sum = *tabularCusum(list, 10, 1.5, 8);
        family.answer("cusum_high", sum.back().high);
        family.answer("cusum_low", sum.back().low);
        const auto run = runChart(list);
        family.answer("run_useful", run ? std::optional<double>(run->useful) : std::nullopt);
        family.answer("run_longest", run ? std::optional<double>(run->longestRun) : std::nullopt);
        family.answer("run_limit", run ? std::optional<double>(run->longestRunLimit) : std::nullopt);
        family.answer("run_crossings", run ? std::optional<double>(run->crossings) : std::nullopt);
        family.answer("run_crossings_limit", run ? std::optional<double>(run->crossingsLimit) : std::nullopt);
    }
}

void runLengths(const std::filesystem::path& folder)
{
    Dice dice(12);
    Family family(folder, "runlength", {"n", "per_event", "per_sample", "threshold", "p"});
    for (int i = 0; i < caseCount; ++i) {
        const auto n = static_cast<int>(dice.chance(0.5) ? 1 : dice.whole(2, 20));
        const auto perEvent = static_cast<int>(dice.whole(2, 15));
        const auto perSample = static_cast<int>(dice.whole(1, std::max(1, n * perEvent / 3)));
        const auto threshold = static_cast<int>(dice.whole(1, 40));
        // Runs of more than about 1e6 samples are badly conditioned in any solver.
        const double p
            = std::min(0.95, 1.2 * perSample / (static_cast<double>(n) * perEvent) * (0.8 + dice.share()));
        family.begin({std::to_string(n), std::to_string(perEvent), std::to_string(perSample),
            std::to_string(threshold), text(p)});
        family.answer("samples",
            meanRunLength({.n = n, .perEvent = perEvent, .perSample = perSample, .threshold = threshold}, p));
    }
}

}

void writeCharts(const std::filesystem::path& folder)
{
    shares(folder);
    values(folder);
    runLengths(folder);
}

}
