// SPDX-License-Identifier: MIT
#include "core/round/standing.h"

#include <algorithm>

namespace cradlepost {

namespace {

Instant answeredAt(const RoundRecord& round, std::size_t at)
{
    return round.seconds[at] ? round.started + std::chrono::seconds(*round.seconds[at]) : round.finished;
}

const SavedRound* shiftRound(const Checklist& checklist, const std::vector<SavedRound>& saved)
{
    const auto first = std::find_if(
        saved.begin(), saved.end(), [](const SavedRound& s) { return s.round.kind == RoundKind::Shift; });
    const bool fits = first != saved.end() && first->round.answers.size() == checklist.itemCount()
        && first->round.checklist == checklist.id && first->round.version == checklist.version;
    return fits ? &*first : nullptr;
}

/** The later sighting of an item counts. */
class Overlay
{
public:
    Overlay(const Checklist& checklist, Standing& standing)
        : m_checklist(checklist)
        , m_standing(standing)
        , m_void(checklist.itemCount(), false)
    {
    }

    void recheck(const RoundRecord& round)
    {
        for (std::size_t at = 0; at < m_standing.answers.size(); ++at) {
            if (isChecked(round.answers[at]))
                place(at, round.answers[at], answeredAt(round, at));
        }
        m_lastFinish = std::max(m_lastFinish, round.finished);
    }
    void sighting(const Sighting& seen)
    {
        const auto at = m_checklist.position(seen.item);
        if (at && checkAnswer(m_checklist.item(*at), seen.answer))
            place(*at, seen.answer, seen.at);
    }
    void finishedAt(Instant t) { m_lastFinish = std::max(m_lastFinish, t); }
    [[nodiscard]] Instant lastFinish() const { return m_lastFinish; }
    [[nodiscard]] bool isVoid(std::size_t at) const { return m_void[at]; }

private:
    void place(std::size_t at, const Answer& answer, Instant when)
    {
        if (when < m_standing.seenAt[at])
            return;
        m_standing.answers[at] = answer;
        m_standing.seenAt[at] = when;
        m_void[at] = !isChecked(answer);
    }

    const Checklist& m_checklist;
    Standing& m_standing;
    std::vector<bool> m_void;
    Instant m_lastFinish;
};

}

std::vector<Sighting> sightingsOf(const Checklist& checklist, const RoundRecord& check)
{
    std::vector<Sighting> seen;
    for (std::size_t at = 0; at < check.answers.size() && at < checklist.itemCount(); ++at) {
        if (isChecked(check.answers[at]))
            seen.push_back({checklist.item(at).id, check.answers[at], answeredAt(check, at)});
        else if (check.kind == RoundKind::AfterUse)
            seen.push_back({checklist.item(at).id, NotChecked {}, check.started});
    }
    return seen;
}

std::vector<Sighting> sightingsOf(const Checklist& checklist, const Draft& afterUse)
{
    std::vector<Sighting> seen;
    for (std::size_t at = 0; at < afterUse.answers.size() && at < checklist.itemCount(); ++at)
        seen.push_back({checklist.item(at).id, afterUse.answers[at], afterUse.answeredAt[at].value_or(afterUse.started)});
    return seen;
}

std::optional<Standing> standingAt(const Checklist& checklist, const std::vector<SavedRound>& saved,
    const TimeZone& zone, Instant now, const std::vector<Sighting>& sightings)
{
    const SavedRound* first = shiftRound(checklist, saved);
    if (first == nullptr)
        return std::nullopt;
    Standing standing {.round = first->round, .roundId = first->id, .answers = first->round.answers};
    const std::size_t n = checklist.itemCount();
    for (std::size_t at = 0; at < n; ++at)
        standing.seenAt.push_back(answeredAt(first->round, at));

    Overlay overlay(checklist, standing);
    overlay.finishedAt(first->round.finished);
    for (const SavedRound& later : saved) {
        if (later.round.kind == RoundKind::Recheck && later.round.over == first->id && later.round.answers.size() == n)
            overlay.recheck(later.round);
    }
    for (const Sighting& seen : sightings)
        overlay.sighting(seen);

    JudgeContext context {.reference = overlay.lastFinish(),
        .lastDay = zone.toLocal(first->round.shift.ends).date,
        .limits = first->round.limits};
    const auto asSeen = judgeAll(checklist, standing.answers, context);
    context.reference = std::max(now, overlay.lastFinish());
    standing.judgements = judgeAll(checklist, standing.answers, context);
    for (std::size_t at = 0; at < n; ++at) {
        if (asSeen[at].outcome == Outcome::Gap && standing.judgements[at].outcome == Outcome::Met)
            standing.warmByClock.push_back(at);
        if (overlay.isVoid(at) && standing.judgements[at].reason)
            standing.judgements[at].reason->code = ReasonCode::UsedSince;
    }
    standing.verdict = verdictOf(checklist, standing.judgements);
    return standing;
}

}
