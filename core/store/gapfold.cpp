// SPDX-License-Identifier: MIT
#include "core/store/gapfold.h"

#include <algorithm>
#include <tuple>

namespace cradlepost {

RoundFindings findingsOf(const RoundRecord& round, const RecordId& id)
{
    return {.id = id,
        .checklist = round.checklist,
        .version = round.version,
        .outcomes = round.outcomes,
        .gaps = round.gaps,
        .slot = round.shift.slot(),
        .finished = round.finished,
        .shiftEnds = round.shift.ends};
}

void forEachFinding(const std::string& unit, const Checklist& checklist, const RoundFindings& round,
    const std::function<bool(const std::string&)>& isOpen, const std::function<void(const Finding&)>& take)
{
    auto reason = round.gaps.begin();
    std::size_t position = 0;
    for (const Section& section : checklist.sections) {
        for (const Item& item : section.items) {
            const auto outcome = static_cast<Outcome>(round.outcomes[position++]);
            if (outcome == Outcome::NotChecked || (outcome != Outcome::Gap && !isOpen(item.id)))
                continue;
            take({.unit = unit,
                .item = item.id,
                .outcome = outcome,
                .severity = item.severity,
                .reason = outcome == Outcome::Gap ? *reason++ : Reason{},
                .slot = round.slot,
                .at = round.finished,
                .shiftEnds = round.shiftEnds,
                .record = round.id});
        }
    }
}

void GapFold::take(const Checklist& checklist, const RoundFindings& round)
{
    const auto isOpen = [this](const std::string& item) {
        const auto gaps = m_byItem.find(item);
        return gaps != m_byItem.end() && !gaps->second.empty() && gaps->second.back().isOpen();
    };
    forEachFinding(m_unit, checklist, round, isOpen, [this](const Finding& finding) { take(finding); });
}

void GapFold::take(const Finding& finding)
{
    auto& gaps = m_byItem[finding.item];
    const bool goesOn = !gaps.empty() && gaps.back().isOpen();
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
    std::sort(all.begin(), all.end(),
        [](const Gap& a, const Gap& b) { return std::tie(a.item, a.nth) < std::tie(b.item, b.nth); });
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
