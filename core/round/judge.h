// SPDX-License-Identifier: MIT
#pragma once

#include "core/round/answer.h"
#include "core/round/reason.h"

#include <map>

namespace cradlepost {

/** Item id to the id of the limit set that the site has picked; items not named use their first set. */
using ChosenLimits = std::map<std::string, std::string>;

/** What the answers are held against. */
struct JudgeContext
{
    Instant reference; ///< finish of the round, the next expected birth, or now
    Date lastDay; ///< local date on which the shift ends: stock must be usable on it
    ChosenLimits limits;
};

struct Judgement
{
    Outcome outcome = Outcome::NotChecked;
    std::optional<Reason> reason; ///< there for Gap and NotChecked
};

/** Holds one answer against its item. Pure. An answer that checkAnswer refuses counts as not checked. */
Judgement judge(const Item& item, const Answer& answer, const JudgeContext& context);

/** The limit set in force for a measure. */
const LimitSet& limitsFor(const Item& item, const MeasureRule& rule, const ChosenLimits& chosen);

/** Whole minutes of gas left down to the safe residual, never negative, rounded down. flow in L/min, above 0. */
std::int64_t cylinderMinutes(const CylinderSize& size, Decimal gauge, Decimal flow);

/** Smallest whole ratio of pieces to pieces a kit, and the position of the first part that limits. */
struct WholeKits
{
    int kits = 0;
    std::size_t limitingPart = 0;
};
WholeKits wholeKits(const KitRule& rule, const KitCounted& counted);

/** Pieces still in date on `day`. A lot without a date counts as in date. */
int usablePieces(const Counted& counted, Date day);

}
