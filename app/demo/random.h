// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

namespace cradlepost::demo {

/**
 * SplitMix64 (Steele, Lea, Flood: Fast Splittable Pseudorandom Number Generators, 2014) with distributions of
 * our own: those of the standard library differ from one to the next, and the district must not.
 */
class Random
{
public:
    explicit Random(std::uint64_t seed)
        : m_state(seed)
    {
    }
    /** A stream of its own for what `name` names, so that a change to one unit leaves the others alone. */
    static Random named(std::string_view name);

    std::uint64_t next();
    /** [0, 1) */
    double real();
    bool chance(double probability) { return real() < probability; }
    /** Whole number in [low, high], both included. */
    int between(int low, int high);
    /** Bell-shaped about 0 with standard deviation `sd`, never beyond 3.5 of them: a sum of four uniforms. */
    double bell(double sd);
    template <class T> const T& pick(const std::vector<T>& from)
    {
        return from[static_cast<std::size_t>(between(0, static_cast<int>(from.size()) - 1))];
    }

private:
    std::uint64_t m_state;
};

}
