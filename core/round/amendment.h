// SPDX-License-Identifier: MIT
#pragma once

#include "core/round/roundrecord.h"

namespace cradlepost {

/** A round put right after it was recorded: the body of a `round-amended` record. The first one stays. */
struct RoundAmendment
{
    RecordId amends; ///< the record of the round, never that of another amendment
    std::string reason; ///< see checkAmendmentReason; never about a patient
    RoundRecord round; ///< as it should have been, whole
    bool operator==(const RoundAmendment&) const = default;
};

/** What is known of one amendment of a round. */
struct Amendment
{
    RecordId id;
    Instant at; ///< when it was made, by a clock that never goes back
    std::string actor;
    std::string reason;
    bool operator==(const Amendment&) const = default;
};

inline constexpr std::size_t minAmendmentReason = 3; ///< characters
inline constexpr std::size_t maxAmendmentReason = 200;

/** One line of 3 to 200 characters. */
Result<void> checkAmendmentReason(const std::string& reason);

/**
 * Whether `corrected` may stand for `first`: what was seen may be put right, not what was looked at, when and
 * where. Kind, checklist and version, shift, limits, source and the round it re-checks stay; so do the times,
 * of which that of an answer may only be left out; those of a round from paper, copied by hand, may change. A
 * spot check is not amended: it is worth something because nobody touches it afterwards. Something must
 * differ.
 */
Result<void> checkAmendment(const RoundRecord& first, const RoundRecord& corrected);

/**
 * `first` with other answers, judged again by its own limits and times: what checkAmendment wants. `before`:
 * of a re-check the answers of the shift that it was laid over, else empty. Refused as checkAnswer says.
 */
Result<RoundRecord> withAnswers(const Checklist& checklist, const TimeZone& zone, const RoundRecord& first,
    std::vector<Answer> answers, std::vector<Answer> before = {});

/** {"amends": [station, seq], "reason", "round": the body of a round}. */
Json toBody(const RoundAmendment& amendment);
/** Fails on anything that toBody would not have written. */
Result<RoundAmendment> amendmentFromBody(const Json& body);

}
