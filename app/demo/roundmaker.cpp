// SPDX-License-Identifier: MIT
#include "app/demo/roundmaker.h"

#include <algorithm>
#include <cmath>

namespace cradlepost::demo {

namespace {

/** Usual seconds for a look, common practice, no source. */
double usualSeconds(ItemKind kind)
{
    switch (kind) {
    case ItemKind::Confirm:
        return 5.5;
    case ItemKind::Measure:
    case ItemKind::Since:
        return 9;
    case ItemKind::Count:
        return 8;
    case ItemKind::Steps:
    case ItemKind::Kit:
    case ItemKind::Cylinder:
        break;
    }
    return 15;
}

}

std::vector<int> walkingTimes(
    const Checklist& checklist, const std::vector<std::size_t>& asked, double pace, Random& random)
{
    std::vector<int> seconds;
    int now = 0;
    for (const std::size_t at : asked) {
        const double usual = usualSeconds(checklist.item(at).kind()) * pace;
        now += std::clamp(static_cast<int>(std::lround(usual + random.bell(usual * 0.35))), 3, 20);
        seconds.push_back(now);
    }
    return seconds;
}

std::vector<int> typingTimes(std::size_t items, Random& random)
{
    std::vector<int> seconds;
    const int whole = random.between(68, 72);
    for (std::size_t at = 1; at <= items; ++at)
        seconds.push_back(static_cast<int>(at) * whole / static_cast<int>(items));
    return seconds;
}

Instant finishOf(Instant started, const std::vector<int>& seconds)
{
    return started + std::chrono::seconds(seconds.empty() ? 2 : seconds.back() + 2);
}

Result<RoundRecord> walked(const Checklist& checklist, const TimeZone& zone, Draft draft,
    const std::vector<int>& seconds, const Answering& answering)
{
    const Instant started = draft.started;
    const Instant finish = finishOf(started, seconds);
    const std::vector<std::size_t> asked = draft.asked;
    auto walk = Walk::of(checklist, zone, std::move(draft));
    if (!walk)
        return tl::unexpected(walk.error());
    for (std::size_t i = 0; i < asked.size(); ++i) {
        Answer answer = answering(asked[i], finish);
        if (!isChecked(answer))
            continue;
        const auto given
            = walk->give(asked[i], std::move(answer), started + std::chrono::seconds(seconds[i]));
        if (!given)
            return tl::unexpected(given.error());
    }
    return walk->finish(finish);
}

}
