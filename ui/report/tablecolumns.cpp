// SPDX-License-Identifier: MIT
#include "ui/report/tablecolumns.h"

#include <algorithm>
#include <numeric>

namespace cradlepost {

namespace {

/// Between least and natural: all columns may grow to the same width, the narrow ones to what they ask for.
std::vector<int> shared(const std::vector<ColumnWish>& wishes, int room)
{
    const auto widthsAt = [&](int cap) {
        std::vector<int> widths;
        for (const ColumnWish& wish : wishes)
            widths.push_back(std::min(wish.natural, std::max(wish.least, cap)));
        return widths;
    };
    int good = 0;
    int bad = room + 1;
    while (bad - good > 1) {
        const int cap = (good + bad) / 2;
        const auto widths = widthsAt(cap);
        (std::accumulate(widths.begin(), widths.end(), 0) <= room ? good : bad) = cap;
    }
    return widthsAt(good);
}

}

std::vector<ColumnGroup> columnGroups(const std::vector<ColumnWish>& asked, int width, int gap)
{
    std::vector<ColumnWish> wishes = asked;
    for (ColumnWish& wish : wishes) {
        // Two of the widest still stand side by side.
        wish.natural = std::min(std::max(wish.natural, wish.least), width - gap);
        wish.least = std::min(wish.least, (width - gap) / 2);
    }
    std::vector<ColumnGroup> groups;
    int taken = 0;
    for (int i = 0; i < static_cast<int>(wishes.size()); ++i) {
        const int needed = wishes[static_cast<std::size_t>(i)].least + gap;
        if (groups.empty() || taken + needed > width + gap) {
            groups.push_back({.columns = i > 0 ? std::vector<int>{0} : std::vector<int>{}});
            taken = i > 0 ? wishes.front().least + gap : 0;
        }
        groups.back().columns.push_back(i);
        taken += needed;
    }
    for (ColumnGroup& group : groups) {
        std::vector<ColumnWish> own;
        for (const int column : group.columns)
            own.push_back(wishes[static_cast<std::size_t>(column)]);
        const int gaps = gap * (static_cast<int>(group.columns.size()) - 1);
        group.widths = shared(own, width - gaps);
    }
    return groups;
}

}
