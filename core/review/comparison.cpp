// SPDX-License-Identifier: MIT
#include "core/review/comparison.h"

#include "core/review/donecalendar.h"
#include "core/stats/falsediscovery.h"

#include <algorithm>

namespace cradlepost {

namespace {

ComparedSpan comparedSpan(const Selection& selection)
{
    return {.span = selection.span,
        .done = doneCalendar(selection).done,
        .readiness = readinessOf(selection.rounds(), selection.options)};
}

stats::Tally gapsOf(const Selection& selection, std::string_view id)
{
    stats::Tally tally;
    const auto item = selection.itemAt(id);
    for (const ChosenRound& round : selection.rounds()) {
        const char letter = item ? round.letters[*item] : 'n';
        if (letter == 'm' || letter == 'g')
            tally += {.x = letter == 'g' ? 1 : 0, .n = 1};
    }
    return tally;
}

std::optional<stats::Difference> difference(stats::Tally second, stats::Tally first)
{
    auto result = stats::newcombeDifference(second, first);
    return result ? std::optional(*result) : std::nullopt;
}

std::vector<ComparedItem> comparedItems(const Selection& first, const Selection& second)
{
    std::vector<ComparedItem> items;
    std::vector<std::optional<double>> p;
    for (const ReviewItem& item : second.items) {
        ComparedItem one{.item = item, .first = gapsOf(first, item.id), .second = gapsOf(second, item.id)};
        if (one.first.n == 0 || one.second.n == 0)
            continue;
        one.difference = difference(one.second, one.first);
        const auto exact = stats::fisherExact(one.first, one.second);
        p.push_back(exact ? std::optional(*exact) : std::nullopt);
        items.push_back(std::move(one));
    }
    if (const auto adjusted = stats::benjaminiHochberg(p)) {
        for (std::size_t i = 0; i < items.size(); ++i)
            items[i].adjustedP = (*adjusted)[i];
    }
    std::stable_sort(items.begin(), items.end(), [](const ComparedItem& a, const ComparedItem& b) {
        return a.adjustedP.value_or(1) < b.adjustedP.value_or(1);
    });
    return items;
}

}

SpanComparison compareSpans(const Selection& first, const Selection& second)
{
    SpanComparison comparison{.first = comparedSpan(first), .second = comparedSpan(second)};
    const ReadinessReview& then = comparison.first.readiness;
    const ReadinessReview& now = comparison.second.readiness;
    comparison.ready = difference(now.ready.tally, then.ready.tally);
    comparison.noCriticalGap = difference(now.noCriticalGap.tally, then.noCriticalGap.tally);
    if (now.meanIndex && then.meanIndex)
        comparison.index = *now.meanIndex - *then.meanIndex;
    comparison.items = comparedItems(first, second);
    if (now.why || then.why)
        comparison.why = CannotSay::TooFew;
    return comparison;
}

}
