// SPDX-License-Identifier: MIT
#include "core/store/store.h"

#include "core/base/refusal.h"
#include "core/gap/escalationrecord.h"
#include "core/store/parts.h"

#include <algorithm>
#include <tuple>

namespace cradlepost {

Result<std::vector<Gap>> Store::openGaps(const std::string& unit) const
{
    return attempt([&] {
        std::vector<Gap> gaps = m_parts->gaps.open(unit);
        std::stable_sort(gaps.begin(), gaps.end(), [](const Gap& a, const Gap& b) {
            return std::tie(a.severity, a.due) < std::tie(b.severity, b.due);
        });
        return gaps;
    });
}

Result<std::vector<Gap>> Store::closedGaps(const std::string& unit, Instant since) const
{
    return attempt([&] { return m_parts->gaps.closedSince(unit, since); });
}

Result<std::vector<Gap>> Store::gapsOf(const std::string& unit, const std::string& item) const
{
    return attempt([&] { return m_parts->gaps.ofItem(unit, item); });
}

Result<void> Store::actOnGap(const std::string& unit, const GapAction& action, const std::string& actor)
{
    return m_parts->inUnit(unit, [&] {
        GapAction done = action;
        if ((done.mended || done.verified) && !done.at)
            done.at = m_parts->clock.now();
        need(checkAction(done));
        const auto gap = m_parts->gaps.find(unit, action.item, action.nth);
        const std::string name
            = "gap " + action.item + '/' + std::to_string(action.nth) + " of unit '" + unit + '\'';
        if (!gap)
            refuse(refused(refusal::gone, {}, name + " is not known", {}, ErrorCode::NotFound));
        if (auto allowed = checkActionOn(*gap, done); !allowed) {
            allowed.error().message.insert(0, name + ": ");
            throw Failure{std::move(allowed.error())};
        }
        m_parts->append(recordkind::gapAction, unit, toBody(done), actor);
    });
}

Result<void> Store::setEscalation(
    const std::string& unit, const std::vector<EscalationLevel>& levels, const std::string& actor)
{
    return m_parts->inUnit(unit, [&] {
        m_parts->knownUnit(unit);
        const EscalationSet set{.at = m_parts->clock.now(), .levels = levels};
        need(checkEscalation(set));
        m_parts->append(recordkind::escalation, unit, toBody(set), actor);
    });
}

Result<std::vector<EscalationLevel>> Store::escalation(const std::string& unit) const
{
    return attempt([&] {
        const auto sets = m_parts->supplies.facts<EscalationSet>(
            unit, recordkind::escalation, escalationFromBody, SupplyFactTable::levels);
        return sets.empty() ? std::vector<EscalationLevel>(usualEscalation.begin(), usualEscalation.end())
                            : sets.back().what.levels;
    });
}

}
