// SPDX-License-Identifier: MIT
#include "core/supply/rundown.h"

#include <algorithm>

namespace cradlepost {

namespace {

constexpr std::int64_t mostDays = 36525; // 100 years: what lasts longer is said to have no end

/** How the pieces that are asked for add up from day to day. */
class Need
{
public:
    Need(Date today, Decimal perDay)
        : m_today(today)
        , m_perDay(std::max<std::int64_t>(perDay.thousandths, 0))
    {
    }

    /** Asked for up to and with `day`, which is today or later. */
    [[nodiscard]] std::int64_t until(Date day) const
    {
        return m_perDay * (daysBetween(m_today, day) + std::int64_t{1}) / 1000;
    }

    /** The day on which the n-th piece is asked for, n from 1 on. */
    [[nodiscard]] std::optional<Date> dayOf(std::int64_t n) const
    {
        if (m_perDay == 0)
            return std::nullopt;
        const std::int64_t days = (n * 1000 + m_perDay - 1) / m_perDay;
        return days > mostDays ? std::nullopt : std::optional(addDays(m_today, static_cast<int>(days) - 1));
    }

private:
    Date m_today;
    std::int64_t m_perDay; ///< thousandths
};

}

Expiring expiringFrom(const ItemBook& book, Date today)
{
    Expiring out;
    for (const BookLot& lot : book.lots) {
        if (!lot.key.expiry)
            continue;
        const int days = daysBetween(today, *lot.key.expiry);
        if (days < 0)
            out.expired += lot.pieces;
        else if (days <= 30)
            out.within30 += lot.pieces;
        else if (days <= 60)
            out.within60 += lot.pieces;
        else if (days <= 90)
            out.within90 += lot.pieces;
    }
    return out;
}

RunDown runDown(const ItemBook& book, Date today, Decimal perDay)
{
    const Need need(today, perDay);
    RunDown out;
    std::int64_t used = 0; // of all lots so far; one lot follows the other without a pause
    for (const BookLot& lot : book.lots) {
        LotEnd end{.key = lot.key, .pieces = lot.pieces};
        std::int64_t taken = 0;
        if (!lot.key.expiry)
            taken = need.dayOf(1) ? lot.pieces : 0;
        else if (*lot.key.expiry >= today)
            taken = std::clamp<std::int64_t>(need.until(*lot.key.expiry) - used, 0, lot.pieces);
        used += taken;
        if (lot.key.expiry)
            end.unused = lot.pieces - taken;
        if (taken == lot.pieces)
            end.usedUp = need.dayOf(used);
        out.unused += end.unused;
        out.lots.push_back(end);
    }
    out.runsOut = need.dayOf(used + 1);
    return out;
}

}
