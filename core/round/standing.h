// SPDX-License-Identifier: MIT
#pragma once

#include "core/round/amendment.h"
#include "core/round/walk.h"

namespace cradlepost {

/** How the shift stands at a moment: its round with the later re-checks laid over it, judged at `now`. */
struct Standing
{
    RoundRecord round; ///< the shift's round as recorded
    RecordId roundId;
    std::vector<Answer> answers; ///< the latest answer to each item
    std::vector<Instant> seenAt; ///< when each was last looked at; a pass is only good for that moment
    std::vector<Judgement> judgements; ///< at `now`: a warmer becomes warm by the clock
    Verdict verdict;
    std::vector<std::size_t> warmByClock; ///< `since` items that were a gap when last seen and have come due since
};

/**
 * What another check of the same shift said of an item, known by its id: an answer, or NotChecked when the thing
 * was used and has not been seen since.
 */
struct Sighting
{
    std::string item;
    Answer answer;
    Instant at;
};

/** The answers of a finished check, as sightings; after use, what was left unanswered stays void. */
std::vector<Sighting> sightingsOf(const Checklist& checklist, const RoundRecord& check);
/** A check after use that is still being walked: what it asks is void until it is answered. */
std::vector<Sighting> sightingsOf(const Checklist& checklist, const Draft& afterUse);

/** A round or check and the record that holds it. */
struct SavedRound
{
    RecordId id;
    std::string actor;
    RoundRecord round; ///< as it counts: with the last amendment
    std::vector<Amendment> amendments = {}; ///< in the order in which they were made
};

/**
 * `saved`: the shift's round and re-checks, in the order they were finished. `sightings`: what the checks before
 * a birth and after use said, the later one counts. Without a shift round there is no standing. Pure.
 */
std::optional<Standing> standingAt(const Checklist& checklist, const std::vector<SavedRound>& saved,
    const TimeZone& zone, Instant now, const std::vector<Sighting>& sightings = {});

}
