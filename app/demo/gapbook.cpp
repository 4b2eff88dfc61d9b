// SPDX-License-Identifier: MIT
#include "app/demo/gapbook.h"

namespace cradlepost::demo {

void GapBook::note(const Checklist& checklist, const RoundRecord& round)
{
    auto reason = round.gaps.begin();
    for (std::size_t at = 0; at < round.outcomes.size(); ++at) {
        const auto outcome = static_cast<Outcome>(round.outcomes[at]);
        const std::string& item = checklist.item(at).id;
        if (outcome == Outcome::Gap) {
            Entry& entry = m_entries[item];
            if (!entry.isOpen)
                entry = {.nth = entry.nth + 1,
                    .isOpen = true,
                    .hasOwner = false,
                    .openedAt = round.finished,
                    .reason = {}};
            entry.reason = *reason++;
        } else if (outcome != Outcome::NotChecked) {
            if (const auto entry = m_entries.find(item); entry != m_entries.end())
                entry->second.isOpen = false;
        }
    }
}

}
