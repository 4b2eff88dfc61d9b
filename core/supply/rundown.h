// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/stockbook.h"

namespace cradlepost {

/** Pieces by how near their last day is; each counts once. */
struct Expiring
{
    std::int64_t expired = 0;
    std::int64_t within30 = 0; ///< last day today to 30 days from today
    std::int64_t within60 = 0; ///< 31 to 60
    std::int64_t within90 = 0; ///< 61 to 90
    bool operator==(const Expiring&) const = default;
};
Expiring expiringFrom(const ItemBook& book, Date today);

struct LotEnd
{
    LotKey key;
    std::int64_t pieces = 0;
    std::int64_t unused = 0; ///< left when its last day is over
    std::optional<Date> usedUp; ///< the day its last piece goes; none when some expire, or it takes 100 years
    bool operator==(const LotEnd&) const = default;
};

struct RunDown
{
    std::vector<LotEnd> lots; ///< first to expire first, expired ones included
    std::int64_t unused = 0; ///< will expire, expired ones included
    std::optional<Date> runsOut; ///< first day on which the need is not met in full
    bool operator==(const RunDown&) const = default;
};

/**
 * What happens to the shelf when nothing comes and `perDay` pieces (0 or more) are used every day from today
 * on, first to expire first. After n days the whole part of n x perDay has been asked for.
 */
RunDown runDown(const ItemBook& book, Date today, Decimal perDay);

}
