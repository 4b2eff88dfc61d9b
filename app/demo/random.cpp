// SPDX-License-Identifier: MIT
#include "app/demo/random.h"

namespace cradlepost::demo {

Random Random::named(std::string_view name)
{
    std::uint64_t seed = 14695981039346656037U; // FNV-1a
    for (const char c : name)
        seed = (seed ^ static_cast<unsigned char>(c)) * 1099511628211U;
    Random random(seed);
    random.next(); // names that differ in one letter part ways
    return random;
}

std::uint64_t Random::next()
{
    m_state += 0x9e3779b97f4a7c15U;
    std::uint64_t z = m_state;
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9U;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebU;
    return z ^ (z >> 31);
}

double Random::real() { return static_cast<double>(next() >> 11) * 0x1.0p-53; }

int Random::between(int low, int high)
{
    const auto span = static_cast<std::uint64_t>(high - low + 1);
    return low + static_cast<int>(next() % span);
}

double Random::bell(double sd)
{
    constexpr double widen = 1.7320508075688772; // the sum of four uniforms has variance 1/3
    return (real() + real() + real() + real() - 2.0) * widen * sd;
}

}
