// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

namespace cradlepost {

/** A reading with at most three decimals, held as thousandths so that it is stored and compared exactly. */
struct Decimal
{
    std::int64_t thousandths = 0;

    auto operator<=>(const Decimal&) const = default;

    [[nodiscard]] double toDouble() const { return static_cast<double>(thousandths) / 1000.0; }
    /** Shortest form with a point and no trailing zeros: "26.4", "28", "-0.5". */
    [[nodiscard]] std::string toString() const;

    /**
     * Reads "26.4", "-0.5", "28" or "26,4" (decimal comma, as many keyboards give it).
     * Fails on anything else, on more than three decimals and beyond +-10^12.
     */
    [[nodiscard]] static Result<Decimal> parse(std::string_view text);
};

}
