// SPDX-License-Identifier: MIT
#include "app/demo/ward.h"

#include <algorithm>

namespace cradlepost::demo {

Ward::Ward(const UnitPlan& plan, const Stories& stories, const Checklist& shiftRound)
    : m_plan(plan)
    , m_stories(stories)
    , m_random(Random::named("ward of " + plan.unit.id))
{
    const Moment begin{.day = stories.first, .night = false};
    for (std::size_t at = 0; at < shiftRound.itemCount(); ++at) {
        const Item& item = shiftRound.item(at);
        auto thing = makeThing(item, plan, m_random, stories.first);
        const Risk risk = riskOf(plan, item, begin, stories);
        if (m_random.chance(risk.onset / (risk.onset + risk.mend)))
            thing->fail(m_random, stories.first, risk.which);
        m_items.push_back(&item);
        m_things.emplace(item.id, std::move(thing));
    }
}

void Ward::pass(const Moment& moment, Instant begins)
{
    const Look look{.at = begins, .day = moment.day};
    for (const Item* item : m_items) {
        Thing& thing = *m_things.at(item->id);
        const Risk risk = riskOf(m_plan, *item, moment, m_stories);
        if (thing.isFaulty()) {
            if (m_random.chance(risk.mend))
                thing.mend(m_random, moment.day);
            else if (risk.which)
                thing.fail(m_random, moment.day, risk.which);
        } else if (m_random.chance(risk.onset)) {
            thing.fail(m_random, moment.day, risk.which);
        }
        thing.hear(newsOf(m_plan, item->id, moment.day, m_stories));
        thing.pass(m_random, look, offsetOf(m_plan, *item, moment, m_stories));
    }
}

void Ward::birth(Date today)
{
    for (const Item* item : m_items)
        m_things.at(item->id)->use(m_random, today);
}

bool Ward::mendSome(const std::vector<std::string>& items, const Moment& moment)
{
    bool any = false;
    for (const Item* item : m_items) {
        if (std::find(items.begin(), items.end(), item->id) == items.end())
            continue;
        Thing& thing = *m_things.at(item->id);
        const double mend = riskOf(m_plan, *item, moment, m_stories).mend;
        if (thing.isFaulty() && mend < 1 && m_random.chance(mend)) {
            thing.mend(m_random, moment.day);
            any = true;
        }
    }
    return any;
}

Answer Ward::seen(const Item& item, const Look& look)
{
    if (item.mayNotApply && isWithout(item.id))
        return DoesNotApply{};
    const auto thing = m_things.find(item.id);
    return thing == m_things.end() ? momentary(item) : thing->second->seen(look, m_random);
}

Answer Ward::momentary(const Item& item)
{
    const char* const behind = item.id == "gloves-laid-out" ? "sterile-gloves"
        : item.id == "uterotonic-at-hand"                   ? "oxytocin"
                                                            : nullptr;
    if (behind != nullptr && isFaulty(behind))
        return GapFound{GapReason::Absent};
    if (m_random.chance(0.02 * m_plan.habits.gapLoad))
        return GapFound{behind != nullptr ? GapReason::Absent : GapReason::NotClean};
    return Confirmed{};
}

bool Ward::isWithout(const std::string& item) const
{
    return std::find(m_plan.without.begin(), m_plan.without.end(), item) != m_plan.without.end();
}

bool Ward::isFaulty(const std::string& item) const
{
    const auto thing = m_things.find(item);
    return thing != m_things.end() && thing->second->isFaulty();
}

}
