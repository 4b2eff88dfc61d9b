// SPDX-License-Identifier: MIT
#include "core/stats/demand.h"

#include "core/stats/check.h"
#include "core/stats/distributions.h"

#include <algorithm>
#include <cmath>

namespace cradlepost::stats {

namespace {

Result<void> checkDemand(Demand demand)
{
    if (!(demand.mean >= 0 && demand.mean <= 1e9))
        return wrong("a mean demand lies in 0..1e9, not " + shortest(demand.mean));
    if (demand.size && !(*demand.size >= 1e-6 && *demand.size <= 1e12))
        return wrong("the size of the spread lies in 1e-6..1e12, not " + shortest(*demand.size));
    return {};
}

/** Sum over i > k of (i - k) P(N = i) by recurrence: exact in far tails, where the closed form cancels. */
double unmetBySum(Demand demand, std::int64_t stock, double firstTerm)
{
    // P(N = i + 1) = P(N = i) (i + shift) scale/(i + 1).
    const double shift = demand.size.value_or(0);
    const double scale = demand.size ? demand.mean / (*demand.size + demand.mean) : demand.mean;
    constexpr double most = 1e6;
    double term = firstTerm;
    double sum = 0;
    // Counted by i - stock: a stock near 2^53 does not grow by 1. A tail that is 0 at its start stays so.
    for (double beyond = 1; beyond < most && term > 0; ++beyond) {
        const double i = static_cast<double>(stock) + beyond;
        const double part = beyond * term;
        sum += part;
        const double ratio = (demand.size ? i + shift : 1) * scale / (i + 1);
        if (part < sum * 1e-17 * (1 - ratio))
            break;
        term *= ratio;
    }
    return sum;
}

/** About how many steps the upper tail takes to fade. */
double tailSteps(Demand demand)
{
    const double fade = demand.size ? 40 * (1 + demand.mean / *demand.size) : 0;
    return fade + 12 * std::sqrt(demand.mean) + 100;
}

template <class Distribution> StockOutlook look(const Distribution& n, std::int64_t stock)
{
    StockOutlook o;
    o.exactly = n.pmf(stock);
    o.stockOut = n.moreThan(stock);
    o.atMost = o.stockOut < 0.5 ? 1 - o.stockOut : n.atMost(stock);
    o.emptyShelf = stock == 0 ? 1 : std::min(1.0, o.stockOut + o.exactly);
    return o;
}

/**
 * The closed form loses digits by cancellation once little of the mean is left; a sum costs a term for each
 * step of the tail. Where the tail is that long the cancellation is mild.
 */
bool isCancelled(double unmet, Demand demand, std::int64_t stock)
{
    return stock > 0 && unmet < 1e-2 * std::max(1.0, demand.mean) && tailSteps(demand) < 1e5;
}

StockOutlook gammaPoissonOutlook(Demand demand, std::int64_t stock)
{
    const double size = *demand.size;
    const NegativeBinomial n{.mean = demand.mean, .size = size};
    auto o = look(n, stock);
    // i P(N = i) is mean times the chance of i - 1 under size + 1.
    const NegativeBinomial shifted{.mean = (size + 1) * demand.mean / size, .size = size + 1};
    o.unmet = demand.mean * shifted.moreThan(stock - 1) - static_cast<double>(stock) * o.stockOut;
    if (isCancelled(o.unmet, demand, stock))
        o.unmet = unmetBySum(demand, stock, n.pmf(stock + 1));
    return o;
}

StockOutlook poissonOutlook(Demand demand, std::int64_t stock)
{
    const Poisson n{.mean = demand.mean};
    auto o = look(n, stock);
    o.unmet = demand.mean * o.emptyShelf - static_cast<double>(stock) * o.stockOut;
    if (isCancelled(o.unmet, demand, stock))
        o.unmet = unmetBySum(demand, stock, n.pmf(stock + 1));
    return o;
}

}

Result<StockOutlook> outlook(Demand demand, std::int64_t stock)
{
    CRADLEPOST_TRY(checkDemand(demand));
    if (stock < 0 || stock > maxCount)
        return wrong("a stock cannot be " + std::to_string(stock));
    if (demand.mean <= 0)
        return look(Poisson{.mean = 0}, stock);
    return demand.size ? gammaPoissonOutlook(demand, stock) : poissonOutlook(demand, stock);
}

Result<std::int64_t> stockFor(Demand demand, double service)
{
    CRADLEPOST_TRY(checkDemand(demand));
    if (!(service >= 0 && service < 1))
        return wrong("a service level lies in [0, 1), not " + shortest(service),
            "a service of 1 would need an unbounded stock");
    if (demand.mean <= 0 || service <= 0)
        return std::int64_t{0};
    if (demand.size)
        return NegativeBinomial{.mean = demand.mean, .size = *demand.size}.quantile(service);
    return Poisson{.mean = demand.mean}.quantile(service);
}

Result<Demand> overLeadTime(Demand daily, double days, LeadTimeModel model)
{
    CRADLEPOST_TRY(checkDemand(daily));
    if (!std::isfinite(days) || days <= 0)
        return wrong("a lead time must be above 0 days, not " + shortest(days));
    Demand total{.mean = daily.mean * days, .size = daily.size};
    if (total.size && model == LeadTimeModel::IndependentDays)
        total.size = *total.size * days;
    CRADLEPOST_TRY(checkDemand(total));
    return total;
}

Result<ReorderPoint> reorderPoint(Demand daily, double days, LeadTimeModel model, double service)
{
    const auto total = overLeadTime(daily, days, model);
    if (!total)
        return tl::unexpected(total.error());
    const auto level = stockFor(*total, service);
    if (!level)
        return tl::unexpected(level.error());
    return ReorderPoint{.level = *level,
        .expected = total->mean,
        .safety = total->mean > 0 ? static_cast<double>(*level) - total->mean : 0};
}

Result<DemandFit> fitDemand(std::span<const std::int64_t> counts)
{
    double sum = 0;
    for (std::size_t i = 0; i < counts.size(); ++i) {
        if (counts[i] < 0 || counts[i] > maxCount)
            return wrong("row " + std::to_string(i + 1) + ": a count cannot be " + std::to_string(counts[i]));
        sum += static_cast<double>(counts[i]);
    }
    if (counts.size() < 2)
        return undefined("a spread needs at least two counts");
    if (sum <= 0)
        return undefined("all counts are 0, so their spread cannot be told");
    const double n = static_cast<double>(counts.size());
    DemandFit fit{.mean = sum / n, .size = {}, .df = static_cast<int>(counts.size()) - 1};
    double squares = 0;
    for (const auto count : counts) {
        const double distance = static_cast<double>(count) - fit.mean;
        squares += distance * distance;
    }
    fit.variance = squares / (n - 1);
    fit.ratio = fit.variance / fit.mean;
    if (fit.variance > fit.mean)
        fit.size = fit.mean * fit.mean / (fit.variance - fit.mean);
    fit.chiSquare = squares / fit.mean;
    fit.p = chiSquareUpper(fit.chiSquare, fit.df);
    return fit;
}

}
