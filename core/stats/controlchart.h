// SPDX-License-Identifier: MIT
#pragma once

#include "core/stats/signalrules.h"
#include "core/stats/tally.h"

#include <optional>
#include <vector>

namespace cradlepost::stats {

/** What all charts with limits share. Rows count from 0 in the caller's table. */
struct ChartOptions
{
    /** Rows at which the limits are set anew, rising; row 0 always begins the first phase. Empty: one phase.
     */
    std::vector<std::size_t> phaseStarts;
    /** How many rows of each phase set its limits, which then stay fixed for the rest of it. 0: all of them.
     */
    std::size_t baselineRows = 0;
    /** Rows, rising, that are plotted and judged but set no limits (a known special cause). */
    std::vector<std::size_t> excluded;
    /** A centre given from outside; the baseline then sets none. */
    std::optional<double> fixedCentre;
    RuleSet rules;
};

enum class LimitsState {
    Set,
    NoSpread, ///< centre at an end of the scale, or all values equal: no limits, nothing can signal
    TooFewPoints, ///< the spread between points cannot be seen from fewer than two of them
    NoData, ///< no point in this phase
};

const char* limitsStateName(LimitsState state);

struct ChartPhase
{
    std::size_t begin = 0; ///< first row
    std::size_t end = 0; ///< one past the last row
    std::size_t baselinePoints = 0; ///< how many points set the limits
    double centre = 0;
    double dispersion = 1; ///< p-prime: sigma z; XmR: mean moving range; otherwise 1
    LimitsState state = LimitsState::NoData;
};

struct ChartPoint
{
    std::size_t row = 0;
    std::size_t phase = 0;
    double value = 0; ///< as plotted
    double centre = 0;
    double sigma = 0; ///< of this point; 0 when there are no limits
    std::optional<Interval> limits; ///< cut to the scale
    bool lowerCut = false; ///< the lower limit fell off the scale: nothing can signal below
    bool upperCut = false;
    std::optional<double> z; ///< (value - centre)/sigma; none without limits
};

/** Rows without an observation have no point: they break the line and count in no run. */
struct ControlChart
{
    std::vector<ChartPoint> points;
    std::vector<ChartPhase> phases;
    std::vector<Signal> signals; ///< `at` and `from` are rows; rules start afresh in each phase
};

/** Cuts `rows` into phases; refuses starts and exclusions that do not rise or lie outside. */
Result<std::vector<ChartPhase>> planPhases(std::size_t rows, const ChartOptions& options);

/** True when a row of a phase helps to set its limits. */
bool isBaseline(const ChartPhase& phase, std::size_t row, const ChartOptions& options);

/** Runs the rules over the points of each phase and writes `chart.signals`. */
void judge(ControlChart& chart, const RuleSet& rules);

/** Limits centre +- width * sigma, cut to [floor, ceiling]; fills limits, cuts and z. sigma > 0. */
void setLimits(ChartPoint& point, double sigma, double width, double floor, double ceiling);

}
