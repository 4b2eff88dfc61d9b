// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/equipment.h"

namespace cradlepost {

enum class InstrumentVerdict { Good, Off };

struct InstrumentCheck
{
    InstrumentVerdict verdict = InstrumentVerdict::Good;
    Decimal difference; ///< read less true: grams or degrees C
    Decimal limit; ///< largest difference allowed either way
    bool operator==(const InstrumentCheck&) const = default;
};

/** One division of a baby scale, grams. Common practice, no source. */
inline constexpr int scaleDivision = 10;
/** Room thermometer, degrees C. Common practice, no source. */
inline constexpr Decimal roomThermometerLimit{1000};
/** Electronic body thermometer from 35.5 to 42.0 degrees C: EN 12470-3:2000 (from memory). */
inline constexpr Decimal bodyThermometerLimit{100};

/** Within one division is good. */
InstrumentCheck judgeScale(const ScaleChecked& check, int division = scaleDivision);
InstrumentCheck judgeThermometer(const ThermometerChecked& check, Decimal limit = roomThermometerLimit);

const char* codeName(InstrumentVerdict verdict);

}
