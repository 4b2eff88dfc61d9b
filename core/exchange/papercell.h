// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/calendar.h"
#include "core/round/answer.h"

namespace cradlepost {

/**
 * What stands in a cell of the paper backlog, as an answer; it is refused as on a round that is walked here.
 * Nothing: not checked. "g" or "g:absent" and the other reasons: a gap. "n": does not apply. Else by the kind
 * of the item: confirm "m"; measure "26.4"; since "19:24", the last such time before `finished`; steps "pass"
 * or the id of the step that failed; count "12@2027-03-31;5" (a lot without a date: "12"); kit "10/4/6",
 * pieces of each part; cylinder "1500", "1500/5" or "1500/5/us-e", that is gauge, flow in L/min and size,
 * where what is left out is as in the checklist.
 */
Result<Answer> readPaperCell(const Item& item, std::string_view text, Instant finished, const TimeZone& zone);

/** What a cell of the item may hold, for the guide: "m | g | g:REASON | n". */
std::string paperCellForms(const Item& item);

}
