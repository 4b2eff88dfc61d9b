// SPDX-License-Identifier: MIT
#pragma once

#include "app/demo/gapbook.h"
#include "app/demo/random.h"
#include "app/demo/story.h"
#include "core/store/store.h"

namespace cradlepost::demo {

/**
 * What happens to rounds after they were walked: some are put right, some are on paper first, some are looked
 * at again by somebody else, and changes are noted. It draws from a stream of its own, so that what a ward
 * does stays what it was.
 */
class Afterwards
{
public:
    Afterwards(const UnitPlan& plan, const Stories& stories, const Checklist& shiftRound, TimeZone zone);

    /** A round was recorded: one in a hundred is put right a shift later. */
    void recorded(const RecordId& id, const RoundRecord& round, const GapBook& book);
    /** A round was walked while the station had no power. */
    void onPaper(RoundRecord round, const std::string& actor);
    /** Writes what is due before the shift begins to work, from `at` on, a second for each. How many rounds.
     */
    Result<int> catchUp(Store& store, FixedClock& clock, const Shift& shift, Instant at);

    /** Whether somebody looks at this round again. */
    bool isLookedAt(const RoundRecord& round);
    /** What that somebody finds at `at`; `seen` says how the ward is, where the round is not to be trusted.
     */
    Result<RoundRecord> spotCheck(const RoundRecord& round, Instant at, const std::string& observer,
        const std::function<Answer(std::size_t)>& seen);
    [[nodiscard]] std::string observerOf(const std::string& walker) const;

private:
    struct Amending
    {
        RecordId id;
        RoundRecord round;
        std::string reason;
    };

    std::optional<Amending> putRight(const RecordId& id, const RoundRecord& round, const GapBook& book);
    Result<void> noteChanges(Store& store, const Shift& shift) const;

    const UnitPlan& m_plan;
    const Stories& m_stories;
    const Checklist& m_checklist;
    TimeZone m_zone;
    Random m_random;
    std::vector<Amending> m_amending;
    std::vector<WalkedRound> m_paper;
};

}
