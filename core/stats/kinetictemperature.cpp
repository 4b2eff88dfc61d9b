// SPDX-License-Identifier: MIT
#include "core/stats/kinetictemperature.h"

#include "core/stats/check.h"

#include <algorithm>
#include <cmath>

namespace cradlepost::stats {

namespace {

std::string rowText(std::size_t i) { return "row " + std::to_string(i + 1) + ": "; }

}

Result<double> meanKineticTemperature(std::span<const StoreReading> readings, double activation)
{
    constexpr double zero = 273.15;
    if (!(activation > 0 && activation <= 1e6))
        return wrong("the activation dH/R lies in (0, 1e6] kelvin, not " + shortest(activation));
    double warmest = -zero;
    double coldest = 1e9;
    double weights = 0;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const auto& r = readings[i];
        if (!(r.celsius > -zero && r.celsius <= 1000))
            return wrong(rowText(i) + "a temperature cannot be " + shortest(r.celsius) + " degrees C");
        if (!isExposure(r.weight))
            return wrong(rowText(i) + "a duration cannot be " + shortest(r.weight));
        weights += r.weight;
        if (r.weight <= 0)
            continue;
        warmest = std::max(warmest, r.celsius);
        coldest = std::min(coldest, r.celsius);
    }
    if (!(weights > 0))
        return undefined("no reading stands for any time, so there is no mean temperature");
    // Relative to the warmest reading, so that nothing underflows.
    const double top = activation / (warmest + zero);
    double sum = 0;
    for (const auto& r : readings) {
        // One that stands for no time may be warmer than `warmest`, by more than an exponential can hold.
        if (r.weight > 0)
            sum += r.weight * std::exp(top - activation / (r.celsius + zero));
    }
    const double inverse = 1 / (warmest + zero) - std::log(sum / weights) / activation;
    return std::clamp(1 / inverse - zero, coldest, warmest);
}

}
