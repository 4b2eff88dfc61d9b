// SPDX-License-Identifier: MIT
#include "core/round/walk.h"

#include <algorithm>
#include <numeric>

namespace cradlepost {

namespace {
/** A clock that jumps by decades must not wrap. */
std::int32_t secondsBetween(Instant from, Instant to)
{
    const auto s = std::chrono::floor<std::chrono::seconds>(to - from).count();
    return static_cast<std::int32_t>(std::clamp<std::int64_t>(s, INT32_MIN, INT32_MAX));
}
}

Date lastDayOf(const Shift& shift, const TimeZone& zone)
{
    return zone.toLocal(shift.ends - std::chrono::milliseconds(1)).date;
}

Result<void> checkFits(const Checklist& checklist, const Draft& draft)
{
    const auto misfit = [&](const std::string& what) {
        return fail(ErrorCode::BadDocument,
            "draft of checklist " + checklist.id + " version " + std::to_string(checklist.version) + ": "
                + what,
            "Put it aside and begin anew.");
    };
    if (draft.checklist != checklist.id || draft.version != checklist.version)
        return misfit("it was begun with " + draft.checklist + " version " + std::to_string(draft.version));
    const std::size_t n = checklist.itemCount();
    if (draft.answers.size() != n || draft.answeredAt.size() != n)
        return misfit("it holds " + std::to_string(draft.answers.size()) + " answers and "
            + std::to_string(draft.answeredAt.size()) + " times for " + std::to_string(n) + " items");
    if (!draft.before.empty() && draft.before.size() != n)
        return misfit("it is laid over " + std::to_string(draft.before.size()) + " answers for "
            + std::to_string(n) + " items");
    if (std::any_of(draft.asked.begin(), draft.asked.end(), [&](std::size_t at) { return at >= n; }))
        return misfit("it asks an item that the checklist does not have");
    return {};
}

Result<Walk> Walk::of(Checklist checklist, TimeZone zone, Draft draft)
{
    if (auto fits = checkFits(checklist, draft); !fits)
        return tl::unexpected(fits.error());
    return Walk(std::move(checklist), std::move(zone), std::move(draft));
}

Walk::Walk(Checklist checklist, TimeZone zone, Draft draft)
    : m_checklist(std::move(checklist))
    , m_zone(std::move(zone))
    , m_draft(std::move(draft))
{
}

Draft Walk::begin(const Checklist& checklist, RoundKind kind, std::string unit, std::string actor,
    const Shift& shift, ChosenLimits limits, Instant now)
{
    const std::size_t n = checklist.itemCount();
    Draft draft{.unit = std::move(unit),
        .kind = kind,
        .checklist = checklist.id,
        .version = checklist.version,
        .actor = std::move(actor),
        .shift = shift,
        .started = now,
        .limits = std::move(limits),
        .answers = std::vector<Answer>(n),
        .answeredAt = std::vector<std::optional<Instant>>(n),
        .asked = std::vector<std::size_t>(n),
        .over = std::nullopt,
        .before = {}};
    std::iota(draft.asked.begin(), draft.asked.end(), std::size_t{0});
    return draft;
}

Draft Walk::beginRecheck(const Checklist& checklist, std::string unit, std::string actor, const Shift& shift,
    ChosenLimits limits, RecordId round, std::vector<Answer> answers, std::vector<std::size_t> asked,
    Instant now)
{
    Draft draft = begin(
        checklist, RoundKind::Recheck, std::move(unit), std::move(actor), shift, std::move(limits), now);
    std::sort(asked.begin(), asked.end());
    asked.erase(std::unique(asked.begin(), asked.end()), asked.end());
    draft.asked = std::move(asked);
    draft.over = std::move(round);
    draft.before = std::move(answers);
    return draft;
}

Draft Walk::again(std::string unit, std::string actor, const RoundRecord& round)
{
    Draft draft{.unit = std::move(unit),
        .kind = round.kind,
        .checklist = round.checklist,
        .version = round.version,
        .actor = std::move(actor),
        .shift = round.shift,
        .started = round.started,
        .limits = round.limits,
        .answers = round.answers,
        .answeredAt = {},
        .asked = std::vector<std::size_t>(round.answers.size()),
        .over = std::nullopt,
        .before = {}};
    for (const auto& seconds : round.seconds)
        draft.answeredAt.push_back(
            seconds ? std::optional(round.started + std::chrono::seconds(*seconds)) : std::nullopt);
    std::iota(draft.asked.begin(), draft.asked.end(), std::size_t{0});
    return draft;
}

bool Walk::isAsked(std::size_t position) const
{
    return std::binary_search(m_draft.asked.begin(), m_draft.asked.end(), position);
}

Result<void> Walk::give(std::size_t position, Answer answer, Instant now)
{
    if (position >= m_draft.answers.size() || !isAsked(position))
        return fail(
            ErrorCode::InvalidArgument, "item " + std::to_string(position) + " is not asked in this round");
    if (auto allowed = checkAnswer(m_checklist.item(position), answer); !allowed)
        return allowed;
    const bool checked = isChecked(answer);
    m_draft.answers[position] = std::move(answer);
    m_draft.answeredAt[position] = checked ? std::optional(now) : std::nullopt;
    return {};
}

JudgeContext Walk::context(Instant reference) const
{
    return {.reference = reference, .lastDay = lastDayOf(m_draft.shift, m_zone), .limits = m_draft.limits};
}

Judgement Walk::judged(std::size_t position, Instant reference) const
{
    return judge(m_checklist.item(position), m_draft.answers[position], context(reference));
}

std::vector<Answer> Walk::laidOver() const
{
    if (m_draft.before.size() != m_draft.answers.size())
        return m_draft.answers;
    std::vector<Answer> answers = m_draft.before;
    for (const std::size_t at : m_draft.asked) {
        if (isChecked(m_draft.answers[at]))
            answers[at] = m_draft.answers[at];
    }
    return answers;
}

Verdict Walk::verdict(Instant reference) const
{
    return verdictOf(m_checklist, judgeAll(m_checklist, laidOver(), context(reference)));
}

std::vector<std::size_t> Walk::open() const
{
    std::vector<std::size_t> open;
    for (const std::size_t at : m_draft.asked) {
        if (judged(at, m_draft.started).outcome == Outcome::NotChecked)
            open.push_back(at);
    }
    return open;
}

RoundRecord Walk::finish(Instant now) const
{
    const auto judgements = judgeAll(m_checklist, m_draft.answers, context(now));
    const Verdict whole = verdict(now);
    RoundRecord record{.kind = m_draft.kind,
        .checklist = m_draft.checklist,
        .version = m_draft.version,
        .shift = m_draft.shift,
        .started = m_draft.started,
        .finished = now,
        .limits = {},
        .answers = m_draft.answers,
        .seconds = {},
        .outcomes = outcomesOf(judgements),
        .gaps = {},
        .state = whole.state,
        .met = whole.met,
        .applicable = whole.applicable,
        .index = whole.index,
        .over = m_draft.over};
    for (std::size_t at = 0; at < judgements.size(); ++at) {
        const Item& item = m_checklist.item(at);
        if (const auto* rule = std::get_if<MeasureRule>(&item.rule))
            record.limits[item.id] = limitsFor(item, *rule, m_draft.limits).id;
        if (judgements[at].outcome == Outcome::Gap)
            record.gaps.push_back(*judgements[at].reason);
        const auto& when = m_draft.answeredAt[at];
        record.seconds.push_back(when ? std::optional(secondsBetween(m_draft.started, *when)) : std::nullopt);
    }
    return record;
}

}
