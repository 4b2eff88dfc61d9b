// SPDX-License-Identifier: MIT
#pragma once

#include "app/demo/district.h"
#include "core/round/answer.h"

namespace cradlepost::demo {

/** What a ward uses of one thing, and up to how much the store fills its shelf once a week. Pieces. */
struct Supply
{
    double perDay = 0;
    int fill = 0;
};

/** What the district's store says of an item. */
struct StoreNews
{
    bool none = false; ///< it has none and brings none
    std::optional<Lot> gives{}; ///< more than anybody asked for
};

/** Of a thing that is counted; `par` is what a round wants to see. */
Supply supplyOf(const std::string& item, int par, const UnitPlan& plan);
/** Of a part of a kit of which a round wants to see `par`. */
Supply supplyOf(const KitPart& part, int par, const UnitPlan& plan);

/** Pieces of an item that one birth uses; 0 when births do not use it. */
int usedAtBirth(const std::string& item);

/** Besides births: the chance in a shift that some are used, and the most at a time. */
double usedNowAndThen(int par);
int mostAtATime(int par);

/** The day of the week on which the store delivers to a unit. */
std::chrono::weekday deliveryDay(const UnitPlan& plan);

}
