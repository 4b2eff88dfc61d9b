// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <random>

namespace cradlepost::stats {

/** The same numbers on every machine: the engine is fixed by the standard, its distributions are not. */
class Dice
{
public:
    explicit Dice(std::uint64_t seed)
        : m_engine(seed)
    {
    }
    /** In [0, 1). */
    double share() { return static_cast<double>(m_engine() >> 11) * 0x1p-53; }
    /** In [low, high]. */
    std::int64_t whole(std::int64_t low, std::int64_t high)
    {
        return low + static_cast<std::int64_t>(m_engine() % static_cast<std::uint64_t>(high - low + 1));
    }
    bool chance(double p) { return share() < p; }
    /** Events among n trials. */
    std::int64_t events(std::int64_t n, double p)
    {
        std::int64_t count = 0;
        for (std::int64_t i = 0; i < n; ++i)
            count += chance(p) ? 1 : 0;
        return count;
    }

private:
    std::mt19937_64 m_engine;
};

}
