// SPDX-License-Identifier: MIT
#include "core/supply/stockdays.h"

#include <algorithm>
#include <numeric>

namespace cradlepost {

ItemDays daysOfItem(
    std::span<const Recorded<StockMovement>> movements, const TimeZone& zone, Date first, Date last)
{
    ItemDays out;
    if (movements.empty())
        return out;
    const std::string& item = movements.front().what.item;
    StockBook book;
    ItemBook& shelf = book[item]; // a map does not move what it holds
    std::size_t next = 0;
    const auto upTo = [&](Date day) {
        for (; next < movements.size(); ++next) {
            const Date on = zone.toLocal(movements[next].what.at).date;
            if (on > day)
                return;
            apply(book, movements[next], on);
        }
    };
    const Date begin = std::max(first, zone.toLocal(movements.front().what.at).date);
    upTo(addDays(begin, -1));
    for (Date day = begin; day <= last; day = addDays(day, 1)) {
        const std::int64_t before = shelf.total(MovementKind::Issue);
        upTo(day);
        out.days.push_back(
            {.day = day, .used = shelf.total(MovementKind::Issue) - before, .out = shelf.usableOn(day) == 0});
    }
    upTo(Date(std::chrono::year(9999) / 12 / 31));
    out.book = std::move(shelf);
    return out;
}

std::vector<std::int64_t> useWhileInStock(const std::vector<DayUse>& days)
{
    std::vector<std::int64_t> used;
    for (const DayUse& day : days)
        if (!day.out)
            used.push_back(day.used);
    return used;
}

PeriodUse asWrittenUp(const std::vector<std::int64_t>& perDay)
{
    std::vector<int> apart;
    std::optional<std::size_t> before;
    for (std::size_t day = 0; day < perDay.size(); ++day) {
        if (perDay[day] == 0)
            continue;
        if (before)
            apart.push_back(static_cast<int>(day - *before));
        before = day;
    }
    PeriodUse out;
    if (!apart.empty()) {
        const auto middle = apart.begin() + static_cast<std::ptrdiff_t>(apart.size() / 2);
        std::nth_element(apart.begin(), middle, apart.end());
        out.days = *middle;
    }
    const auto length = static_cast<std::size_t>(out.days);
    for (std::size_t from = perDay.size() % length; from < perDay.size(); from += length)
        out.used.push_back(std::accumulate(perDay.begin() + static_cast<std::ptrdiff_t>(from),
            perDay.begin() + static_cast<std::ptrdiff_t>(from + length), std::int64_t{0}));
    return out;
}

}
