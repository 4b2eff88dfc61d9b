// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/json.h"
#include "core/gap/escalation.h"

#include <vector>

namespace cradlepost {

/** Who hears when of a gap that lasts, as a unit sets it. The body of an `escalation` record; the last holds. */
struct EscalationSet
{
    Instant at;
    std::vector<EscalationLevel> levels; ///< at most one for each who; none: nobody hears of it
    bool operator==(const EscalationSet&) const = default;
};

inline constexpr int mostEscalationPercent = 1000;

/** From the owner to the district, later and later, within 1 to 1000 per cent of the time. */
Result<void> checkEscalation(const EscalationSet& set);
Json toBody(const EscalationSet& set);
Result<EscalationSet> escalationFromBody(const Json& body);

}
