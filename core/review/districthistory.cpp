// SPDX-License-Identifier: MIT
#include "core/review/districthistory.h"

#include <algorithm>
#include <set>

namespace cradlepost {

using std::chrono::months;
using std::chrono::year_month;

double UnitTallies::carryOver() const
{
    constexpr double most = 0.95;
    const stats::Tally clear = noCriticalGap();
    if (pairs == 0 || clear.x == 0 || clear.x == clear.n)
        return 1;
    const double p = static_cast<double>(clear.x) / static_cast<double>(clear.n);
    const double both = static_cast<double>(clearPairs) / static_cast<double>(pairs);
    const double r = std::clamp((both - p * p) / (p * (1 - p)), 0.0, most);
    return (1 + r) / (1 - r);
}

void UnitTallies::add(Readiness state)
{
    ready += state == Readiness::Ready ? 1 : 0;
    readyWithGaps += state == Readiness::ReadyWithGaps ? 1 : 0;
    notReady += state == Readiness::NotReady ? 1 : 0;
    const bool isClear = state != Readiness::NotReady;
    pairs += m_lastClear ? 1 : 0;
    clearPairs += m_lastClear.value_or(false) && isClear ? 1 : 0;
    m_lastClear = isClear;
}

ReviewSpan spanBefore(const ReviewSpan& span)
{
    const std::chrono::day first{1};
    if (span.from.day() == first && span.to.day() == first) {
        const months count = (span.to.year() / span.to.month()) - (span.from.year() / span.from.month());
        return {.from = (span.from.year() / span.from.month() - count) / first, .to = span.from};
    }
    return {.from = addDays(span.from, -span.days()), .to = span.from};
}

std::vector<year_month> seriesOf(const ReviewSpan& span)
{
    const Date last = addDays(span.to, -1);
    const year_month end = last.year() / last.month();
    std::vector<year_month> series;
    for (int back = seriesMonths - 1; back >= 0; --back)
        series.push_back(end - months(back));
    return series;
}

void keepLevel(DistrictHistory& history, const std::string& level)
{
    if (level.empty())
        return;
    history.level = level;
    std::vector<UnitShelves> shelves;
    for (std::size_t i = 0; i < history.shelves.size(); ++i) {
        if (history.units[i].level == level)
            shelves.push_back(std::move(history.shelves[i]));
    }
    history.shelves = std::move(shelves);
    std::erase_if(history.units, [&](const DistrictUnit& unit) { return unit.level != level; });
}

std::vector<std::string> levelsOf(const DistrictHistory& history)
{
    std::set<std::string> levels;
    for (const DistrictUnit& unit : history.units) {
        if (!unit.level.empty())
            levels.insert(unit.level);
    }
    return {levels.begin(), levels.end()};
}

}
