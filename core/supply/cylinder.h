// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/checklist/checklist.h"

namespace cradlepost {

enum class PressureUnit {
    Psi,
    Bar,
    Kilopascal,
    Megapascal,
    KilogramForce
}; ///< the last for one square centimetre

/**
 * The same pressure in another unit, to the nearest thousandth. psi = 6894.757293168 Pa and kgf/cm2 =
 * 98066.5 Pa (both exact by definition), bar = 100 000 Pa.
 */
Decimal convertPressure(Decimal value, PressureUnit from, PressureUnit to);

/**
 * The lowest gauge reading, in the unit of the size, at which the cylinder still gives `minutes` at `flow`
 * L/min down to its residual, rounded up to a thousandth: gauge = residual + flow x minutes / factor. Fails
 * on minutes below 0 or above a year, flow or litres for a unit not above 0.
 */
Result<Decimal> lowestGauge(const CylinderSize& size, std::chrono::minutes minutes, Decimal flow);
/** Up to the next mark of a gauge whose marks are `division` apart, above 0. */
Decimal upToMark(Decimal gauge, Decimal division);

/** "psi", "bar", "kPa", "MPa", "kgf/cm2". */
const char* codeName(PressureUnit unit);
std::optional<PressureUnit> pressureUnitFromCode(std::string_view code);

}
