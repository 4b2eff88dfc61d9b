// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/clock.h"
#include "core/checklist/checklist.h"

#include <optional>
#include <string>

namespace cradlepost {

/** What a round says of one item: the letters of `outcomes`. */
enum class Outcome : char { Met = 'm', Gap = 'g', DoesNotApply = 'n', NotChecked = 'u' };

enum class ReasonCode {
    // as the person said
    Absent,
    NotWorking,
    NotClean,
    Expired,
    OutOfLimits,
    NotKnown,
    // as the program found
    TooLow, ///< value below limit
    TooHigh, ///< value above limit
    Warming, ///< value minutes on of limit minutes; readyAt says when
    StepFailed, ///< part = step id
    TooFew, ///< value pieces of limit
    TooFewUsable, ///< value usable pieces of limit, the others expire before the end of the shift
    KitsIncomplete, ///< value whole kits of limit; part = part id that limits
    CylinderLow, ///< value minutes left of limit minutes
    NotChecked, ///< nobody has looked
    StepsUnfinished, ///< a function test begun and not ended
    UsedSince, ///< used after it was seen; not tested or restocked yet
};

/** Why an item is not met, in codes and values; ui/text makes the sentence. */
struct Reason
{
    ReasonCode code = ReasonCode::NotKnown;
    std::string item; ///< item id
    Severity severity = Severity::Minor;
    std::string value; ///< as a canonical number, empty where there is none
    std::string limit; ///< as a canonical number, empty where there is none
    std::string part; ///< id of the step or part that names itself, else empty
    std::optional<Instant> readyAt; ///< for Warming: when it mends itself
    bool operator==(const Reason&) const = default;
};

const char* codeName(ReasonCode code);
std::optional<ReasonCode> reasonFromCode(std::string_view code);

}
