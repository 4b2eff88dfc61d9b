// SPDX-License-Identifier: MIT
#include "core/stats/check.h"

#include <array>
#include <charconv>

namespace cradlepost::stats {

std::string shortest(double value)
{
    std::array<char, 32> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value).ptr;
    return {text.data(), end};
}

Result<void> checkLevel(double level)
{
    if (!(level > 0 && level < 1))
        return wrong("a level lies strictly between 0 and 1, not " + shortest(level));
    return {};
}

Result<void> checkTally(Tally tally)
{
    if (!isSound(tally))
        return wrong("a tally needs 0 <= x <= n, not x = " + std::to_string(tally.x)
            + ", n = " + std::to_string(tally.n));
    return {};
}

Result<void> checkTallies(std::span<const Tally> tallies)
{
    std::int64_t total = 0;
    for (std::size_t i = 0; i < tallies.size(); ++i) {
        if (!isSound(tallies[i]))
            return wrong("row " + std::to_string(i + 1) + ": " + checkTally(tallies[i]).error().message);
        total += tallies[i].n;
        if (total > maxCount)
            return wrong("row " + std::to_string(i + 1) + ": the sum of n is beyond 2^53");
    }
    return {};
}

Result<void> checkInside(double value, const char* what)
{
    if (!(value > 0 && value < 1))
        return wrong(std::string(what) + " lies strictly between 0 and 1, not " + shortest(value));
    return {};
}

Result<void> checkFinite(double value, const char* what)
{
    if (!isSensible(value))
        return wrong(std::string(what) + " is not a number of sensible size: " + shortest(value));
    return {};
}

Result<void> checkFinite(std::span<const double> values, const char* what)
{
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (!isSensible(values[i]))
            return wrong(
                "row " + std::to_string(i + 1) + ": " + checkFinite(values[i], what).error().message);
    }
    return {};
}

Result<void> checkNotNegative(std::span<const double> values, const char* what)
{
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (!(values[i] >= 0 && values[i] <= largestValue))
            return wrong("row " + std::to_string(i + 1) + ": " + what + " is " + shortest(values[i])
                + ", it must be a number of at least 0");
    }
    return {};
}

}
