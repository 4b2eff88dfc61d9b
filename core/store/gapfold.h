// SPDX-License-Identifier: MIT
#pragma once

#include "core/gap/gapaction.h"
#include "core/store/origin.h"

#include <functional>
#include <map>
#include <unordered_map>

namespace cradlepost {

/** What of a round goes into the gaps. */
struct RoundFindings
{
    RecordId id;
    std::string checklist;
    int version = 1;
    std::string outcomes;
    std::vector<Reason> gaps; ///< one for each 'g' of outcomes
    Slot slot = 0;
    Instant finished;
    Instant shiftEnds;
    bool operator==(const RoundFindings&) const = default;
};

RoundFindings findingsOf(const RoundRecord& round, const RecordId& id);

/**
 * Calls `take` for what the round says of each item that was looked at; of an item that is met or does not
 * apply only when `isOpen` says that it has an open gap. The checklist must have as many items as the round
 * outcomes.
 */
void forEachFinding(const std::string& unit, const Checklist& checklist, const RoundFindings& round,
    const std::function<bool(const std::string&)>& isOpen, const std::function<void(const Finding&)>& take);

/** All gaps of one unit, carried from the first round on. Rounds and actions come in the order of their
 * Origin. */
class GapFold
{
public:
    explicit GapFold(std::string unit)
        : m_unit(std::move(unit))
    {
    }

    void take(const Checklist& checklist, const RoundFindings& round);
    /** An action on a gap that is not there yet is held until it opens. */
    void take(const GapAction& action);

    /** By item and nth. */
    [[nodiscard]] std::vector<Gap> gaps() const;
    /** Actions whose gap never opened. */
    [[nodiscard]] std::int64_t held() const;

private:
    void take(const Finding& finding);

    std::string m_unit;
    /** The nth gap at nth - 1; only the last one may be open. */
    std::unordered_map<std::string, std::vector<Gap>> m_byItem;
    std::map<std::pair<std::string, int>, std::vector<GapAction>> m_held;
};

}
