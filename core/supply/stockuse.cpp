// SPDX-License-Identifier: MIT
#include "core/supply/stockuse.h"

#include "core/stats/check.h"

namespace cradlepost {

namespace {

constexpr double daysPerMonth = 30.5; // as the adjustment formula takes them

/** Walks through the days of some months with the book beside it. */
class Diary
{
public:
    Diary(
        const std::vector<Recorded<StockMovement>>& movements, const std::string& item, const TimeZone& zone)
        : m_item(item)
        , m_zone(zone)
    {
        std::vector<Recorded<StockMovement>> own;
        std::copy_if(movements.begin(), movements.end(), std::back_inserter(own),
            [&](const auto& movement) { return movement.what.item == item; });
        m_movements = inOrder(std::move(own));
    }

    MonthUse month(std::chrono::year_month month)
    {
        const Date first = month / 1;
        const Date last = month / std::chrono::last;
        upTo(addDays(first, -1));
        MonthUse use{.month = month};
        const std::int64_t usedBefore = used();
        const std::int64_t wastedBefore = wasted();
        for (Date day = first; day <= last; day = addDays(day, 1)) {
            upTo(day);
            if (m_next > 0 && m_book[m_item].usableOn(day) == 0)
                ++use.daysOut;
        }
        use.used = used() - usedBefore;
        use.wasted = wasted() - wastedBefore;
        return use;
    }

private:
    void upTo(Date day)
    {
        for (; m_next < m_movements.size(); ++m_next) {
            const Date on = m_zone.toLocal(m_movements[m_next].what.at).date;
            if (on > day)
                return;
            apply(m_book, m_movements[m_next], on);
        }
    }
    std::int64_t used() { return m_book[m_item].total(MovementKind::Issue); }
    std::int64_t wasted()
    {
        return m_book[m_item].total(MovementKind::Wastage)
            + m_book[m_item].total(MovementKind::ExpiredRemoved);
    }

    const std::string& m_item;
    const TimeZone& m_zone;
    std::vector<Recorded<StockMovement>> m_movements;
    std::size_t m_next = 0;
    StockBook m_book;
};

}

std::vector<MonthUse> useByMonth(const std::vector<Recorded<StockMovement>>& movements,
    const std::string& item, const TimeZone& zone, std::chrono::year_month first, int count)
{
    Diary diary(movements, item, zone);
    std::vector<MonthUse> months;
    for (int i = 0; i < count; ++i)
        months.push_back(diary.month(first + std::chrono::months(i)));
    return months;
}

Result<double> averageMonthlyUse(std::int64_t used, int months, int daysOut)
{
    if (used < 0 || months < 1 || daysOut < 0)
        return stats::wrong("average use: use and days out are 0 or more, months 1 or more");
    const double inStock = months - daysOut / daysPerMonth;
    if (inStock <= 0)
        return stats::undefined("average use: there was no stock in all these months");
    return static_cast<double>(used) / inStock;
}

Result<double> averageMonthlyUse(std::span<const MonthUse> months)
{
    std::int64_t used = 0;
    int daysOut = 0;
    for (const MonthUse& month : months) {
        used += month.used;
        daysOut += month.daysOut;
    }
    return averageMonthlyUse(used, static_cast<int>(months.size()), daysOut);
}

Result<double> usePerBirth(std::int64_t used, std::int64_t births)
{
    if (used < 0 || births < 0)
        return stats::wrong("use a birth: use and births are 0 or more");
    if (births == 0)
        return stats::undefined("use a birth: there was no birth");
    return static_cast<double>(used) / static_cast<double>(births);
}

Result<Wastage> wastage(std::int64_t given, std::int64_t lost)
{
    if (given < 0 || lost < 0)
        return stats::wrong("wastage: pieces are 0 or more");
    if (given == 0)
        return stats::undefined("wastage: nothing was given");
    const double rate = static_cast<double>(lost) / (static_cast<double>(given) + static_cast<double>(lost));
    const auto factor = wastageFactor(rate);
    return factor ? Result<Wastage>(Wastage{.rate = rate, .factor = *factor})
                  : tl::unexpected(factor.error());
}

Result<double> wastageFactor(double rate)
{
    if (!(rate >= 0 && rate < 1))
        return stats::wrong("wastage factor: the rate is at least 0 and below 1");
    return 1 / (1 - rate);
}

}
