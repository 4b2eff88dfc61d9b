// SPDX-License-Identifier: MIT
#include "core/store/gapcarrier.h"

#include "core/store/failure.h"

#include <algorithm>

namespace cradlepost {

GapCarrier::GapCarrier(Database& ledger, Database& target, ChecklistTable& checklists)
    : m_ledger(ledger)
    , m_rounds(target)
    , m_amendments(ledger, target)
    , m_gaps(target)
    , m_checklists(checklists)
{
}

void GapCarrier::take(const std::string& unit, GapStep step)
{
    const auto* action = std::get_if<GapAction>(&step.what);
    if (action != nullptr)
        m_gaps.putAction(unit, step.origin, *action);
    if (m_postponed) {
        (*m_postponed)[unit].push_back(std::move(step));
        return;
    }
    if (m_late && m_late->contains(unit))
        return;
    const auto progress = m_gaps.progress(unit);
    if (progress && step.origin < progress->last) {
        carryAnew(unit);
        return;
    }
    std::int64_t held = progress ? progress->held : 0;
    if (action == nullptr)
        held -= takeNext(unit, std::get<RoundFindings>(step.what), held > 0);
    else if (!takeNext(unit, *action))
        ++held;
    m_gaps.setProgress(unit, {.last = step.origin, .held = held});
}

void GapCarrier::amend(const std::string& unit, GapStep round)
{
    if (!m_postponed) {
        carryAnew(unit);
        return;
    }
    for (GapStep& step : (*m_postponed)[unit])
        if (step.origin.id == round.origin.id)
            step = round;
}

std::int64_t GapCarrier::takeNext(const std::string& unit, const RoundFindings& round, bool someHeld)
{
    const auto checklist = checklistOf(round);
    if (!checklist)
        return 0;
    std::map<std::string, Gap> open;
    for (Gap& gap : m_gaps.open(unit))
        open.emplace(gap.item, std::move(gap));
    std::int64_t released = 0;
    forEachFinding(
        unit, *checklist, round, [&](const std::string& item) { return open.contains(item); },
        [&](const Finding& finding) {
            if (const auto at = open.find(finding.item); at != open.end()) {
                if (const auto carried = cradlepost::carry(at->second, at->second.nth, finding))
                    m_gaps.update(*carried);
            } else if (auto opened = cradlepost::carry(std::nullopt, m_gaps.count(unit, finding.item), finding)) {
                m_gaps.insert(someHeld ? withHeld(unit, std::move(*opened), released) : *opened);
            }
        });
    return released;
}

Gap GapCarrier::withHeld(const std::string& unit, Gap opened, std::int64_t& released)
{
    for (const RecordId& id : m_gaps.actionsOn(unit, opened.item, opened.nth)) {
        const Json body = need(parseJson(m_ledger.body(id)));
        opened = withAction(std::move(opened), need(gapActionFromBody(body)));
        ++released;
    }
    return opened;
}

bool GapCarrier::takeNext(const std::string& unit, const GapAction& action)
{
    const auto gap = m_gaps.find(unit, action.item, action.nth);
    if (gap)
        m_gaps.update(withAction(*gap, action));
    return gap.has_value();
}

std::shared_ptr<const Checklist> GapCarrier::checklistOf(const RoundFindings& round)
{
    auto checklist = m_checklists.find(round.checklist, round.version);
    return checklist && checklist->itemCount() == round.outcomes.size() ? checklist : nullptr;
}

void GapCarrier::carryAnew(const std::string& unit)
{
    if (m_postponed)
        return; // it will be
    if (m_late) {
        m_late->insert(unit);
        return;
    }
    std::vector<GapStep> steps;
    for (const RoundTable::Place& place : m_rounds.places(unit)) {
        const RoundRecord round
            = (place.isAmended ? m_amendments.read(place.id) : m_amendments.readFirst(place.id)).round;
        steps.push_back(
            {.origin = {.at = place.at, .id = place.id}, .what = findingsOf(round, place.id)});
    }
    for (const Origin& origin : m_gaps.actions(unit)) {
        const Json body = need(parseJson(m_ledger.body(origin.id)));
        steps.push_back({.origin = origin, .what = need(gapActionFromBody(body))});
    }
    m_gaps.drop(unit);
    carry(unit, std::move(steps));
}

void GapCarrier::carryPostponed()
{
    auto units = std::move(*m_postponed);
    m_postponed.reset();
    for (auto& [unit, steps] : units)
        carry(unit, std::move(steps));
}

void GapCarrier::carryLate()
{
    const auto late = std::move(m_late);
    m_late.reset();
    for (const std::string& unit : *late)
        carryAnew(unit);
}

void GapCarrier::carry(const std::string& unit, std::vector<GapStep> steps)
{
    if (steps.empty())
        return;
    std::sort(
        steps.begin(), steps.end(), [](const GapStep& a, const GapStep& b) { return a.origin < b.origin; });
    GapFold fold(unit);
    for (const GapStep& step : steps) {
        if (const auto* action = std::get_if<GapAction>(&step.what))
            fold.take(*action);
        else if (const auto& round = std::get<RoundFindings>(step.what);
                 const auto checklist = checklistOf(round))
            fold.take(*checklist, round);
    }
    for (const Gap& gap : fold.gaps())
        m_gaps.insert(gap);
    m_gaps.setProgress(unit, {.last = steps.back().origin, .held = fold.held()});
}

}
