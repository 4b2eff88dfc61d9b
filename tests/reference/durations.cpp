// SPDX-License-Identifier: MIT
#include "core/stats/logrank.h"
#include "core/stats/survival.h"
#include "tests/reference/sheet.h"

#include <algorithm>
#include <cmath>

namespace cradlepost::reference {

using namespace stats;

namespace {

/** Durations with ties, with few or many of them open, sometimes all ended. */
std::vector<Duration> anyDurations(Dice& dice, std::int64_t n)
{
    const bool coarse = dice.chance(0.6);
    const double ended = dice.chance(0.15) ? 1 : 0.3 + 0.7 * dice.share();
    std::vector<Duration> list;
    for (; n > 0; --n) {
        const double time = -std::log(1 - dice.share()) * 20;
        list.push_back({coarse ? std::ceil(time / 3) : time + 0.01, dice.chance(ended)});
    }
    return list;
}

void columnsOf(const std::vector<Duration>& list, std::string& times, std::string& ended)
{
    for (const auto& d : list) {
        times += (times.empty() ? "" : " ") + text(d.time);
        ended += (ended.empty() ? "" : " ") + std::string(d.ended ? "1" : "0");
    }
}

void curves(const std::filesystem::path& folder)
{
    Dice dice(30);
    Family family(folder, "survival", {"time", "ended", "level"});
    for (int i = 0; i < caseCount; ++i) {
        const auto list = anyDurations(dice, dice.chance(0.1) ? dice.whole(1, 3) : dice.whole(4, 80));
        const double level = dice.chance(0.5) ? 0.95 : 0.9;
        std::string times;
        std::string ended;
        columnsOf(list, times, ended);
        family.begin({times, ended, text(level)});
        const auto curve = *kaplanMeier(list, level);
        // A step in the middle and the last one.
        for (const auto& [name, at] :
            {std::pair{"mid", curve.steps.size() / 2}, std::pair{"last", curve.steps.size() - 1}}) {
            const bool has = !curve.steps.empty();
            const auto* step = has ? &curve.steps[at] : nullptr;
            const std::string prefix = name;
            family.answer(prefix + "_survival", has ? std::optional(step->survival) : std::nullopt);
            family.answer(prefix + "_se", has ? step->se : std::nullopt);
            family.answer(
                prefix + "_low", has && step->interval ? std::optional(step->interval->low) : std::nullopt);
            family.answer(
                prefix + "_high", has && step->interval ? std::optional(step->interval->high) : std::nullopt);
        }
        family.answer("median", curve.median);
        family.answer("median_low", curve.medianLow);
        family.answer("median_high", curve.medianHigh);
        const auto mean = restrictedMean(curve, curve.lastTime);
        family.answer("mean", mean ? std::optional(mean->mean) : std::nullopt);
        family.answer("mean_se", mean ? std::optional(mean->se) : std::nullopt);
    }
}

void comparisons(const std::filesystem::path& folder)
{
    Dice dice(31);
    Family family(folder, "logrank", {"time", "ended", "group"});
    for (int i = 0; i < caseCount; ++i) {
        std::vector<std::vector<Duration>> groups;
        std::string times;
        std::string ended;
        std::string names;
        for (auto g = dice.whole(2, 4); g > 0; --g) {
            groups.push_back(anyDurations(dice, dice.whole(3, 40)));
            groups.back().front() = {1, true}; // so that there is something to compare
            columnsOf(groups.back(), times, ended);
            for (std::size_t k = 0; k < groups.back().size(); ++k)
                names += (names.empty() ? "" : " ") + std::to_string(groups.size());
        }
        family.begin({times, ended, names});
        const auto r = logRank(groups);
        family.answer("chi2", r ? std::optional(r->chiSquare) : std::nullopt);
        family.answer("p", r ? std::optional(r->p) : std::nullopt);
        family.answer("expected_first", r ? std::optional(r->groups[0].expected) : std::nullopt);
    }
}

}

void writeDurations(const std::filesystem::path& folder)
{
    curves(folder);
    comparisons(folder);
}

}
