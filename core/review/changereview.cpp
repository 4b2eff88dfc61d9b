// SPDX-License-Identifier: MIT
#include "core/review/changereview.h"

#include "core/review/spread.h"

#include <algorithm>
#include <cmath>

namespace cradlepost {

namespace {

std::vector<std::size_t> itemsOf(const Selection& selection, const ChangeIdea& idea)
{
    std::vector<std::size_t> items;
    for (std::size_t i = 0; i < selection.items.size(); ++i) {
        if (idea.items.empty()
            || std::find(idea.items.begin(), idea.items.end(), selection.items[i].id) != idea.items.end())
            items.push_back(i);
    }
    return items;
}

stats::Tally metIn(const ChosenRound& round, const std::vector<std::size_t>& items)
{
    stats::Tally tally;
    for (const std::size_t item : items) {
        const char letter = round.letters[item];
        if (letter == 'm' || letter == 'g')
            tally += {.x = letter == 'm' ? 1 : 0, .n = 1};
    }
    return tally;
}

/** Newcombe's limits with the variance times `factor`, cut to [-1, 1]. */
std::optional<stats::Difference> widened(stats::Tally after, stats::Tally before, double factor)
{
    auto difference = stats::newcombeDifference(after, before);
    if (!difference)
        return std::nullopt;
    const double d = difference->estimate;
    const double root = std::sqrt(factor);
    difference->interval = {.low = std::max(-1.0, d - (d - difference->interval.low) * root),
        .high = std::min(1.0, d + (difference->interval.high - d) * root)};
    return *difference;
}

ChangeEffect effectOf(const Selection& selection, std::size_t change)
{
    const ChangeIdea& idea = selection.history->changes[change];
    ChangeEffect effect{
        .change = change, .before = lookBack(selection.span), .from = idea.from, .to = selection.span.to};
    if (idea.until)
        effect.to = std::min(effect.to, addDays(*idea.until, 1));
    const auto items = itemsOf(selection, idea);
    std::vector<GroupedTally> rounds;
    for (const ChosenRound& round : selection.all) {
        if (round.day() >= effect.to)
            break;
        const bool isAfter = round.day() >= idea.from;
        const stats::Tally met = metIn(round, items);
        if (met.n == 0)
            continue;
        rounds.push_back({.group = isAfter ? 1U : 0U, .tally = met});
        (isAfter ? effect.roundsAfter : effect.roundsBefore) += 1;
        (isAfter ? effect.metAfter : effect.metBefore) += met;
    }
    if (std::min(effect.roundsBefore, effect.roundsAfter) < selection.options.fewestRounds) {
        effect.why = CannotSay::TooFew;
        return effect;
    }
    const Spread spread = spreadOf(rounds);
    effect.dispersion = spread.dispersion * spread.carryOver;
    effect.difference = widened(effect.metAfter, effect.metBefore, effect.dispersion);
    return effect;
}

}

std::vector<ChangeEffect> changeEffects(const Selection& selection)
{
    std::vector<ChangeEffect> effects;
    const auto& changes = selection.history->changes;
    for (std::size_t i = 0; i < changes.size(); ++i) {
        const bool isOver = changes[i].until && *changes[i].until < selection.span.from;
        if (changes[i].from >= selection.span.to || changes[i].from < lookBack(selection.span) || isOver)
            continue;
        effects.push_back(effectOf(selection, i));
    }
    return effects;
}

}
