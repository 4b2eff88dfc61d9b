// SPDX-License-Identifier: MIT
#include "core/round/standing.h"

#include <algorithm>

namespace cradlepost {

namespace {

Instant answeredAt(const RoundRecord& round, std::size_t at)
{
    return round.seconds[at] ? round.started + std::chrono::seconds(*round.seconds[at]) : round.finished;
}

/** A re-check only speaks of what it looked at. */
void layOver(Standing& standing, const RoundRecord& recheck)
{
    for (std::size_t at = 0; at < standing.answers.size(); ++at) {
        if (!isChecked(recheck.answers[at]))
            continue;
        standing.answers[at] = recheck.answers[at];
        standing.seenAt[at] = answeredAt(recheck, at);
    }
}

}

std::optional<Standing> standingAt(
    const Checklist& checklist, const std::vector<SavedRound>& saved, const TimeZone& zone, Instant now)
{
    const auto first = std::find_if(
        saved.begin(), saved.end(), [](const SavedRound& s) { return s.round.kind == RoundKind::Shift; });
    const std::size_t n = checklist.itemCount();
    if (first == saved.end() || first->round.answers.size() != n || first->round.checklist != checklist.id
        || first->round.version != checklist.version)
        return std::nullopt;
    Standing standing {.round = first->round, .roundId = first->id, .answers = first->round.answers};
    for (std::size_t at = 0; at < n; ++at)
        standing.seenAt.push_back(answeredAt(first->round, at));
    Instant lastFinish = first->round.finished;
    for (const SavedRound& later : saved) {
        if (later.round.kind != RoundKind::Recheck || later.round.over != first->id || later.round.answers.size() != n)
            continue;
        layOver(standing, later.round);
        lastFinish = std::max(lastFinish, later.round.finished);
    }
    JudgeContext context {.reference = lastFinish,
        .lastDay = zone.toLocal(first->round.shift.ends).date,
        .limits = first->round.limits};
    const auto asSeen = judgeAll(checklist, standing.answers, context);
    context.reference = std::max(now, lastFinish);
    standing.judgements = judgeAll(checklist, standing.answers, context);
    for (std::size_t at = 0; at < n; ++at) {
        if (asSeen[at].outcome == Outcome::Gap && standing.judgements[at].outcome == Outcome::Met)
            standing.warmByClock.push_back(at);
    }
    standing.verdict = verdictOf(checklist, standing.judgements);
    return standing;
}

}
