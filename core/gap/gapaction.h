// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/json.h"
#include "core/gap/gap.h"

namespace cradlepost {

/** Something decided about an open gap: who mends it, by when, or a remark. The body of a `gap-action` record. */
struct GapAction
{
    std::string item;
    int nth = 1;
    std::optional<std::string> owner; ///< "" takes the owner off again
    std::optional<Instant> due;
    std::optional<std::string> remark; ///< at most 200 characters; never about a patient
    bool operator==(const GapAction&) const = default;
};

inline constexpr std::size_t maxOwnerLength = 24;
inline constexpr std::size_t maxRemarkLength = 200;

/** Fails when nothing is decided or a text is too long. */
Result<void> checkAction(const GapAction& action);
Json toBody(const GapAction& action);
Result<GapAction> gapActionFromBody(const Json& body);
/** The gap with the action laid over it. */
Gap withAction(Gap gap, const GapAction& action);

}
