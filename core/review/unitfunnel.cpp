// SPDX-License-Identifier: MIT
#include "core/review/unitfunnel.h"

#include "core/stats/distributions.h"
#include "core/stats/falsediscovery.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace cradlepost {

namespace {

using stats::DispersionModel;

constexpr double innerLevel = 0.95;
constexpr double outerLevel = 0.998;
constexpr int curvePoints = 80;

double varianceBy(const DispersionChoice& choice, double s)
{
    switch (choice.model) {
    case DispersionModel::Multiplicative:
        return s * s * choice.phi;
    case DispersionModel::Additive:
        return s * s + choice.tau * choice.tau;
    case DispersionModel::None:
        break;
    }
    return s * s;
}

/** Of the winsorised z, normal with the variance that the model gives them. */
double likelihood(const stats::Funnel& funnel, DispersionModel model)
{
    double sum = 0;
    for (const stats::FunnelUnit& unit : funnel.units) {
        const double variance = model == DispersionModel::Multiplicative
            ? funnel.phiWinsorised
            : 1 + funnel.tau2 / (unit.s * unit.s);
        sum -= 0.5
            * (std::log(2 * std::numbers::pi * variance) + unit.zWinsorised * unit.zWinsorised / variance);
    }
    return sum;
}

/** So much that the outermost unit on each side is pulled in wholly: it must not widen its own limits. */
double winsoriseFor(std::size_t units)
{
    constexpr double usual = 0.1;
    constexpr std::size_t fewest = 4; // with fewer the middle one alone would be left
    return units < fewest ? usual : std::max(usual, 1.0 / static_cast<double>(units - 1));
}

DispersionChoice choose(const stats::Funnel& funnel, const DistrictOptions& options)
{
    DispersionChoice choice{.p = funnel.pOverdispersion,
        .phi = funnel.phiWinsorised,
        .tau = std::sqrt(funnel.tau2),
        .likelihoodMultiplicative = likelihood(funnel, DispersionModel::Multiplicative),
        .likelihoodAdditive = likelihood(funnel, DispersionModel::Additive)};
    if (choice.p > options.overdispersionLevel || choice.phi <= 1)
        return choice;
    const bool randomEffects = choice.tau > 0 && choice.likelihoodAdditive >= choice.likelihoodMultiplicative;
    choice.model = randomEffects ? DispersionModel::Additive : DispersionModel::Multiplicative;
    return choice;
}

/** The same limits that stats::funnel gives a unit of this size. */
stats::Interval limitsAt(double target, const DispersionChoice& choice, std::int64_t n, double level)
{
    if (choice.model == DispersionModel::None)
        return stats::funnelLimits(target, n, level).value_or(stats::Interval{.low = 0, .high = 1});
    const double s = std::sqrt(target * (1 - target) / static_cast<double>(n));
    const double half = stats::normalWidth(level) * std::sqrt(varianceBy(choice, s));
    return {.low = std::max(0.0, target - half), .high = std::min(1.0, target + half)};
}

std::vector<FunnelCurvePoint> curveOf(double target, const DispersionChoice& choice, std::int64_t most)
{
    std::vector<FunnelCurvePoint> curve;
    const std::int64_t step = std::max<std::int64_t>(1, most / curvePoints);
    for (std::int64_t n = std::max<std::int64_t>(3, step); n <= most + step; n += step)
        curve.push_back({.n = n,
            .inner = limitsAt(target, choice, n, innerLevel),
            .outer = limitsAt(target, choice, n, outerLevel)});
    return curve;
}

UnitStanding standingOf(const stats::FunnelUnit& one, const DispersionChoice& choice)
{
    UnitStanding standing{.unit = one.row, .inner = one.inner, .outer = one.outer};
    standing.z = one.z * one.s / std::sqrt(varianceBy(choice, one.s));
    standing.p = choice.model == DispersionModel::None ? one.p : stats::normalTwoSided(standing.z);
    standing.beyondInner = one.share < one.inner.low || one.share > one.inner.high;
    standing.beyondOuter = one.side != 0;
    return standing;
}

void band(std::vector<UnitStanding>& units, const DistrictOptions& options)
{
    std::vector<std::optional<double>> p;
    for (const UnitStanding& unit : units)
        p.emplace_back(unit.p);
    const auto adjusted = stats::benjaminiHochberg(p);
    for (std::size_t i = 0; i < units.size(); ++i) {
        UnitStanding& unit = units[i];
        unit.pAdjusted = adjusted ? (*adjusted)[i].value_or(1) : 1;
        if (unit.pAdjusted <= options.level)
            unit.band = unit.z < 0 ? UnitBand::Lower : UnitBand::Higher;
        unit.few = unit.band == UnitBand::NotToldApart && unit.share.tally.n < options.fewestRounds;
    }
    // The units come by name; no order within a band pretends to a ranking.
    std::stable_sort(units.begin(), units.end(),
        [](const UnitStanding& a, const UnitStanding& b) { return a.band < b.band; });
}

}

const char* codeName(UnitBand band)
{
    switch (band) {
    case UnitBand::Lower:
        return "lower";
    case UnitBand::Higher:
        return "higher";
    case UnitBand::NotToldApart:
        break;
    }
    return "not-told-apart";
}

UnitFunnel unitFunnel(const DistrictHistory& history, const DistrictOptions& options)
{
    UnitFunnel result;
    std::vector<stats::Tally> rows;
    std::int64_t most = 0;
    stats::Tally whole;
    for (const DistrictUnit& unit : history.units) {
        rows.push_back(unit.span.noCriticalGap());
        whole += rows.back();
        most = std::max(most, rows.back().n);
    }
    result.whole = shareOf(whole);
    const auto seen = std::count_if(rows.begin(), rows.end(), [](stats::Tally row) { return row.n > 0; });
    stats::FunnelOptions wish{.target = {}, .winsorise = winsoriseFor(static_cast<std::size_t>(seen))};
    const auto plain = stats::funnel(rows, wish);
    if (plain)
        result.dispersion = choose(*plain, options);
    wish.model = result.dispersion.model;
    const auto funnel = plain ? stats::funnel(rows, wish) : plain;
    if (!funnel) {
        result.why = whole.n == 0 ? CannotSay::NoData : CannotSay::NoSpread;
        for (std::size_t i = 0; i < rows.size(); ++i) {
            if (rows[i].n > 0)
                result.units.push_back(
                    {.unit = i, .share = shareOf(rows[i]), .outer = {.low = 0, .high = 1}});
        }
        return result;
    }
    for (const stats::FunnelUnit& one : funnel->units) {
        result.units.push_back(standingOf(one, result.dispersion));
        result.units.back().share = shareOf(rows[one.row]);
    }
    band(result.units, options);
    result.curve = curveOf(funnel->target, result.dispersion, most);
    return result;
}

}
