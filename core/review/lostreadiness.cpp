// SPDX-License-Identifier: MIT
#include "core/review/lostreadiness.h"

#include <algorithm>

namespace cradlepost {

namespace {

LostItem lostOf(const Selection& selection, std::size_t item)
{
    LostItem lost{.item = item};
    stats::Tally gaps;
    for (const ChosenRound& round : selection.rounds()) {
        const char letter = round.letters[item];
        if (letter == 'm' || letter == 'g')
            gaps += {.x = letter == 'g' ? 1 : 0, .n = 1};
        lost.notChecked += letter == 'u' ? 1 : 0;
    }
    lost.gaps = {.tally = gaps, .interval = {}};
    lost.weight = selection.options.weights.of(selection.items[item].severity);
    lost.loss = static_cast<double>(gaps.x) * lost.weight;
    return lost;
}

}

LostReadiness lostReadiness(const Selection& selection)
{
    LostReadiness lost;
    if (selection.rounds().empty()) {
        lost.why = CannotSay::NoData;
        return lost;
    }
    for (std::size_t item = 0; item < selection.items.size(); ++item) {
        LostItem one = lostOf(selection, item);
        if (one.gaps.tally.x == 0)
            continue;
        one.gaps = shareOf(one.gaps.tally);
        lost.whole += one.loss;
        lost.items.push_back(one);
    }
    std::stable_sort(lost.items.begin(), lost.items.end(),
        [](const LostItem& a, const LostItem& b) { return a.loss > b.loss; });
    if (lost.whole <= 0)
        lost.why = CannotSay::NoSpread;
    double sum = 0;
    constexpr double fourFifths = 0.8;
    for (LostItem& item : lost.items) {
        if (lost.whole <= 0)
            break; // weights of 0
        if (sum < fourFifths * lost.whole)
            ++lost.vitalFew;
        sum += item.loss;
        item.share = item.loss / lost.whole;
        item.cumulated = sum / lost.whole;
    }
    return lost;
}

}
