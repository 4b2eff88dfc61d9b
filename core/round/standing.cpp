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
        , m_judgedAt(checklist.itemCount(), standing.round.finished)
        , m_lastFinish(standing.round.finished)
    {
    }

    /** Counts whatever the clock says: it was finished after what it is laid over. */
    void recheck(const RoundRecord& round)
    {
        for (std::size_t at = 0; at < m_standing.answers.size(); ++at) {
            if (isChecked(round.answers[at]))
                place(at, round.answers[at], answeredAt(round, at), round.finished);
        }
        m_lastFinish = std::max(m_lastFinish, round.finished);
    }
    void sighting(const Sighting& seen)
    {
        const auto at = m_checklist.position(seen.item);
        if (at && seen.at >= m_standing.seenAt[*at] && checkAnswer(m_checklist.item(*at), seen.answer))
            place(*at, seen.answer, seen.at, seen.at);
    }
    [[nodiscard]] Instant lastFinish() const { return m_lastFinish; }
    /** When the answer that counts was held against its rule. */
    [[nodiscard]] Instant judgedAt(std::size_t at) const { return m_judgedAt[at]; }
    [[nodiscard]] bool isVoid(std::size_t at) const { return m_void[at]; }

private:
    void place(std::size_t at, const Answer& answer, Instant when, Instant judged)
    {
        m_standing.answers[at] = answer;
        m_standing.seenAt[at] = when;
        m_judgedAt[at] = judged;
        m_void[at] = !isChecked(answer);
    }

    const Checklist& m_checklist;
    Standing& m_standing;
    std::vector<bool> m_void;
    std::vector<Instant> m_judgedAt;
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
    for (const SavedRound& later : saved) {
        if (later.round.kind == RoundKind::Recheck && later.round.over == first->id && later.round.answers.size() == n)
            overlay.recheck(later.round);
    }
    for (const Sighting& seen : sightings)
        overlay.sighting(seen);

    JudgeContext context {.reference = std::max(now, overlay.lastFinish()),
        .lastDay = lastDayOf(first->round.shift, zone),
        .limits = first->round.limits};
    standing.judgements = judgeAll(checklist, standing.answers, context);
    for (std::size_t at = 0; at < n; ++at) {
        context.reference = overlay.judgedAt(at);
        const Judgement asSeen = judge(checklist.item(at), standing.answers[at], context);
        if (asSeen.outcome == Outcome::Gap && standing.judgements[at].outcome == Outcome::Met)
            standing.warmByClock.push_back(at);
        if (overlay.isVoid(at) && standing.judgements[at].reason)
            standing.judgements[at].reason->code = ReasonCode::UsedSince;
    }
    standing.verdict = verdictOf(checklist, standing.judgements);
    return standing;
}

}
