// SPDX-License-Identifier: MIT
#pragma once

#include "core/gap/gapaction.h"

#include <map>

namespace cradlepost::demo {

/** The open gaps of a unit as its own staff know them, without asking the store after each round. */
class GapBook
{
public:
    struct Entry
    {
        int nth = 0;
        bool isOpen = false;
        bool hasOwner = false;
        Instant openedAt;
        Reason reason;
    };

    void note(const Checklist& checklist, const RoundRecord& round);
    [[nodiscard]] const std::map<std::string, Entry>& entries() const { return m_entries; }
    void owned(const std::string& item) { m_entries.at(item).hasOwner = true; }

private:
    std::map<std::string, Entry> m_entries; ///< by item; the last gap of each
};

}
