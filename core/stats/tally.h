// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

namespace cradlepost::stats {

/** x events among n observations; 0 <= x <= n. */
struct Tally
{
    std::int64_t x = 0;
    std::int64_t n = 0;
    auto operator<=>(const Tally&) const = default;
};

/** Two ends of an interval or of a pair of limits, in the unit of the estimate. */
struct Interval
{
    double low = 0;
    double high = 0;
};

/** The usual two-sided level of an interval. */
inline constexpr double usualLevel = 0.95;

}
