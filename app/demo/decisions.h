// SPDX-License-Identifier: MIT
#pragma once

#include "app/demo/gapbook.h"
#include "app/demo/random.h"
#include "app/demo/story.h"

namespace cradlepost::demo {

/** What a ward decides about its open gaps after a round at `now`: who mends them, by when, a remark. */
std::vector<GapAction> decide(const UnitPlan& plan, const Stories& stories, const GapBook& book, Date today,
    Instant now, Random& random);

/** The same on the day of writing, so that the first page has owners to show. */
std::vector<GapAction> decideNow(const UnitPlan& plan, const GapBook& book, Instant now, Random& random);

}
