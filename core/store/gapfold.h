// SPDX-License-Identifier: MIT
#pragma once

#include "core/gap/gapaction.h"
#include "core/store/origin.h"

#include <map>

namespace cradlepost {

/** What a round says of each of its items; nothing for checks of items that were not looked at. */
std::vector<Finding> findingsOf(
    const std::string& unit, const Checklist& checklist, const RoundRecord& round, const RecordId& id);

/** All gaps of one unit, carried from the first round on. Rounds and actions come in the order of their
 * Origin. */
class GapFold
{
public:
    void take(const Finding& finding);
    /** An action on a gap that is not there yet is held until it opens. */
    void take(const GapAction& action);

    [[nodiscard]] std::vector<Gap> gaps() const;
    /** Actions whose gap never opened. */
    [[nodiscard]] std::int64_t held() const;

private:
    std::map<std::string, std::vector<Gap>> m_byItem; ///< the nth at nth - 1; only the last one may be open
    std::map<std::pair<std::string, int>, std::vector<GapAction>> m_held;
};

}
