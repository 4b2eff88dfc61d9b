// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/json.h"
#include "core/gap/gap.h"

namespace cradlepost {

/** Something decided or done about a gap. The body of a `gap-action` record. */
struct GapAction
{
    std::string item;
    int nth = 1;
    std::optional<std::string> owner; ///< "" takes the owner off again
    std::optional<Instant> due;
    std::optional<std::string> remark; ///< at most 200 characters; never about a patient
    std::optional<std::string> measure
        = {}; ///< what helps until then, at most 200 characters; "" takes it back
    std::optional<std::string> mended = {}; ///< by whom; "" says that it is not mended after all
    std::optional<std::string> verified = {}; ///< by whom, after it was mended
    std::optional<Instant> at = {}; ///< when it was mended or verified; with these only
    bool operator==(const GapAction&) const = default;
};

inline constexpr std::size_t maxOwnerLength = 24;
inline constexpr std::size_t maxRemarkLength = 200;

/** Fails when nothing is decided, a text is too long, or it is mended and verified in one breath. */
Result<void> checkAction(const GapAction& action);
/**
 * Whether it may be done to `gap` now. A closed gap can only be verified. What nobody mended cannot be
 * verified, and not by who mended it: a second pair of eyes (common practice, no source).
 */
Result<void> checkActionOn(const Gap& gap, const GapAction& action);
/** "M. R." and "mr" are one person. */
bool samePerson(const std::string& one, const std::string& other);
Json toBody(const GapAction& action);
Result<GapAction> gapActionFromBody(const Json& body);
/** The gap with the action laid over it. What comes from elsewhere is not refused: a verification by the
 * mender or of what nobody mended changes nothing. */
Gap withAction(Gap gap, const GapAction& action);

}
