// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <span>
#include <vector>

/**
 * Named rules for signals on a chart with limits. They work on z = (plotted - centre)/sigma, so that varying
 * limits need no special case. Sources: Western Electric, Statistical Quality Control Handbook (1956), for
 * the four zone rules; Nelson LS (1984) J Quality Technology 16:237-239 for trend, alternation, hugging and
 * mixture and for the run of nine.
 */
namespace cradlepost::stats {

enum class SignalRule {
    BeyondLimit, ///< one point beyond the limits
    TwoOfThree, ///< two of three successive points beyond 2 sigma on one side
    FourOfFive, ///< four of five successive points beyond 1 sigma on one side
    RunOnOneSide, ///< `runLength` successive points on one side of the centre
    Trend, ///< `trendLength` successive points, each higher (or each lower) than the one before
    Alternating, ///< fourteen successive points going up and down in turn
    Hugging, ///< fifteen successive points within 1 sigma
    Mixture, ///< eight successive points beyond 1 sigma, on both sides
};

/** Stable lower-case name of a rule ("two-of-three"). */
const char* ruleName(SignalRule rule);

/** Which rules speak. The first five are on: adding rules multiplies false alarms. */
struct RuleSet
{
    bool beyondLimit = true;
    bool twoOfThree = true;
    bool fourOfFive = true;
    bool runOnOneSide = true;
    bool trend = true;
    bool alternating = false;
    bool hugging = false;
    bool mixture = false;
    int runLength = 8; ///< Western Electric; Nelson takes 9
    int trendLength = 6; ///< points, not steps
    double width = 3; ///< of the limits, in sigma
};

/** One signal with its reason: which rule, over which points, on which side. */
struct Signal
{
    SignalRule rule = SignalRule::BeyondLimit;
    std::size_t at = 0; ///< the point that completes the pattern; it is itself in the zone
    std::size_t from = 0; ///< the first point of the pattern; of a run that has gone on, where it began
    int side = 0; ///< +1 above or rising, -1 below or falling, 0 neither
    bool operator==(const Signal&) const = default;
};

/** Lengths below 2 and a width that is not above 0 are refused. */
Result<void> checkRules(const RuleSet& rules);

/**
 * All signals, by point and then by rule; positions count from 0 in `z`. A point exactly on a line (to 1e-9
 * sigma) is not beyond it. A point exactly on the centre belongs to neither side and ends a run; equal
 * neighbours end a trend. A window cut short by the start of the series may fire if it holds enough points.
 * Every further point that carries a pattern on signals again.
 */
std::vector<Signal> findSignals(std::span<const double> z, const RuleSet& rules);

}
