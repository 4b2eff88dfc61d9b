// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/transfer.h"

#include <cstdint>

namespace cradlepost {

/** What makes a visit needed, in points: our own weights, to be set by the district, shown with the order. */
struct VisitWeights
{
    double criticalGap = 3; ///< each critical gap open at the end of the span ...
    int mostCriticalGaps = 4; ///< ... up to so many
    double criticalWeek = 1; ///< each week that the oldest of them has stood ...
    double mostWeeks = 4; ///< ... up to so many
    double oftenMissing = 3; ///< each critical item missing in more than `oftenShare` of rounds ...
    int mostOftenMissing = 2; ///< ... up to so many
    double below = 6; ///< clearly lower than the district
    double fell = 4; ///< fewer shifts without a critical gap than before, more than chance explains
    double silentWeek = 3; ///< each week in a row without a round ...
    double mostSilentWeeks = 4; ///< ... up to so many
    double question = 1; ///< each question about the entries ...
    int mostQuestions = 3; ///< ... up to so many
    double runsOut = 2; ///< each stock item that is out or will not last until its delivery ...
    int mostRunningOut = 3; ///< ... up to so many
};

struct DistrictOptions
{
    VisitWeights weights;
    int fewestRounds = 20; ///< below it a unit's share is too little to speak of
    double level = 0.05; ///< of adjusted p, for what is spoken of
    double overdispersionLevel = 0.05; ///< of the chi-square test, to let limits be widened
    double oftenShare = 0.15; ///< a critical item missing in more than this, by its lower limit, is often
    int silentDays = 7; ///< so many days in a row without a round are a silence
    double lowDone = 0.8; ///< fewer rounds of those due, by the upper limit, are too few
    double oftenLate = 0.1; ///< late rounds of those by screen, by the lower limit
    TransferRules transfers;
    // The visit's sample: a room at `good` of its items should pass, one at `poor` should not.
    double sampleGood = 0.95;
    double samplePoor = 0.75;
    double sampleRisk = 0.1; ///< most of either error
};

}
