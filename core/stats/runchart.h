// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <optional>
#include <span>

namespace cradlepost::stats {

/** Fewer useful points than this carry no verdict. */
inline constexpr int fewestUsefulPoints = 10;

enum class RunVerdict {
    TooFew, ///< fewer than ten useful points
    NoShift, ///< both within what chance gives
    Shift, ///< a run too long or crossings too few
};

struct RunChart
{
    double centre = 0;
    int total = 0;
    int useful = 0; ///< points not exactly on the centre
    int longestRun = 0;
    int longestRunLimit = 0; ///< a longer run is a signal; reaching it is none
    int crossings = 0;
    int crossingsLimit = 0; ///< fewer crossings are a signal; reaching it is none
    bool runTooLong = false;
    bool crossingsTooFew = false;
    RunVerdict verdict = RunVerdict::TooFew;
};

/**
 * Run chart about the median, or about a centre frozen from a baseline. Points exactly on the centre are
 * dropped (not a break); n counts the useful rest. Signal if the longest run exceeds round(log2 n) + 3, or if
 * the crossings are fewer than the lower 5 % point of Binomial(n - 1, 1/2). Source: Anhoej J, Olesen AV
 * (2014) PLoS ONE 9(11):e113825; Anhoej J (2015) PLoS ONE 10(3):e0121349.
 *
 * Edges: no values, or all on the centre, is Undefined; below ten useful points the figures come with TooFew.
 */
Result<RunChart> runChart(std::span<const double> values, std::optional<double> centre = {});

struct RunChartRisk
{
    double run = 0; ///< chance that the longest run signals
    double crossings = 0; ///< chance that the crossings signal
    double either = 0;
};

/**
 * How often n useful points that are fair coin tosses signal all the same; exact, by counting sequences by
 * (crossings, current run) with a cap on the run. 10 <= n <= 400. Sides about a median of the same data are
 * only nearly fair tosses. Source of the joint distribution: Wentzel-Larsen T, Anhoej J (2019, from memory)
 * PLoS ONE 14(10):e0223233.
 */
Result<RunChartRisk> runChartRisk(int n);

}
