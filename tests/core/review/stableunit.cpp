// SPDX-License-Identifier: MIT
#include "stableunit.h"

#include "core/checklist/reader.h"

#include <cmath>
#include <stdexcept>

namespace cradlepost::test {

using namespace std::chrono;

namespace {

std::shared_ptr<const Checklist> shiftList()
{
    static const auto list = [] {
        const auto document = parseJson(builtInChecklistText(RoundKind::Shift));
        auto checklist = document ? readChecklist(*document) : tl::unexpected(document.error());
        if (!checklist)
            throw std::runtime_error(checklist.error().message);
        return std::make_shared<const Checklist>(std::move(*checklist));
    }();
    return list;
}

struct Usual
{
    double share;
    double mend;
};

Usual usualOf(Severity severity)
{
    if (severity == Severity::Critical)
        return {.share = 0.021, .mend = 0.45};
    return severity == Severity::Major ? Usual{.share = 0.09, .mend = 0.22}
                                       : Usual{.share = 0.12, .mend = 0.12};
}

/** One thing of the ward, from shift to shift. */
struct Thing
{
    double onset = 0;
    double mend = 1;
    bool faulty = false;
    double drift = 0; ///< of its reading, in standard deviations
    std::optional<std::size_t> gap; ///< the open one
};

class Maker
{
public:
    Maker(UnitHistory& history, unsigned seed, const Worsening& worsening)
        : m_history(history)
        , m_random(seed)
        , m_worsening(worsening)
        , m_things(shiftList()->itemCount())
    {
        for (std::size_t i = 0; i < m_things.size(); ++i) {
            const Usual usual = usualOf(shiftList()->item(i).severity);
            const double share = usual.share * (0.3 + 1.4 * real());
            m_things[i]
                = {.onset = usual.mend * share / (1 - share), .mend = usual.mend, .faulty = real() < share};
        }
    }

    void make()
    {
        for (const Shift& shift : m_history.due) {
            for (Thing& thing : m_things) {
                thing.faulty = thing.faulty ? real() >= thing.mend : real() < thing.onset;
                thing.drift = 0.85 * thing.drift + 0.5268 * m_bell(m_random); // keeps its spread
            }
            if (real() >= 0.05)
                round(shift);
        }
    }

private:
    double real() { return std::uniform_real_distribution<double>()(m_random); }

    bool isGap(const Thing& thing, const Shift& shift)
    {
        const bool isWorse = m_worsening.addedShare > 0
            && daysBetween(shift.date, m_history.to) <= m_worsening.daysBeforeEnd
            && (!m_worsening.nightsOnly || shift.code == "night");
        return thing.faulty || (isWorse && real() < m_worsening.addedShare);
    }

    void round(const Shift& shift)
    {
        const Instant started = shift.begins + seconds(300 + static_cast<int>(2000 * real()));
        const auto took = seconds(static_cast<int>(480 * std::exp(0.12 * m_bell(m_random))));
        RoundFact fact{.slot = shift.slot(),
            .outcomes = std::string(m_things.size(), 'm'),
            .started = started,
            .finished = started + took,
            .recorded = started + took,
            .actor = "AB"};
        for (std::size_t i = 0; i < m_things.size(); ++i) {
            if (isGap(m_things[i], shift))
                fact.outcomes[i] = 'g';
            follow(i, fact);
            if (const auto* rule = std::get_if<MeasureRule>(&shiftList()->item(i).rule))
                fact.readings.push_back({.position = i, .value = reading(*rule, m_things[i])});
        }
        judge(fact);
        m_history.rounds.push_back(std::move(fact));
    }

    /** About the middle of the limits, a sixth of their width for a standard deviation. */
    Decimal reading(const MeasureRule& rule, const Thing& thing)
    {
        const double low = rule.limits.front().low.value_or(rule.plausibleLow).toDouble();
        const double high = rule.limits.front().high.value_or(rule.plausibleHigh).toDouble();
        const double value = (low + high) / 2 + (high - low) / 6 * (thing.drift + 0.3 * m_bell(m_random));
        const double unit = std::pow(10.0, -rule.decimals);
        return {.thousandths = std::llround(std::round(value / unit) * unit * 1000)};
    }

    void follow(std::size_t item, const RoundFact& fact)
    {
        Thing& thing = m_things[item];
        const bool isGap = fact.outcomes[item] == 'g';
        if (isGap && !thing.gap) {
            thing.gap = m_history.gaps.size();
            m_history.gaps.push_back({.unit = m_history.unit,
                .item = shiftList()->item(item).id,
                .severity = shiftList()->item(item).severity,
                .openedSlot = fact.slot,
                .openedAt = fact.finished,
                .lastFound = fact.finished,
                .due = fact.finished + hours(24)});
        } else if (!isGap && thing.gap) {
            m_history.gaps[*thing.gap].closedAt = fact.finished;
            m_history.gaps[*thing.gap].closedSlot = fact.slot;
            thing.gap.reset();
        }
    }

    static void judge(RoundFact& fact)
    {
        std::vector<Judgement> judgements;
        for (const char letter : fact.outcomes)
            judgements.push_back({.outcome = static_cast<Outcome>(letter),
                .reason = letter == 'g' ? std::optional(Reason{}) : std::nullopt});
        const Verdict verdict = verdictOf(*shiftList(), judgements);
        fact.met = verdict.met;
        fact.applicable = verdict.applicable;
        fact.index = verdict.index;
        std::vector<ReviewItem> items;
        for (std::size_t i = 0; i < fact.outcomes.size(); ++i)
            items.push_back({.severity = shiftList()->item(i).severity});
        fact.state = stateOf(fact.outcomes, items);
    }

    UnitHistory& m_history;
    std::mt19937_64 m_random;
    std::normal_distribution<double> m_bell;
    Worsening m_worsening;
    std::vector<Thing> m_things;
};

}

StableUnit stableUnit(unsigned seed) { return worsened(seed, {}); }

StableUnit worsened(unsigned seed, const Worsening& worsening)
{
    const ReviewSpan span = ReviewSpan::ofMonth(2026y / October);
    UnitHistory history{.unit = "made", .from = lookBack(span), .to = span.to};
    history.lists.push_back({.checklist = shiftList(), .limits = {}});
    const ShiftCalendar calendar(ShiftPattern::threeByEight(), TimeZone::utc());
    for (Date day = history.from; day < history.to; day = addDays(day, 1)) {
        for (int shift = 0; shift < 3; ++shift)
            history.due.push_back(calendar.shift(day, shift));
    }
    history.now = history.due.back().ends;
    Maker(history, seed, worsening).make();
    StableUnit unit;
    unit.history = std::move(history);
    unit.span = span;
    return unit;
}

}
