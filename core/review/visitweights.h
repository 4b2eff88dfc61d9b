// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/districtoptions.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace cradlepost {

/** One weight under its stable code, as in the table visit-weights. */
struct WeightValue
{
    const char* code = "";
    double value = 0;
    bool isWhole = false; ///< "up to so many"
    bool operator==(const WeightValue&) const = default;
};

/** Largest weight that a supervisor may set; the least is 0, which leaves a reason out. */
inline constexpr double mostWeight = 100;

/** All of them, in their order. */
std::vector<WeightValue> weightsOf(const VisitWeights& weights);
/** Whether `code` is known and the value within 0..mostWeight, and whole where it must be; else nothing
 * changes. */
bool setWeight(VisitWeights& weights, std::string_view code, double value);

/** "critical-gap=3 fell=0": those that are not as they come; empty when all are. */
std::string weightsText(const VisitWeights& weights);
/** The weights of such a text; nothing when it is none. */
std::optional<VisitWeights> weightsFromText(std::string_view text);

}
