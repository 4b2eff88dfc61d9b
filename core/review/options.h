// SPDX-License-Identifier: MIT
#pragma once

#include "core/checklist/checklist.h"
#include "core/stats/signalrules.h"

namespace cradlepost {

/** How much a gap weighs by its severity: our own weights, to be set by the site. */
struct SeverityWeights
{
    double critical = 3;
    double major = 2;
    double minor = 1;
    [[nodiscard]] double of(Severity severity) const;
};

/** What can be set of a review. The defaults of rules and levels are those of the false-alarm test. */
struct ReviewOptions
{
    SeverityWeights weights;
    int fewestRounds = 10; ///< below it a span is too little to speak of
    int fewestWeeks = 8; ///< with a round, to set the limits of the course
    /** A round is in time when it is finished and recorded before this share of its shift has gone by. */
    double inTimeShare = 0.5;
    double leastSecondsPerItem = 2; ///< nobody can look, reach and answer faster: our own floor
    double strictLevel = 0.005; ///< for tests of shifts and weekdays that are spoken of
    bool rebaseAtChanges = false; ///< charts set their limits anew where a change idea starts
    /**
     * Rules of the weekly charts: fewer and stricter than usual since gaps last over several shifts, so that
     * neighbouring weeks are alike, and since several charts are read together. All sentences of a month
     * taken together tell of a change that is none in about 2 % of months (tests/core/review/test_month.cpp).
     */
    stats::RuleSet courseRules{
        .twoOfThree = false, .fourOfFive = false, .trend = false, .runLength = 12, .width = 4.25};
};

}
