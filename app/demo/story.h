// SPDX-License-Identifier: MIT
#pragma once

#include "app/demo/district.h"
#include "app/demo/supply.h"
#include "core/round/changeidea.h"

#include <optional>

namespace cradlepost::demo {

// What happens in Larkmere in the 18 months up to the day of writing. Each of these can be found in the data:
//
// Sorrel Hill  busy and decent. The heating element of its warmer is dead for three weeks in the last two
// months:
//              the function test fails all that time, until the third day there is no other warmer either.
//              Now: the warmer was switched on 18 minutes ago, the delivery kits are short of cord ties, the
//              size 0 mask does not fit, the wall clock is wrong. Not ready.
// Tarn Ferry   for two calendar months the round is yesterday's again, all of it in about 70 seconds. A month ago the
//              store gave it far more vitamin K than it asked for, and magnesium sulphate that ends in two months.
// Quillmere    gets better, slowly: from about 70 % ready to about 93 %.
// Ostrey       does not report for a whole calendar month.
// Penny Weir   the suction fails often; oxytocin and vitamin K run out at the end of each month; from one day
//              on the nights are worse than the days. By now the store has brought no vitamin K for weeks.
// Ash Lock     small. A round in four shifts of ten, and those are honest. For a fortnight without power they are
//              on paper, and entered when the power is back.
// Hallow Down  the room is too cold in the cold months; the fridge is too warm for four days.
// Everywhere   one round in a hundred is put right a shift later. At Sorrel Hill and Tarn Ferry somebody looks again
//              now and then: the two agree, but not where rounds are copied. Quillmere and Penny Weir note what they
//              try.
// Marl Gate    readings end in .0 and .5 far too often, and rounds are recorded late.

struct Span
{
    Date from;
    Date to; ///< exclusive
    [[nodiscard]] bool contains(Date day) const { return from <= day && day < to; }
};

/** When they happen. */
struct Stories
{
    Date first; ///< the first day of all
    Date today;
    Span warmerBroken; ///< Sorrel Hill
    Span copied; ///< Tarn Ferry
    Span silent; ///< Ostrey
    Date nightsWorse; ///< Penny Weir, from this day on
    Span fridgeWarm; ///< Hallow Down
    Span onPaper; ///< Ash Lock
};

/** `today`: the day of the shift that is on; `months` of rounds before it. */
Stories storiesUpTo(Date today, int months);

/** Which shift it is. */
struct Moment
{
    Date day;
    bool night = false;
};

/** How one thing behaves over one shift. */
struct Risk
{
    double onset = 0; ///< chance that it fails, when it is well
    double mend = 1; ///< chance that it is mended, when it is not
    std::optional<int> which{}; ///< the step or part that fails, where the story says so
};

Risk riskOf(const UnitPlan& plan, const Item& item, const Moment& moment, const Stories& stories);

/** What the season, the hour or a broken fridge adds to a reading, in its unit. */
double offsetOf(const UnitPlan& plan, const Item& item, const Moment& moment, const Stories& stories);

/** What the store says to a unit of an item on a day. */
StoreNews newsOf(const UnitPlan& plan, const std::string& item, Date day, const Stories& stories);

/** Whether the round of that day is yesterday's again. */
bool isCopied(const UnitPlan& plan, Date day, const Stories& stories);
/** Whether the station has no power on that day, so that rounds go on paper. */
bool isOnPaper(const UnitPlan& plan, Date day, const Stories& stories);
/** Whether somebody else looks at some of the rounds again. */
bool hasSpotChecks(const UnitPlan& plan);
/** What the unit tries, each from its first day on. */
std::vector<ChangeIdea> changeIdeas(const UnitPlan& plan, const Stories& stories);
bool isSilent(const UnitPlan& plan, Date day, const Stories& stories);
/** Whether the unit has not done the round of the shift that is on. */
bool isBehindNow(const UnitPlan& plan);
/** Whether the unit writes its rounds down long after they were due. */
bool isLate(const UnitPlan& plan);

/** What was decided about the dead heating element so many days after it was found. */
struct Decision
{
    int day = 0;
    int dueDay = 0;
    const char* owner = "";
    const char* remark = "";
};
const std::vector<Decision>& warmerDecisions();

}
