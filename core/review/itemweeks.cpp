// SPDX-License-Identifier: MIT
#include "core/review/itemweeks.h"

namespace cradlepost {

ItemWeeks itemWeeks(const Selection& selection)
{
    ItemWeeks map;
    const Date first = mondayOf(selection.span.from);
    for (Date monday = first; monday < selection.span.to; monday = addDays(monday, 7))
        map.weeks.push_back(monday);
    map.cells.assign(selection.items.size(), std::vector<stats::Tally>(map.weeks.size()));
    for (std::size_t item = 0; item < selection.items.size(); ++item)
        map.items.push_back(item);
    for (const ChosenRound& round : selection.rounds()) {
        const auto week = static_cast<std::size_t>(daysBetween(first, round.day()) / 7);
        for (std::size_t item = 0; item < selection.items.size(); ++item) {
            const char letter = round.letters[item];
            if (letter == 'm' || letter == 'g')
                map.cells[item][week] += {.x = letter == 'g' ? 1 : 0, .n = 1};
        }
    }
    return map;
}

}
