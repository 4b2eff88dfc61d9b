// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/districthistory.h"
#include "core/store/store.h"

namespace cradlepost {

/** Whether each unit's entries are looked into as well: that reads half a year of every round. */
enum class EntryQuestions { Ask, LeaveOut };

/**
 * What a comparison of all units over `span` reads: each unit's rounds of the year up to the span in one pass
 * over its packed months, its entries looked into by other threads meanwhile. Shifts that begin after `now` are left out.
 */
Result<DistrictHistory> districtHistory(
    const Store& store, const ReviewSpan& span, Instant now, EntryQuestions questions = EntryQuestions::Ask);

}
