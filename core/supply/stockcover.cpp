// SPDX-License-Identifier: MIT
#include "core/supply/stockcover.h"

#include "core/stats/check.h"

#include <cmath>

namespace cradlepost {

namespace {

constexpr double daysPerMonth = 30.5;
constexpr double mostMonths = 120;

std::int64_t upToPacks(std::int64_t pieces, std::int64_t pack) { return (pieces + pack - 1) / pack * pack; }

bool isMonths(double months) { return months >= 0 && months <= mostMonths; }

/** Up, but not for a rounding error: 1.1 x 10 is 11. */
std::int64_t roundedUp(double pieces) { return static_cast<std::int64_t>(std::ceil(pieces - 1e-9)); }

}

std::optional<Cover> coverOf(std::int64_t usable, double perDay, int shiftsPerDay)
{
    if (!(perDay > 0) || shiftsPerDay < 1)
        return std::nullopt;
    const double days = static_cast<double>(std::max<std::int64_t>(usable, 0)) / perDay;
    return Cover{.shifts = days * shiftsPerDay, .days = days, .months = days / daysPerMonth};
}

std::int64_t birthsServed(std::int64_t pieces, Decimal perBirth)
{
    return std::max<std::int64_t>(pieces, 0) * 1000 / perBirth.thousandths;
}

std::int64_t piecesFor(std::int64_t births, Decimal perBirth)
{
    return (births * perBirth.thousandths + 999) / 1000;
}

Result<BirthDemand> birthDemand(std::span<const std::int64_t> birthsPerShift)
{
    const auto fit = stats::fitDemand(birthsPerShift);
    if (!fit)
        return tl::unexpected(fit.error());
    return BirthDemand{.perShift = {.mean = fit->mean, .size = fit->size}};
}

Result<UntilDelivery> untilDelivery(
    std::int64_t usable, Decimal perBirth, const BirthDemand& demand, double shifts)
{
    if (perBirth.thousandths <= 0)
        return stats::undefined("until the delivery: births do not use this item");
    const auto total = stats::overLeadTime(demand.perShift, shifts, demand.model);
    if (!total)
        return tl::unexpected(total.error());
    const std::int64_t births = birthsServed(usable, perBirth);
    const auto outlook = stats::outlook(*total, births);
    if (!outlook)
        return tl::unexpected(outlook.error());
    return UntilDelivery{
        .enoughFor = births, .expected = total->mean, .lasts = outlook->atMost, .unmet = outlook->unmet};
}

Result<OrderAdvice> orderAdvice(const StockItem& item, std::int64_t usable, std::int64_t onOrder,
    const BirthDemand& demand, double leadShifts, double service)
{
    if (item.perBirth.thousandths <= 0)
        return stats::undefined("reorder point: births do not use this item");
    if (usable < 0 || onOrder < 0 || item.packSize < 1)
        return stats::wrong("reorder point: pieces are 0 or more, a pack at least one");
    const auto point = stats::reorderPoint(demand.perShift, leadShifts, demand.model, service);
    if (!point)
        return tl::unexpected(point.error());
    OrderAdvice advice{.reorderAt = piecesFor(point->level, item.perBirth)};
    const double meanNeed = point->expected * item.perBirth.toDouble();
    advice.safety = std::max<std::int64_t>(roundedUp(static_cast<double>(advice.reorderAt) - meanNeed), 0);
    const std::int64_t have = usable + onOrder;
    if (have <= advice.reorderAt)
        advice.order = upToPacks(std::max(item.levels.par, advice.reorderAt) - have, item.packSize);
    return advice;
}

Result<MinMax> forcedOrder(
    const MonthLevels& levels, double monthlyUse, std::int64_t usable, std::int64_t onOrder)
{
    if (!isMonths(levels.lead) || !isMonths(levels.review) || !isMonths(levels.safety))
        return stats::wrong("order levels: months are 0 to 120");
    if (!(monthlyUse >= 0 && monthlyUse <= 1e9) || usable < 0 || onOrder < 0)
        return stats::wrong("order levels: use and pieces are 0 or more");
    MinMax out{.minimumMonths = levels.lead + levels.safety,
        .maximumMonths = levels.lead + levels.safety + levels.review};
    out.minimum = roundedUp(out.minimumMonths * monthlyUse);
    out.maximum = roundedUp(out.maximumMonths * monthlyUse);
    out.order = std::max<std::int64_t>(out.maximum - usable - onOrder, 0);
    return out;
}

}
