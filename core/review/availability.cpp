// SPDX-License-Identifier: MIT
#include "core/review/availability.h"

#include <algorithm>

namespace cradlepost {

namespace {

bool isEquipment(ItemKind kind)
{
    return kind == ItemKind::Steps || kind == ItemKind::Since || kind == ItemKind::Cylinder;
}

double hoursOf(Instant from, Instant to)
{
    return std::chrono::duration<double, std::ratio<3600>>(to - from).count();
}

bool wasSeen(const Selection& selection, std::size_t item)
{
    return std::any_of(selection.rounds().begin(), selection.rounds().end(),
        [&](const ChosenRound& round) { return round.letters[item] == 'm' || round.letters[item] == 'g'; });
}

/** Gaps of one item do not overlap: the next one opens after the one before has closed. */
Availability availabilityOf(const Selection& selection, std::size_t item, const std::vector<const Gap*>& gaps)
{
    const Instant begin = selection.begin();
    const Instant end = selection.end();
    Availability one{.item = item, .hours = std::max(0.0, hoursOf(begin, end))};
    for (const Gap* gap : gaps) {
        if (gap->item != selection.items[item].id)
            continue;
        const bool stillOpen = !gap->closedAt || *gap->closedAt > end;
        const double down = hoursOf(std::max(begin, gap->openedAt), stillOpen ? end : *gap->closedAt);
        one.downHours += down;
        one.longestDown = std::max(one.longestDown.value_or(0), down);
        one.failures += gap->openedAt >= begin ? 1 : 0;
        one.downAtEnd = one.downAtEnd || stillOpen;
    }
    if (one.hours > 0)
        one.share = 1 - one.downHours / one.hours;
    if (one.failures > 0)
        one.hoursBetween = (one.hours - one.downHours) / one.failures;
    return one;
}

}

std::vector<Availability> availability(const Selection& selection)
{
    const auto gaps = selection.gaps();
    std::vector<Availability> all;
    for (std::size_t item = 0; item < selection.items.size(); ++item) {
        if (isEquipment(selection.items[item].kind) && wasSeen(selection, item))
            all.push_back(availabilityOf(selection, item, gaps));
    }
    std::stable_sort(all.begin(), all.end(),
        [](const Availability& a, const Availability& b) { return a.share < b.share; });
    return all;
}

}
