// SPDX-License-Identifier: MIT
#include "core/supply/stockdays.h"

namespace cradlepost {

ItemDays daysOfItem(
    const std::vector<Recorded<StockMovement>>& movements, const TimeZone& zone, Date first, Date last)
{
    ItemDays out;
    if (movements.empty())
        return out;
    const std::string& item = movements.front().what.item;
    StockBook book;
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
        const std::int64_t before = book[item].total(MovementKind::Issue);
        upTo(day);
        out.days.push_back({.day = day,
            .used = book[item].total(MovementKind::Issue) - before,
            .out = book[item].usableOn(day) == 0});
    }
    upTo(Date(std::chrono::year(9999) / 12 / 31));
    out.book = std::move(book[item]);
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

}
