// SPDX-License-Identifier: MIT
#include "core/stats/funnel.h"

#include "core/stats/check.h"
#include "core/stats/distributions.h"
#include "core/stats/falsediscovery.h"
#include "core/stats/overdispersion.h"

#include <algorithm>
#include <cmath>

namespace cradlepost::stats {

namespace {

constexpr double innerLevel = 0.95;
constexpr double outerLevel = 0.998;

Interval cut(double low, double high) { return {.low = std::max(0.0, low), .high = std::min(1.0, high)}; }

Result<double> targetOf(std::span<const Tally> rows, const FunnelOptions& options)
{
    Tally sum;
    for (const auto& row : rows) {
        sum.x += row.x;
        sum.n += row.n;
    }
    if (sum.n == 0)
        return undefined("nothing observed in any unit, so no funnel");
    if (options.target) {
        CRADLEPOST_TRY(checkInside(*options.target, "the target"));
        return *options.target;
    }
    if (sum.x == 0 || sum.x == sum.n)
        return undefined("all or none of what was observed are events, so the funnel has no width");
    return static_cast<double>(sum.x) / static_cast<double>(sum.n);
}

double twoSided(const Binomial& count, std::int64_t x)
{
    const bool low = static_cast<double>(x) < static_cast<double>(count.n) * count.p;
    const double near = low ? count.atMost(x) : count.moreThan(x - 1);
    // Both tails hold x: while one is below a half the other one is above it.
    if (near < 0.5)
        return 2 * near;
    return std::min(1.0, 2 * std::min(near, low ? count.moreThan(x - 1) : count.atMost(x)));
}

Result<void> addUnits(Funnel& funnel, std::span<const Tally> rows)
{
    std::vector<std::optional<double>> p;
    p.reserve(rows.size());
    funnel.units.reserve(rows.size());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (rows[i].n == 0)
            continue;
        auto& unit = funnel.units.emplace_back();
        unit.row = i;
        unit.share = static_cast<double>(rows[i].x) / static_cast<double>(rows[i].n);
        unit.s = std::sqrt(funnel.target * (1 - funnel.target) / static_cast<double>(rows[i].n));
        unit.z = (unit.share - funnel.target) / unit.s;
        unit.p = twoSided({.n = rows[i].n, .p = funnel.target}, rows[i].x);
        p.emplace_back(unit.p);
    }
    const auto adjusted = benjaminiHochberg(p);
    if (!adjusted)
        return tl::unexpected(adjusted.error());
    for (std::size_t i = 0; i < funnel.units.size(); ++i)
        funnel.units[i].pAdjusted = *(*adjusted)[i];
    return {};
}

Result<void> addDispersion(Funnel& funnel, const FunnelOptions& options)
{
    std::vector<double> z;
    std::vector<double> variances;
    z.reserve(funnel.units.size());
    variances.reserve(funnel.units.size());
    for (const auto& unit : funnel.units) {
        z.push_back(unit.z);
        variances.push_back(unit.s * unit.s);
    }
    const auto pulled = winsorised(z, options.winsorise);
    if (!pulled)
        return tl::unexpected(pulled.error());
    for (std::size_t i = 0; i < z.size(); ++i)
        funnel.units[i].zWinsorised = (*pulled)[i];
    funnel.phi = *dispersionFactor(z);
    funnel.phiWinsorised = *dispersionFactor(*pulled);
    funnel.chiSquare = funnel.phi * static_cast<double>(z.size());
    funnel.df = static_cast<int>(z.size()) - (options.target ? 0 : 1);
    funnel.pOverdispersion = funnel.df > 0 ? chiSquareUpper(funnel.chiSquare, funnel.df) : 1;
    if (z.size() >= 2)
        funnel.tau2 = *betweenVariance(funnel.phiWinsorised, variances);
    const bool wider
        = options.model == DispersionModel::Multiplicative ? funnel.phiWinsorised > 1 : funnel.tau2 > 0;
    funnel.applied = wider ? options.model : DispersionModel::None;
    return {};
}

/** Limits of one level for units of any size. */
struct Width
{
    double tail = 0;
    double z = 0; ///< normal quantile of 1 - tail
};

Width widthOf(double level) { return {.tail = (1 - level) / 2, .z = normalWidth(level)}; }

Result<double> exactLimit(const Binomial& count, const Width& width, bool upper)
{
    const auto at = count.crossing(width.tail, upper ? width.z : -width.z, upper);
    if (!(at.pmf > 0))
        return undefined("the limit lies where chance is too small to be counted");
    return (static_cast<double>(at.k) - at.excess / at.pmf) / static_cast<double>(count.n);
}

Result<Interval> limitsFor(const Funnel& funnel, const FunnelUnit& unit, std::int64_t n, const Width& width)
{
    if (funnel.applied == DispersionModel::None) {
        const Binomial count{.n = n, .p = funnel.target};
        const auto low = exactLimit(count, width, false);
        const auto high = exactLimit(count, width, true);
        if (!low || !high)
            return tl::unexpected(low ? high.error() : low.error());
        return cut(*low, *high);
    }
    const double sd = funnel.applied == DispersionModel::Multiplicative
        ? unit.s * std::sqrt(funnel.phiWinsorised)
        : std::sqrt(unit.s * unit.s + funnel.tau2);
    const double half = width.z * sd;
    return cut(funnel.target - half, funnel.target + half);
}

/** Interpolation may put the limit of a small unit just inside 0 or 1; the exact test then has the word. */
int sideOf(const FunnelUnit& unit, DispersionModel applied)
{
    constexpr double slack = 1e-12;
    if (applied == DispersionModel::None && unit.p >= 1 - outerLevel)
        return 0;
    return unit.share > unit.outer.high + slack ? 1 : (unit.share < unit.outer.low - slack ? -1 : 0);
}

/** Inner and outer limits. They hang on n alone, and many units of a month have the same. */
Result<void> addLimits(Funnel& funnel, std::span<const Tally> rows)
{
    const Width inner = widthOf(innerLevel);
    const Width outer = widthOf(outerLevel);
    std::vector<FunnelUnit*> bySize;
    bySize.reserve(funnel.units.size());
    for (auto& unit : funnel.units)
        bySize.push_back(&unit);
    const auto sizeOf = [&](const FunnelUnit* unit) { return rows[unit->row].n; };
    std::ranges::stable_sort(bySize, {}, sizeOf);
    const FunnelUnit* before = nullptr;
    for (FunnelUnit* unit : bySize) {
        if (before && sizeOf(before) == sizeOf(unit)) {
            unit->inner = before->inner;
            unit->outer = before->outer;
        } else {
            const auto innerLimits = limitsFor(funnel, *unit, sizeOf(unit), inner);
            const auto outerLimits = limitsFor(funnel, *unit, sizeOf(unit), outer);
            if (!innerLimits || !outerLimits)
                return tl::unexpected(innerLimits ? outerLimits.error() : innerLimits.error());
            unit->inner = *innerLimits;
            unit->outer = *outerLimits;
        }
        before = unit;
        unit->side = sideOf(*unit, funnel.applied);
    }
    return {};
}

}

const char* dispersionName(DispersionModel model)
{
    switch (model) {
    case DispersionModel::None:
        return "none";
    case DispersionModel::Multiplicative:
        return "multiplicative";
    case DispersionModel::Additive:
        return "additive";
    }
    return "";
}

Result<double> funnelLimit(double target, std::int64_t n, double tail)
{
    CRADLEPOST_TRY(checkInside(target, "the target"));
    CRADLEPOST_TRY(checkInside(tail, "the tail"));
    if (n < 1 || n > maxCount)
        return wrong("a funnel limit needs n of at least 1, not " + std::to_string(n));
    const bool upper = tail > 0.5;
    const Width width{.tail = upper ? 1 - tail : tail, .z = std::abs(normalQuantile(tail))};
    return exactLimit({.n = n, .p = target}, width, upper);
}

Result<Interval> funnelLimits(double target, std::int64_t n, double level)
{
    CRADLEPOST_TRY(checkLevel(level));
    const double tail = (1 - level) / 2;
    const auto low = funnelLimit(target, n, tail);
    if (!low)
        return tl::unexpected(low.error());
    const auto high = funnelLimit(target, n, 1 - tail);
    if (!high)
        return tl::unexpected(high.error());
    return cut(*low, *high);
}

Result<double> exactTwoSided(Tally tally, double target)
{
    CRADLEPOST_TRY(checkTally(tally));
    CRADLEPOST_TRY(checkInside(target, "the target"));
    if (tally.n == 0)
        return undefined("nothing observed (n = 0), so there is nothing to test");
    return twoSided({.n = tally.n, .p = target}, tally.x);
}

Result<Funnel> funnel(std::span<const Tally> rows, const FunnelOptions& options)
{
    CRADLEPOST_TRY(checkTallies(rows));
    const auto target = targetOf(rows, options);
    if (!target)
        return tl::unexpected(target.error());
    Funnel result;
    result.target = *target;
    CRADLEPOST_TRY(addUnits(result, rows));
    CRADLEPOST_TRY(addDispersion(result, options));
    CRADLEPOST_TRY(addLimits(result, rows));
    return result;
}

}
