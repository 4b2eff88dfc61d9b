// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/district.h"

namespace cradlepost::test {

/** A unit by hand: `clear` of `n` rounds without a critical gap, alternating as evenly as they go. */
struct HandMadeUnit
{
    std::string name;
    int clear = 0;
    int n = 0;
    std::string level = "community";
};

/**
 * A district by hand for October 2026, one shift a day called "day", every round done, with the items
 * "oxytocin" (critical, count), "suction" (critical, measure) and "light" (minor, confirm).
 */
DistrictHistory handMadeDistrict(const std::vector<HandMadeUnit>& units);

}
