// SPDX-License-Identifier: MIT
#include "app/demo/afterwards.h"

#include "app/demo/roundmaker.h"

namespace cradlepost::demo {

using namespace std::chrono;

Afterwards::Afterwards(
    const UnitPlan& plan, const Stories& stories, const Checklist& shiftRound, TimeZone zone)
    : m_plan(plan)
    , m_stories(stories)
    , m_checklist(shiftRound)
    , m_zone(std::move(zone))
    , m_random(Random::named("afterwards at " + plan.unit.id))
{
}

void Afterwards::recorded(const RecordId& id, const RoundRecord& round, const GapBook& book)
{
    if (!m_random.chance(0.01))
        return;
    if (auto amending = putRight(id, round, book))
        m_amending.push_back(std::move(*amending));
}

std::optional<Afterwards::Amending> Afterwards::putRight(
    const RecordId& id, const RoundRecord& round, const GapBook& book)
{
    auto answers = round.answers;
    std::string reason;
    const bool forgot = m_random.chance(0.2);
    for (std::size_t at = 0; at < answers.size() && forgot && reason.empty(); ++at) {
        const Item& item = m_checklist.item(at);
        const auto entry = book.entries().find(item.id);
        const bool isOpen = entry != book.entries().end() && entry->second.isOpen;
        if (round.outcomes[at] == 'u' && item.kind() == ItemKind::Confirm && !isOpen) {
            answers[at] = Confirmed{};
            reason = "Was looked at, forgot to mark it.";
        }
    }
    for (std::size_t at = 0; at < answers.size() && reason.empty(); ++at) {
        auto* measured = std::get_if<Measured>(&answers[at]);
        if (measured == nullptr || round.outcomes[at] != 'm')
            continue;
        const int decimals = std::get<MeasureRule>(m_checklist.item(at).rule).decimals;
        const int slip = decimals > 0 ? 200 : 2000; // two steps of a scale that is read to tenths or to ones
        measured->value.thousandths += m_random.chance(0.5) ? slip : -slip;
        reason = "Typed another number than I wrote down.";
    }
    const auto corrected = withAnswers(m_checklist, m_zone, round, std::move(answers));
    // A reading beyond its limits would open a gap of the past, which nobody in the ward has acted on.
    if (reason.empty() || !corrected || corrected->gaps.size() != round.gaps.size())
        return std::nullopt;
    return Amending{.id = id, .round = *corrected, .reason = std::move(reason)};
}

void Afterwards::onPaper(RoundRecord round, const std::string& actor)
{
    // As a sheet has it: the minute in which the round was finished.
    round.finished = floor<minutes>(round.finished);
    round.started = round.finished;
    std::fill(round.seconds.begin(), round.seconds.end(), std::nullopt);
    round.fromPaper = true;
    m_paper.push_back({.round = std::move(round), .actor = actor});
}

Result<int> Afterwards::catchUp(Store& store, FixedClock& clock, const Shift& shift, Instant at)
{
    clock.set(at);
    int rounds = 0;
    if (!m_paper.empty() && !isOnPaper(m_plan, shift.date, m_stories)) {
        const auto ids = store.saveRounds(m_plan.unit.id, m_paper);
        if (!ids)
            return tl::unexpected(ids.error());
        rounds = static_cast<int>(ids->size());
        m_paper.clear();
    }
    for (const Amending& one : m_amending) {
        clock.advance(seconds(1));
        const auto by = store.amendRound(one.id, one.round, one.reason, m_plan.people.front().initials);
        if (!by)
            return tl::unexpected(by.error());
    }
    m_amending.clear();
    clock.advance(seconds(1));
    if (const auto noted = noteChanges(store, shift); !noted)
        return tl::unexpected(noted.error());
    return rounds;
}

Result<void> Afterwards::noteChanges(Store& store, const Shift& shift) const
{
    for (const ChangeIdea& idea : changeIdeas(m_plan, m_stories)) {
        if (shift.index != 0 || shift.date != idea.from)
            continue;
        if (const auto id = store.noteChange(m_plan.unit.id, idea, m_plan.people.front().initials); !id)
            return tl::unexpected(id.error());
    }
    return {};
}

bool Afterwards::isLookedAt(const RoundRecord& round)
{
    // Where every round is the same somebody grows suspicious.
    const double chance = isCopied(m_plan, round.shift.date, m_stories) ? 0.3 : 0.1;
    return hasSpotChecks(m_plan) && round.shift.index == 0 && m_random.chance(chance);
}

Result<RoundRecord> Afterwards::spotCheck(const RoundRecord& round, Instant at, const std::string& observer,
    const std::function<Answer(std::size_t)>& seen)
{
    constexpr double looks = 0.4; // at so many of the items
    constexpr double differs = 0.03; // two honest people
    Draft draft = Walk::begin(
        m_checklist, RoundKind::SpotCheck, m_plan.unit.id, observer, round.shift, m_plan.limits, at);
    const auto times = walkingTimes(m_checklist, draft.asked, 0.5, m_random);
    return walked(m_checklist, m_zone, std::move(draft), times, [&](std::size_t item, Instant) -> Answer {
        if (!m_random.chance(looks))
            return NotChecked{};
        if (isCopied(m_plan, round.shift.date, m_stories))
            return seen(item);
        if (m_random.chance(differs))
            return GapFound{GapReason::NotKnown};
        return round.answers[item];
    });
}

std::string Afterwards::observerOf(const std::string& walker) const
{
    const std::string& first = m_plan.people.front().initials;
    return first == walker ? m_plan.people[1].initials : first;
}

}
