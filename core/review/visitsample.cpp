// SPDX-License-Identifier: MIT
#include "core/review/visitsample.h"

#include <algorithm>
#include <numeric>

namespace cradlepost {

std::optional<VisitSample> visitSample(const DistrictHistory& history, const DistrictOptions& options)
{
    if (history.lists.empty())
        return std::nullopt;
    const auto lot = static_cast<std::int64_t>(history.lists.back().checklist->itemCount());
    const auto plan = stats::planLqas({.good = options.sampleGood, .poor = options.samplePoor, .lot = lot},
        options.sampleRisk, options.sampleRisk);
    if (!plan)
        return std::nullopt;
    return VisitSample{
        .lot = lot, .rule = plan->rule, .good = options.sampleGood, .poor = options.samplePoor};
}

std::vector<std::size_t> drawSample(std::size_t lot, std::size_t n, std::string_view seed)
{
    std::uint64_t state = 0xCBF29CE484222325U; // FNV-1a over the seed
    for (const char c : seed)
        state = (state ^ static_cast<unsigned char>(c)) * 0x100000001B3U;
    const auto next = [&state] {
        std::uint64_t z = state += 0x9E3779B97F4A7C15U;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9U;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBU;
        return z ^ (z >> 31);
    };
    std::vector<std::size_t> all(lot);
    std::iota(all.begin(), all.end(), std::size_t{0});
    n = std::min(n, lot);
    for (std::size_t i = 0; i < n; ++i)
        std::swap(all[i], all[i + next() % (lot - i)]); // of some tens: the remainder's bias is below 1e-17
    all.resize(n);
    std::sort(all.begin(), all.end());
    return all;
}

}
