// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/stockbook.h"

namespace cradlepost {

/** What was used in one month, and on how many of its days there was nothing to use. */
struct MonthUse
{
    std::chrono::year_month month;
    std::int64_t used = 0; ///< issued
    std::int64_t wasted = 0; ///< wastage and expired
    int daysOut = 0; ///< days that ended with nothing usable in the book
    bool operator==(const MonthUse&) const = default;
};

/** `count` months from `first` on, of one item, from its movements. Days before the first movement are not
 * out. */
std::vector<MonthUse> useByMonth(const std::vector<Recorded<StockMovement>>& movements,
    const std::string& item, const TimeZone& zone, std::chrono::year_month first, int count);

/**
 * Average monthly consumption as if there had always been stock: used / (months - days out / 30.5). Source:
 * MDS-3: Managing Access to Medicines and Health Technologies, 2012 (from memory). Without days out it is the
 * plain mean of the Logistics Handbook, 2nd ed. 2011, sec. 3.2. Undefined when there was no stock all along.
 */
Result<double> averageMonthlyUse(std::int64_t used, int months, int daysOut);
Result<double> averageMonthlyUse(std::span<const MonthUse> months);

/** Pieces used for one birth. Undefined without births. */
Result<double> usePerBirth(std::int64_t used, std::int64_t births);

struct Wastage
{
    double rate = 0; ///< share of what was opened or lost that did not reach anybody, 0..1
    double factor = 1; ///< order so many times what is to be given: 1 / (1 - rate)
};

/**
 * From pieces given and pieces lost. Undefined when nothing was given. Source: WHO/V&B/03.18 (rate, from
 * memory), OpenLearn / Ethiopia Ministry of Health on vaccine wastage (factor).
 */
Result<Wastage> wastage(std::int64_t given, std::int64_t lost);
/** Rate in 0..1, 1 excluded. */
Result<double> wastageFactor(double rate);

}
