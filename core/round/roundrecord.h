// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/json.h"
#include "core/base/shiftcalendar.h"
#include "core/round/verdict.h"

namespace cradlepost {

/** Names one record of the ledger. */
struct RecordId
{
    std::string station;
    std::int64_t seq = 0;
    auto operator<=>(const RecordId&) const = default;
};

/** A round as it was finished: the body of a `round` record. Nothing in it is judged again later. */
struct RoundRecord
{
    RoundKind kind = RoundKind::Shift;
    std::string checklist; ///< id
    int version = 1;
    Shift shift;
    Instant started;
    Instant finished;
    ChosenLimits limits; ///< of every measure item
    std::vector<Answer> answers; ///< one an item, in the order of the checklist
    std::vector<std::optional<std::int32_t>> seconds; ///< when each was answered, counted from `started`
    std::string outcomes; ///< one letter an item; in a re-check 'u' for what was not looked at again
    std::vector<Reason> gaps; ///< one for each 'g' of `outcomes`, in their order
    Readiness state = Readiness::NotReady; ///< of a re-check: of the shift's round with this laid over it
    int met = 0;
    int applicable = 0;
    int index = 0; ///< ten-thousandths, see Verdict
    std::optional<RecordId> over; ///< of a re-check: the shift's round
    bool fromPaper = false; ///< written on paper and entered later: without times of the answers
    bool operator==(const RoundRecord&) const = default;
};

/** The body of the record; integers and strings only. */
Json toBody(const RoundRecord& round);
/** Fails on anything that toBody would not have written; with NewerSchema on a member that is not known here. */
Result<RoundRecord> roundFromBody(const Json& body);
/** The same of a body that checkBody has passed already, and whose canonical text is `text`. */
Result<RoundRecord> roundFromBody(const Json& body, std::string_view text);

}
