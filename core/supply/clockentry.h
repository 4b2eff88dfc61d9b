// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/calendar.h"

#include <string_view>

namespace cradlepost {

// A clock time as it is typed, "19:24", "1924", "924" or "9:24", read at `now`. Errors say how to write it.

/** The latest moment not after `now`: when something happened. Nothing typed means now. */
Result<Instant> readPast(std::string_view text, Instant now, const TimeZone& zone);
/** The next moment after `now`, an hour back included: when a birth is expected that may be overdue. */
Result<Instant> readComing(std::string_view text, Instant now, const TimeZone& zone);

}
