// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <span>

namespace cradlepost::stats {

/** A reading of a store and how long it stands for. */
struct StoreReading
{
    double celsius = 0;
    double weight = 1; ///< duration in any unit, or 1 for evenly spaced readings
};

/** dH/R for the customary 83.144 kJ/mol with R = 8.3144 J/(mol K), in kelvin. */
inline constexpr double customaryActivation = 10'000;

/**
 * Mean kinetic temperature in degrees C: the one temperature that would have done the harm that the readings
 * did, T = (dH/R)/(-ln(sum w e^(-(dH/R)/T_i)/sum w)) - 273.15 with T_i in kelvin. It is never below the mean
 * and never above the maximum. It excuses no excursion, and it says nothing on freezing or on vaccine vial
 * monitors.
 *
 * Undefined without readings or when no weight is above 0; readings at or below -273.15 or above 1000 and
 * weights below 0 are refused, activation in (0, 1e6] K. Source: Haynes JD (1971) J Pharmaceutical Sciences
 * 60:927-929.
 */
Result<double> meanKineticTemperature(
    std::span<const StoreReading> readings, double activation = customaryActivation);

}
