// SPDX-License-Identifier: MIT
#pragma once

#include "app/demo/random.h"
#include "core/round/walk.h"

#include <functional>

namespace cradlepost::demo {

/** Seconds from the start of a round to each answer: in order, 3 to 20 s apart at the usual pace. */
std::vector<int> walkingTimes(
    const Checklist& checklist, const std::vector<std::size_t>& asked, double pace, Random& random);
/** The same of somebody who does not walk: all of it in about 70 seconds. */
std::vector<int> typingTimes(std::size_t items, Random& random);

/** What is answered to an item, when the round will be finished at a moment. */
using Answering = std::function<Answer(std::size_t position, Instant finish)>;

/** Walks a draft from its start, one answer at each of `seconds`, through the same checks as the window's. */
Result<RoundRecord> walked(const Checklist& checklist, const TimeZone& zone, Draft draft,
    const std::vector<int>& seconds, const Answering& answering);

/** When such a round is finished. */
Instant finishOf(Instant started, const std::vector<int>& seconds);

}
