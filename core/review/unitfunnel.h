// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/districthistory.h"
#include "core/review/districtoptions.h"
#include "core/stats/funnel.h"

namespace cradlepost {

/** Where a unit stands against the whole: no ranking, only what can be told apart. */
enum class UnitBand { Lower, NotToldApart, Higher };

const char* codeName(UnitBand band);

struct UnitStanding
{
    std::size_t unit = 0; ///< position in DistrictHistory::units
    Share share; ///< shifts without a critical gap, Wilson 95 %
    stats::Interval inner; ///< 95 % limits of the funnel at its number of rounds
    stats::Interval outer; ///< 99.8 %
    double z = 0; ///< by the model that the limits use
    double p = 1; ///< two-sided: exact for chance alone, else normal with the wider spread
    double pAdjusted = 1; ///< Benjamini-Hochberg over the units
    bool beyondInner = false;
    bool beyondOuter = false;
    UnitBand band = UnitBand::NotToldApart;
    bool few = false; ///< fewer rounds than DistrictOptions::fewestRounds, and not told apart
};

/** How the limits were chosen: what was tried and what the data spoke for. */
struct DispersionChoice
{
    stats::DispersionModel model = stats::DispersionModel::None;
    double p = 1; ///< of the test for more spread than chance
    double phi = 1; ///< from winsorised z
    double tau = 0; ///< standard deviation between units, a share
    double likelihoodMultiplicative = 0; ///< log-likelihood of the winsorised z
    double likelihoodAdditive = 0;
};

/** Limits at a number of rounds, for the curves. */
struct FunnelCurvePoint
{
    std::int64_t n = 0;
    stats::Interval inner;
    stats::Interval outer;
};

/** The share of shifts without a critical gap by unit, against the district's. */
struct UnitFunnel
{
    Share whole;
    DispersionChoice dispersion;
    std::vector<UnitStanding> units; ///< with a round; lower, not told apart, higher; by name within
    std::vector<FunnelCurvePoint> curve; ///< by rising n
    std::optional<CannotSay> why; ///< no funnel: NoData, or NoSpread (all or none without a gap)
};

/**
 * Units are judged by Spiegelhalter's funnel (core/stats/funnel.h). Limits are of chance alone unless the
 * chi-square test says that units spread more. Then both wider models are compared by the likelihood of the
 * winsorised z, normal with variance phi (multiplicative) or 1 + tau^2/s^2 (random effects), one parameter
 * each, and the likelier is used. At least the outermost unit on each side is winsorised. A unit is told
 * apart when its adjusted p is at or below the level.
 */
UnitFunnel unitFunnel(const DistrictHistory& history, const DistrictOptions& options);

}
