// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/month.h"

#include <random>

namespace cradlepost::test {

/**
 * A made ward in which nothing ever changes: each thing fails and is mended with the same chances in every
 * shift, so that gaps last over several shifts and neighbouring rounds are alike. The chances are those of a
 * usual unit: about 2 % of critical, 9 % of major and 12 % of minor items are gaps; a critical one lasts two
 * shifts, a minor one eight (our own guess, no source). Readings wander from shift to shift (first-order
 * autoregression, 0.85). One round in twenty is missed.
 */
struct StableUnit
{
    UnitHistory history;
    ReviewSpan span; ///< a month of 31 days, the look-back before it
};

/** What a made ward does otherwise from a day on; for tests that something is found. */
struct Worsening
{
    int daysBeforeEnd = 0;
    bool nightsOnly = false;
    double addedShare = 0; ///< gaps of every item on top of the usual
};

StableUnit stableUnit(unsigned seed);
StableUnit worsened(unsigned seed, const Worsening& worsening);

}
