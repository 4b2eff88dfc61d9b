// SPDX-License-Identifier: MIT
#include "core/stats/inequality.h"
#include "core/stats/mannkendall.h"
#include "core/stats/pace.h"
#include "core/stats/repeats.h"
#include "core/stats/terminaldigit.h"
#include "tests/reference/sheet.h"

#include <cmath>

namespace cradlepost::reference {

using namespace stats;

namespace {

void monotone(const std::filesystem::path& folder)
{
    Dice dice(50);
    Family family(folder, "trend", {"time", "value"});
    for (int i = 0; i < caseCount; ++i) {
        const bool coarse = dice.chance(0.5);
        const bool repeated = dice.chance(0.2);
        std::vector<double> time;
        std::vector<double> value;
        std::vector<TimedValue> series2;
        const double slope = dice.share() - 0.5;
        for (auto n = dice.whole(4, 40); n > 0; --n) {
            const auto step = static_cast<double>(time.size());
            time.push_back(repeated ? std::floor(step / 2) : step);
            const double v = slope * step + 6 * dice.share();
            value.push_back(coarse ? std::floor(v) : v);
            series2.push_back({time.back(), value.back()});
        }
        value.back() += 0.5; // never all equal
        series2.back().value = value.back();
        family.begin({series(time), series(value)});
        const auto t = mannKendall(series2);
        const auto field = [&](const char* name, auto get) {
            family.answer(name, t ? std::optional<double>(get(*t)) : std::nullopt);
        };
        field("s", [](const Trend& r) { return r.s; });
        field("variance", [](const Trend& r) { return r.variance; });
        field("p_normal", [](const Trend& r) { return r.pNormal; });
        family.answer("p_exact", t ? t->pExact : std::nullopt);
        field("slope", [](const Trend& r) { return r.slope; });
        family.answer("slope_low", t && t->interval ? std::optional(t->interval->low) : std::nullopt);
        family.answer("slope_high", t && t->interval ? std::optional(t->interval->high) : std::nullopt);
    }
}

void trust(const std::filesystem::path& folder)
{
    Dice dice(51);
    Family family(folder, "trust", {"counts", "seconds", "chances", "n", "length"});
    for (int i = 0; i < caseCount; ++i) {
        std::vector<std::int64_t> counts(static_cast<std::size_t>(dice.chance(0.2) ? 2 : 10));
        for (auto& count : counts)
            count = 5 + dice.whole(0, 60) + (dice.chance(0.1) ? 500 : 0);
        std::vector<double> seconds;
        for (auto n = dice.whole(3, 40); n > 0; --n)
            seconds.push_back(dice.chance(0.1) ? 20 + dice.share() : 200 + 400 * dice.share());
        std::vector<double> chances;
        double left = 1;
        for (auto k = dice.whole(1, 5); k > 0; --k) {
            chances.push_back(left * dice.share());
            left -= chances.back();
        }
        chances.push_back(left);
        const auto n = static_cast<int>(dice.whole(1, 60));
        const auto length = static_cast<int>(dice.whole(2, 8));
        family.begin(
            {series(counts), series(seconds), series(chances), std::to_string(n), std::to_string(length)});
        const auto d = *digitPreference(counts);
        family.answer("digit_chi2", d.chiSquare);
        family.answer("digit_p", d.p);
        const auto p = *pace(seconds);
        family.answer("pace_z_first", p.points.front().z);
        family.answer("pace_median", p.medianLog);
        family.answer("run_chance", *identicalRunChance(chances, n, length));
        family.answer("gini", gini(seconds)->value);
    }
}

}

void writeTrends(const std::filesystem::path& folder)
{
    monotone(folder);
    trust(folder);
}

}
