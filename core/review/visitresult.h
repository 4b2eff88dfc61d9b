// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/calendar.h"
#include "core/base/json.h"

#include <optional>
#include <vector>

namespace cradlepost {

/** What a visit's sample decides; the rule is that of a lot quality sample, see core/stats/lqas.h. */
enum class VisitDecision {
    Reached, ///< so many met that the room reaches the standard
    NotReached, ///< so many not met that it cannot reach it any more
    Undecided, ///< fewer looked at than the sample asks, and both still possible
};

const char* codeName(VisitDecision decision);

/** Somebody looked at items picked by lot. The body of a `visit` record of the unit that was seen. */
struct VisitResult
{
    Instant at; ///< when it was
    std::int64_t sample = 0; ///< items that the plan asks to look at
    std::int64_t pass = 0; ///< with so many met the room reaches the standard; 1..sample
    std::int64_t looked = 0; ///< items looked at; 1..sample
    std::int64_t notMet = 0; ///< of them; 0..looked
    std::vector<std::string> items; ///< ids of those not met as far as they were written down; sorted
    bool operator==(const VisitResult&) const = default;

    [[nodiscard]] std::int64_t met() const { return looked - notMet; }
    [[nodiscard]] VisitDecision decision() const;
};

inline constexpr std::int64_t mostSample = 500;

Result<void> checkVisit(const VisitResult& visit);
/** {"at", "items", "looked", "notMet", "pass", "sample"}; what was decided follows from them. */
Json toBody(const VisitResult& visit);
Result<VisitResult> visitResultFromBody(const Json& body);

}
