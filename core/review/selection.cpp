// SPDX-License-Identifier: MIT
#include "core/review/selection.h"

#include <algorithm>
#include <map>

namespace cradlepost {

namespace {

constexpr char blank = ' ';

/** Where each position of one checklist stands among the chosen items; -1: not chosen. */
using Places = std::vector<int>;

/** The chosen items of all checklists, the latest first, and the places of each checklist. */
std::vector<Places> placesOf(
    const UnitHistory& history, const ReviewFilter& filter, std::vector<ReviewItem>& items)
{
    std::map<std::string, int> known;
    std::vector<Places> all(history.lists.size());
    for (std::size_t list = history.lists.size(); list-- > 0;) {
        const Checklist& checklist = *history.lists[list].checklist;
        for (const Section& section : checklist.sections) {
            for (const Item& item : section.items) {
                int place = -1;
                if (filter.takesItem(section.id, item.id)) {
                    const auto [at, isNew] = known.emplace(item.id, static_cast<int>(items.size()));
                    place = at->second;
                    if (isNew)
                        items.push_back({.id = item.id,
                            .section = section.id,
                            .severity = item.severity,
                            .kind = item.kind()});
                }
                all[list].push_back(place);
            }
        }
    }
    return all;
}

/** Position of each item's section among the sections of the chosen items. */
std::vector<std::size_t> sectionNumbers(const std::vector<ReviewItem>& items)
{
    std::map<std::string, std::size_t> known;
    std::vector<std::size_t> numbers;
    for (const ReviewItem& item : items)
        numbers.push_back(known.emplace(item.section, known.size()).first->second);
    return numbers;
}

/** Counts a round anew over the chosen items, by the same rules as verdictOf. */
void countAnew(
    ChosenRound& round, const std::vector<ReviewItem>& items, const std::vector<std::size_t>& sections)
{
    std::vector<stats::Tally> bySection(items.size());
    for (std::size_t i = 0; i < items.size(); ++i) {
        const char letter = round.letters[i];
        if (letter == 'm' || letter == 'g' || letter == 'u')
            bySection[sections[i]] += {.x = letter == 'm' ? 1 : 0, .n = 1};
    }
    double sum = 0;
    int counted = 0;
    for (const stats::Tally& section : bySection) {
        round.items += section;
        if (section.n > 0) {
            sum += static_cast<double>(section.x) / static_cast<double>(section.n);
            ++counted;
        }
    }
    round.hasIndex = counted > 0;
    round.index = counted > 0 ? sum / counted : 0;
    round.state = stateOf(round.letters, items);
}

std::string lettersOf(const RoundFact& fact, const Places& places, std::size_t items)
{
    std::string letters(items, blank);
    for (std::size_t at = 0; at < std::min(places.size(), fact.outcomes.size()); ++at) {
        if (places[at] >= 0)
            letters[static_cast<std::size_t>(places[at])] = fact.outcomes[at];
    }
    return letters;
}

ChosenRound chosen(const RoundFact& fact, const Shift& shift, const Places& places,
    const Selection& selection, const std::vector<std::size_t>& sections)
{
    ChosenRound round{.fact = &fact, .shift = &shift};
    round.letters = lettersOf(fact, places, selection.items.size());
    if (!selection.filter.sections.empty() || !selection.filter.items.empty()) {
        countAnew(round, selection.items, sections);
        return round;
    }
    // As the round was recorded: nothing in it is judged again.
    round.state = fact.state;
    round.items = {.x = fact.met, .n = fact.applicable};
    round.hasIndex = fact.applicable > 0;
    round.index = fact.index / 10'000.0;
    return round;
}

void chooseRounds(Selection& selection, const std::vector<Places>& places)
{
    const auto sections = sectionNumbers(selection.items);
    const UnitHistory& history = *selection.history;
    auto due = selection.due.begin();
    selection.all.reserve(history.rounds.size());
    for (const RoundFact& fact : history.rounds) {
        while (due != selection.due.end() && (*due)->slot() < fact.slot)
            ++due;
        if (due == selection.due.end())
            break;
        if ((*due)->slot() == fact.slot)
            selection.all.push_back(chosen(fact, **due, places[fact.list], selection, sections));
    }
    const auto first = std::find_if(selection.all.begin(), selection.all.end(),
        [&](const ChosenRound& round) { return round.day() >= selection.span.from; });
    selection.firstInSpan = static_cast<std::size_t>(first - selection.all.begin());
}

void chooseShifts(Selection& selection)
{
    const Date first = lookBack(selection.span);
    std::map<std::pair<int, std::string>, bool> codes;
    for (const Shift& shift : selection.history->due) {
        if (shift.date < first || shift.date >= selection.span.to || !selection.filter.takesShift(shift.code))
            continue;
        selection.due.push_back(&shift);
        if (selection.span.contains(shift.date))
            codes.emplace(std::pair(shift.index, shift.code), true);
    }
    for (const auto& [at, unused] : codes) {
        if (std::find(selection.shifts.begin(), selection.shifts.end(), at.second) == selection.shifts.end())
            selection.shifts.push_back(at.second);
    }
}

}

Readiness stateOf(std::string_view letters, std::span<const ReviewItem> items)
{
    Readiness state = Readiness::Ready;
    for (std::size_t i = 0; i < letters.size(); ++i) {
        if (letters[i] != 'g' && letters[i] != 'u')
            continue;
        if (items[i].severity == Severity::Critical)
            return Readiness::NotReady;
        state = Readiness::ReadyWithGaps;
    }
    return state;
}

std::optional<std::size_t> Selection::itemAt(std::string_view id) const
{
    const auto at
        = std::find_if(items.begin(), items.end(), [&](const ReviewItem& item) { return item.id == id; });
    if (at == items.end())
        return std::nullopt;
    return static_cast<std::size_t>(at - items.begin());
}

Instant Selection::begin() const
{
    for (const Shift& shift : history->due) {
        if (span.contains(shift.date))
            return shift.begins;
    }
    return history->zone.toInstant({.date = span.from});
}

Instant Selection::end() const
{
    for (auto shift = history->due.rbegin(); shift != history->due.rend(); ++shift) {
        if (span.contains(shift->date))
            return std::min(history->now, shift->ends);
    }
    return std::min(history->now, history->zone.toInstant({.date = span.to}));
}

std::vector<const Gap*> Selection::gaps() const
{
    const bool isCut = !filter.sections.empty() || !filter.items.empty();
    const Instant from = begin();
    const Instant to = end();
    std::vector<const Gap*> chosen;
    for (const Gap& gap : history->gaps) {
        const bool isOn = gap.openedAt < to && (!gap.closedAt || *gap.closedAt > from);
        if (isOn && (!isCut || itemAt(gap.item)))
            chosen.push_back(&gap);
    }
    return chosen;
}

Result<Selection> select(const UnitHistory& history, const ReviewSpan& span, const ReviewFilter& filter,
    const ReviewOptions& options)
{
    if (span.days() <= 0)
        return fail(ErrorCode::InvalidArgument, "the span of a review holds no day",
            "Give a last day that is not before the first.");
    if (history.from > lookBack(span) || history.gapsFrom > span.from || history.to < span.to)
        return fail(ErrorCode::InvalidArgument,
            "the history from " + toIso(history.from) + " does not cover the review from "
                + toIso(span.from));
    Selection selection{.history = &history, .span = span, .filter = filter, .options = options};
    const auto places = placesOf(history, filter, selection.items);
    chooseShifts(selection);
    chooseRounds(selection, places);
    return selection;
}

}
