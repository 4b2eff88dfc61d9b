// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/calendar.h"
#include "core/round/answer.h"

namespace cradlepost {

// What is typed on a round, read as an answer. Every error says how to write it.

/** "26.4" or "26,4" for a measure; refused outside the plausible band. */
Result<Measured> readMeasured(const Item& item, std::string_view text);

/**
 * A clock time as "19:24", "1924", "924" or "9:24": the latest moment not after `now` at which the wall clock
 * showed it, so that 23:50 typed at 00:10 means yesterday.
 */
Result<RunningSince> readSince(std::string_view text, Instant now, const TimeZone& zone);

/**
 * Lots separated by commas, each "QUANTITY" or "QUANTITY EXPIRY"; an expiry is 2027-03-31, 2027-03 or 03/2027,
 * a month meaning its last day (as printed on packs, common practice). "0" is none at all.
 */
Result<Counted> readCounted(const Item& item, std::string_view text);
/** The same in the other direction, to show an answer again: "6 2027-03-31, 4". */
std::string counted(const Counted& answer);

/** A whole number from 0 to 100000. */
Result<int> readPieces(std::string_view text);

}
