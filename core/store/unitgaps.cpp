// SPDX-License-Identifier: MIT
#include "core/store/unitgaps.h"

namespace cradlepost {

UnitGaps::UnitGaps(GapTable& table, std::string unit)
    : progress(table.progress(unit))
    , m_table(table)
    , m_unit(std::move(unit))
{
    for (Gap& gap : m_table.open(m_unit)) {
        std::string item = gap.item;
        m_open.emplace(std::move(item), Kept{.gap = std::move(gap), .isStored = true});
    }
}

const Gap* UnitGaps::open(const std::string& item) const
{
    const auto at = m_open.find(item);
    return at == m_open.end() ? nullptr : &at->second.gap;
}

int UnitGaps::count(const std::string& item) const
{
    const Gap* last = open(item); // only the last one may be open
    return last != nullptr ? last->nth : m_table.count(m_unit, item);
}

std::optional<Gap> UnitGaps::find(const std::string& item, int nth) const
{
    const Gap* last = open(item);
    return last != nullptr && last->nth == nth ? *last : m_table.find(m_unit, item, nth);
}

void UnitGaps::put(Gap gap)
{
    const auto at = m_open.find(gap.item);
    const bool wasOpen = at != m_open.end() && at->second.gap.nth == gap.nth;
    if (wasOpen && gap.isOpen()) {
        at->second.gap = std::move(gap);
        at->second.isChanged = true;
    } else if (gap.isOpen()) {
        std::string item = gap.item;
        m_open.insert_or_assign(std::move(item), Kept{.gap = std::move(gap), .isChanged = true});
    } else {
        // A closed one is seldom touched again: it is written at once. One that the table has not is new.
        store({.gap = std::move(gap), .isStored = !wasOpen || at->second.isStored});
        if (wasOpen)
            m_open.erase(at);
    }
}

void UnitGaps::write()
{
    for (auto& [item, kept] : m_open) {
        if (!kept.isChanged)
            continue;
        store(kept);
        kept.isStored = true;
        kept.isChanged = false;
    }
    if (progress)
        m_table.setProgress(m_unit, *progress);
}

void UnitGaps::store(const Kept& kept)
{
    if (kept.isStored)
        m_table.update(kept.gap);
    else
        m_table.insert(kept.gap);
}

}
