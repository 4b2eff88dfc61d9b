// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/shiftcalendar.h"
#include "core/gap/gap.h"
#include "core/round/changeidea.h"

#include <memory>

namespace cradlepost {

/** A checklist with the limits that were in force for it. */
struct ChecklistInForce
{
    std::shared_ptr<const Checklist> checklist;
    ChosenLimits limits;
};

/** One measured value of a round. */
struct ReadingFact
{
    std::size_t position = 0; ///< of the item in its checklist
    Decimal value;
    bool operator==(const ReadingFact&) const = default;
};

/** A shift round as it stands now: amended rounds by their last amendment. */
struct RoundFact
{
    Slot slot = 0;
    std::size_t list = 0; ///< position in UnitHistory::lists
    std::string outcomes; ///< one letter an item: m g n u
    Readiness state = Readiness::NotReady;
    int met = 0;
    int applicable = 0;
    int index = 0; ///< ten-thousandths
    Instant started;
    Instant finished;
    Instant recorded; ///< when the record was made
    bool fromPaper = false; ///< typed in later from a paper form: its times are what the form says
    int amended = 0; ///< how often
    std::optional<Instant> amendedAt; ///< the last time
    std::string actor; ///< only to count how many hands there were; no figure names a person
    std::vector<ReadingFact> readings;
};

/** Somebody else has looked at some items of the same shift without knowing what the round said. */
struct SpotCheck
{
    struct Seen
    {
        std::string item;
        Outcome outcome = Outcome::NotChecked;
        bool operator==(const Seen&) const = default;
    };
    Slot slot = 0;
    Instant at;
    std::vector<Seen> seen;
    bool operator==(const SpotCheck&) const = default;
};

/** What a review reads of one unit. All lists in order of time. */
struct UnitHistory
{
    std::string unit; ///< id
    TimeZone zone = TimeZone::utc();
    Date from; ///< first day that it covers
    Date to; ///< exclusive
    Instant now;
    std::vector<ChecklistInForce> lists; ///< that the rounds point to, the latest last
    /** Of the other checks, at the end of the span: gaps of their items are open gaps too. */
    std::vector<std::shared_ptr<const Checklist>> others;
    std::vector<Shift> due; ///< shifts in which a round was due and that have begun by now
    std::vector<RoundFact> rounds; ///< shift rounds only, one a slot at most
    Date gapsFrom{}; ///< gaps closed before this day are left out
    std::vector<Gap> gaps; ///< open at any time in [gapsFrom, to), by when they opened
    std::vector<ChangeIdea> changes;
    std::vector<SpotCheck> spotChecks;
};

}
