// SPDX-License-Identifier: MIT
#include "app/demo/thing.h"

#include <map>

namespace cradlepost::demo {

void Thing::fail(Random& random, Date today, std::optional<int> which)
{
    m_faulty = true;
    failed(random, today, which);
}

void Thing::mend(Random& random, Date today)
{
    m_faulty = false;
    mended(random, today);
}

void Thing::pass(Random&, const Look&, double) { }
void Thing::use(Random&, Date) { }
void Thing::hear(const StoreNews&) { }
void Thing::failed(Random&, Date, std::optional<int>) { }
void Thing::mended(Random&, Date) { }

namespace {

GapReason usualReason(const std::string& item)
{
    static const std::map<std::string, GapReason> reasons{
        {"draught", GapReason::OutOfLimits},
        {"light", GapReason::NotWorking},
        {"room-clean", GapReason::NotClean},
        {"delivery-table", GapReason::NotClean},
        {"wall-clock", GapReason::NotWorking},
        {"backup-light", GapReason::NotWorking},
        {"warmer-surface", GapReason::NotClean},
        {"corner-clean", GapReason::NotClean},
        {"skin-probe", GapReason::NotWorking},
        {"resuscitation-clock", GapReason::NotWorking},
        {"pack-storage", GapReason::NotClean},
        {"hand-washing", GapReason::NotWorking},
        {"vaccine-vials", GapReason::Expired},
        {"scale-ready", GapReason::NotClean},
        {"room-thermometer", GapReason::NotWorking},
        {"bag-reprocessed", GapReason::NotClean},
        {"suction-emptied", GapReason::NotClean},
    };
    const auto at = reasons.find(item);
    return at == reasons.end() ? GapReason::Absent : at->second;
}

/** There and in order, or not. */
class Fixture final : public Thing
{
public:
    explicit Fixture(GapReason usual)
        : m_usual(usual)
    {
    }
    Answer seen(const Look&, Random&) const override
    {
        return isFaulty() ? Answer(GapFound{m_reason}) : Answer(Confirmed{});
    }

protected:
    void failed(Random& random, Date, std::optional<int>) override
    {
        m_reason = random.chance(0.12) ? GapReason::NotKnown : m_usual;
    }

private:
    GapReason m_usual;
    GapReason m_reason = GapReason::NotKnown;
};

/** Tested step by step. */
class Device final : public Thing
{
public:
    Device(std::size_t steps, std::string number)
        : m_steps(steps)
        , m_number(std::move(number))
    {
    }
    Answer seen(const Look&, Random&) const override
    {
        StepsDone done{.marks = std::string(m_steps, 'p'), .device = m_number};
        if (isFaulty())
            done.marks[m_failing] = 'f';
        return done;
    }

protected:
    void failed(Random& random, Date, std::optional<int> which) override
    {
        m_failing
            = static_cast<std::size_t>(which.value_or(random.between(0, static_cast<int>(m_steps) - 1)));
    }

private:
    std::size_t m_steps;
    std::string m_number;
    std::size_t m_failing = 0;
};

const char* prefixOf(const std::string& item)
{
    static const std::map<std::string, const char*> prefixes{
        {"warmer-function-test", "W-"}, {"bag-function-test", "B-"}, {"oximeter", "OX-"}};
    const auto at = prefixes.find(item);
    return at == prefixes.end() ? "" : at->second;
}

}

std::unique_ptr<Thing> makeFixture(const Item& item)
{
    return std::make_unique<Fixture>(usualReason(item.id));
}

std::unique_ptr<Thing> makeDevice(
    const Item& item, const StepsRule& rule, const UnitPlan& plan, Random& random)
{
    // Masks carry no number.
    std::string number = prefixOf(item.id);
    if (!number.empty())
        number += plan.habits.birthsPerDay > 1.5 ? std::to_string(random.between(1, 4)) : "1";
    return std::make_unique<Device>(rule.steps.size(), std::move(number));
}

std::unique_ptr<Thing> makeThing(const Item& item, const UnitPlan& plan, Random& random, Date today)
{
    if (const auto* steps = std::get_if<StepsRule>(&item.rule))
        return makeDevice(item, *steps, plan, random);
    if (const auto* measure = std::get_if<MeasureRule>(&item.rule))
        return makeMeter(item, *measure, plan, random);
    if (const auto* since = std::get_if<SinceRule>(&item.rule))
        return makeWarmth(*since);
    if (const auto* cylinder = std::get_if<CylinderRule>(&item.rule))
        return makeCylinder(*cylinder, plan, random);
    if (const auto* count = std::get_if<CountRule>(&item.rule))
        return makeShelf(item, *count, plan, today);
    if (const auto* kit = std::get_if<KitRule>(&item.rule))
        return makeKits(item, *kit, plan);
    return makeFixture(item);
}

}
