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
    if (const auto* action = std::get_if<GapAction>(&step.what); action != nullptr)
        m_gaps.putAction(unit, step.origin, *action);
    if (m_postponed) {
        (*m_postponed)[unit].push_back(std::move(step));
        return;
    }
    if (!m_gathered) {
        UnitGaps gaps(m_gaps, unit);
        if (takeInto(gaps, unit, step))
            gaps.write();
        else
            carryAnew(unit);
        return;
    }
    if (m_gathered->late.contains(unit))
        return;
    if (!takeInto(m_gathered->gaps.try_emplace(unit, m_gaps, unit).first->second, unit, step))
        carryAnew(unit);
}

bool GapCarrier::takeInto(UnitGaps& gaps, const std::string& unit, const GapStep& step)
{
    if (gaps.progress && step.origin < gaps.progress->last)
        return false;
    std::int64_t held = gaps.progress ? gaps.progress->held : 0;
    if (const auto* action = std::get_if<GapAction>(&step.what); action == nullptr)
        held -= takeNext(gaps, unit, std::get<RoundFindings>(step.what), held > 0);
    else if (!takeNext(gaps, *action))
        ++held;
    gaps.progress = GapProgress{.last = step.origin, .held = held};
    return true;
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

std::int64_t GapCarrier::takeNext(
    UnitGaps& gaps, const std::string& unit, const RoundFindings& round, bool someHeld)
{
    const auto checklist = checklistOf(round);
    if (!checklist)
        return 0;
    std::int64_t released = 0;
    forEachFinding(
        unit, *checklist, round, [&](const std::string& item) { return gaps.open(item) != nullptr; },
        [&](const Finding& finding) {
            if (const Gap* open = gaps.open(finding.item)) {
                if (auto carried = cradlepost::carry(*open, open->nth, finding))
                    gaps.put(std::move(*carried));
            } else if (auto opened = cradlepost::carry(std::nullopt, gaps.count(finding.item), finding)) {
                gaps.put(someHeld ? withHeld(unit, std::move(*opened), released) : std::move(*opened));
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

bool GapCarrier::takeNext(UnitGaps& gaps, const GapAction& action)
{
    auto gap = gaps.find(action.item, action.nth);
    if (gap)
        gaps.put(withAction(std::move(*gap), action));
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
    if (m_gathered) {
        m_gathered->gaps.erase(unit);
        m_gathered->late.insert(unit);
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
    auto gathered = std::move(m_gathered);
    m_gathered.reset();
    for (auto& [unit, gaps] : gathered->gaps)
        gaps.write();
    for (const std::string& unit : gathered->late)
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
