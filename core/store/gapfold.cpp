// SPDX-License-Identifier: MIT
#include "core/store/gapfold.h"

namespace cradlepost {

std::vector<Finding> findingsOf(
    const std::string& unit, const Checklist& checklist, const RoundRecord& round, const RecordId& id)
{
    std::vector<Finding> findings;
    auto reason = round.gaps.begin();
    std::size_t position = 0;
    for (const Section& section : checklist.sections) {
        for (const Item& item : section.items) {
            const auto outcome = static_cast<Outcome>(round.outcomes.at(position++));
            if (outcome == Outcome::NotChecked)
                continue;
            findings.push_back({.unit = unit,
                .item = item.id,
                .outcome = outcome,
                .severity = item.severity,
                .reason = outcome == Outcome::Gap ? *reason++ : Reason{},
                .slot = round.shift.slot(),
                .at = round.finished,
                .shiftEnds = round.shift.ends,
                .record = id});
        }
    }
    return findings;
}

void GapFold::take(const Finding& finding)
{
    auto& gaps = m_byItem[finding.item];
    const bool goesOn = !gaps.empty() && gaps.back().isOpen();
    if (!goesOn && finding.outcome != Outcome::Gap)
        return;
    auto carried
        = carry(goesOn ? std::optional(gaps.back()) : std::nullopt, static_cast<int>(gaps.size()), finding);
    if (!carried)
        return;
    if (goesOn) {
        gaps.back() = std::move(*carried);
        return;
    }
    if (const auto held = m_held.extract({finding.item, carried->nth}))
        for (const GapAction& action : held.mapped())
            carried = withAction(std::move(*carried), action);
    gaps.push_back(std::move(*carried));
}

void GapFold::take(const GapAction& action)
{
    auto& gaps = m_byItem[action.item];
    const auto nth = static_cast<std::size_t>(action.nth);
    if (nth > gaps.size())
        m_held[{action.item, action.nth}].push_back(action);
    else
        gaps[nth - 1] = withAction(std::move(gaps[nth - 1]), action);
}

std::vector<Gap> GapFold::gaps() const
{
    std::vector<Gap> all;
    for (const auto& [item, gaps] : m_byItem)
        all.insert(all.end(), gaps.begin(), gaps.end());
    return all;
}

std::int64_t GapFold::held() const
{
    std::int64_t count = 0;
    for (const auto& [gap, actions] : m_held)
        count += static_cast<std::int64_t>(actions.size());
    return count;
}

}
