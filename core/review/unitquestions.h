// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/month.h"

namespace cradlepost {

/** What a month's review would ask about the entries of a unit, without the rest of it; see questionsOf. */
Result<std::vector<MonthFinding>> unitQuestions(const UnitHistory& history, const ReviewSpan& span);

}
