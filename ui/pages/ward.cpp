// SPDX-License-Identifier: MIT
#include "ui/pages/ward.h"

#include "core/base/refusal.h"
#include "core/round/amendment.h"

#include <algorithm>

namespace cradlepost {

Ward::Ward(Store& store, const Clock& clock, const Language& language, std::string unit, QObject* parent)
    : QObject(parent)
    , m_store(store)
    , m_clock(clock)
    , m_language(language)
    , m_unit(std::move(unit))
{
}

TimeText Ward::times() const { return {m_language, m_view ? m_view->calendar.zone() : TimeZone::utc()}; }

void Ward::refresh()
{
    auto view = shiftView(m_store, m_unit, now());
    m_fault.reset();
    if (view)
        m_view = std::move(*view);
    else
        m_fault = view.error();
    readBoard();
    if (m_view && m_actor.empty()) {
        // Whoever walked last in this shift is most likely still here.
        if (!m_view->saved.empty())
            m_actor = m_view->saved.back().actor;
        else if (!m_view->drafts.empty())
            m_actor = m_view->drafts.back().actor;
    }
    Q_EMIT changed();
}

void Ward::readBoard()
{
    m_board = {};
    m_notices.clear();
    if (!m_view)
        return;
    auto board = boardView(m_store, *m_view, now());
    if (board)
        m_board = std::move(*board);
    else if (!m_fault)
        m_fault = board.error();
    m_escalation = m_store.escalation(m_unit).value_or(std::vector<EscalationLevel>());
    m_notices = noticesOf(m_store, *m_view, m_board, now()).value_or(std::vector<Notice>());
}

void Ward::setUnit(const std::string& unit)
{
    m_unit = unit;
    m_actor.clear();
    m_view.reset();
    refresh();
}

void Ward::setActor(const std::string& initials)
{
    m_actor = initials;
    Q_EMIT actorChanged();
}

Result<Walk> Ward::takeUp(RoundKind kind)
{
    if (!m_view)
        return tl::unexpected(m_fault.value_or(Error {ErrorCode::NotFound, "the unit is not set up", {}}));
    const auto left = std::find_if(
        m_view->drafts.begin(), m_view->drafts.end(), [&](const Draft& d) { return d.kind == kind; });
    if (left != m_view->drafts.end()) {
        auto checklist = m_store.checklist(left->checklist, left->version);
        if (!checklist)
            return tl::unexpected(checklist.error());
        return Walk::of(std::move(*checklist), m_view->calendar.zone(), *left);
    }
    Checklist checklist;
    auto draft = freshDraft(kind, checklist);
    if (!draft)
        return tl::unexpected(draft.error());
    return walkOf(std::move(*draft), std::move(checklist));
}

Result<Walk> Ward::walkOf(Draft draft, Checklist checklist)
{
    auto walk = Walk::of(std::move(checklist), m_view->calendar.zone(), std::move(draft));
    if (!walk)
        return walk;
    if (auto kept = keep(*walk); !kept)
        return tl::unexpected(kept.error());
    return walk;
}

Result<Walk> Ward::takeUpOne(const std::string& item)
{
    if (!m_view || !m_view->standing)
        return fail(ErrorCode::NotFound, "there is no round in this shift to re-check", "walk the round first");
    const auto at = m_view->adopted.checklist.position(item);
    if (!at)
        return fail(ErrorCode::NotFound, "item '" + item + "' is not in the round of this shift");
    for (const Draft& draft : m_view->drafts) {
        if (draft.kind != RoundKind::Recheck)
            continue;
        if (std::find(draft.asked.begin(), draft.asked.end(), *at) != draft.asked.end() && draft.asked.size() == 1)
            return takeUp(RoundKind::Recheck);
        const bool begun = std::any_of(
            draft.answeredAt.begin(), draft.answeredAt.end(), [](const auto& time) { return time.has_value(); });
        if (begun)
            return fail(ErrorCode::AlreadyExists, "another re-check is in hand", "finish it or put it aside first");
    }
    if (auto someone = named(); !someone)
        return tl::unexpected(someone.error());
    Checklist checklist;
    auto draft = recheckDraft({*at}, checklist);
    if (!draft)
        return tl::unexpected(draft.error());
    return walkOf(std::move(*draft), std::move(checklist));
}

Result<Draft> Ward::recheckDraft(std::vector<std::size_t> asked, Checklist& checklist) const
{
    const auto& standing = m_view->standing;
    if (!standing || asked.empty())
        return fail(ErrorCode::NotFound, "there is nothing to re-check in this shift");
    checklist = m_view->adopted.checklist;
    return Walk::beginRecheck(checklist, m_unit, m_actor, standing->round.shift, standing->round.limits,
        standing->roundId, standing->answers, std::move(asked), now());
}

Result<void> Ward::named() const
{
    if (m_actor.empty())
        return tl::unexpected(
            refused(refusal::nobodyNamed, {}, "nobody is named as doing this", "choose your initials first"));
    return {};
}

Result<Draft> Ward::freshDraft(RoundKind kind, Checklist& checklist) const
{
    if (m_actor.empty())
        return fail(ErrorCode::InvalidArgument, "nobody is named as walking this round", "choose your initials first");
    const Shift shift = m_view->calendar.shiftAt(now());
    if (kind == RoundKind::Recheck) {
        const auto& standing = m_view->standing;
        std::vector<std::size_t> asked;
        for (std::size_t at = 0; standing && at < standing->judgements.size(); ++at) {
            const bool byClock = std::find(standing->warmByClock.begin(), standing->warmByClock.end(), at)
                != standing->warmByClock.end();
            if (standing->judgements[at].reason || byClock)
                asked.push_back(at);
        }
        return recheckDraft(std::move(asked), checklist);
    }
    if (kind == RoundKind::Shift && m_view->standing && m_view->standing->round.shift.slot() == shift.slot())
        return fail(ErrorCode::AlreadyExists, "the round of this shift is done", "re-check what is missing instead");
    auto adopted = m_store.checklistFor(m_unit, kind, shift.date);
    if (!adopted)
        return tl::unexpected(adopted.error());
    checklist = adopted->checklist;
    return Walk::begin(checklist, kind, m_unit, m_actor, shift, adopted->limits, now());
}

Result<void> Ward::keep(const Walk& walk) { return m_store.saveDraft(walk.draft()); }

Result<RecordId> Ward::finish(const Walk& walk)
{
    auto id = m_store.saveRound(m_unit, walk.finish(now()), walk.draft().actor);
    if (id)
        refresh();
    return id;
}

Result<Walk> Ward::takeUpAgain(const SavedRound& round) const
{
    if (!m_view)
        return tl::unexpected(m_fault.value_or(Error{ErrorCode::NotFound, "the unit is not set up", {}}));
    if (round.round.kind != RoundKind::Shift)
        return fail(ErrorCode::InvalidArgument, "only the round of a shift is put right here");
    auto checklist = m_store.checklist(round.round.checklist, round.round.version);
    if (!checklist)
        return tl::unexpected(checklist.error());
    return Walk::of(
        std::move(*checklist), m_view->calendar.zone(), Walk::again(m_unit, round.actor, round.round));
}

Result<RecordId> Ward::putRight(const SavedRound& round, const Walk& walk, const std::string& reason)
{
    if (m_actor.empty())
        return fail(ErrorCode::InvalidArgument, "nobody is named as putting this round right",
            "choose your initials first");
    auto corrected = withAnswers(walk.checklist(), m_view->calendar.zone(), round.round, walk.draft().answers);
    if (!corrected)
        return tl::unexpected(corrected.error());
    auto id = m_store.amendRound(round.id, *corrected, reason, m_actor);
    if (id)
        refresh();
    return id;
}

Result<void> Ward::putAside(RoundKind kind)
{
    auto dropped = m_store.dropDraft(m_unit, kind);
    if (dropped)
        refresh();
    return dropped;
}

Result<void> Ward::refreshed(Result<void> done)
{
    if (done)
        refresh();
    return done;
}

Result<void> Ward::act(const GapAction& action) { return refreshed(m_store.actOnGap(m_unit, action, m_actor)); }

Result<void> Ward::switchWarmer(const std::string& device, bool on, Instant at)
{
    if (auto someone = named(); !someone)
        return someone;
    return refreshed(m_store.switchWarmer(m_unit, {.device = device, .at = at, .on = on}, m_actor));
}

Result<void> Ward::expectBirth(Instant expected, int babies, bool preterm)
{
    if (auto someone = named(); !someone)
        return someone;
    const Instant at = now();
    return refreshed(m_store.noteBirth(m_unit,
        {.birth = "b" + std::to_string(toMs(at)),
            .at = at,
            .expected = expected,
            .babies = babies,
            .preterm = preterm},
        m_actor));
}

Result<void> Ward::endBirth(const std::string& birth, BirthChange how)
{
    if (auto someone = named(); !someone)
        return someone;
    return refreshed(m_store.noteBirth(m_unit, {.birth = birth, .at = now(), .change = how}, m_actor));
}

Result<HandoverView> Ward::handover() const
{
    if (!m_view)
        return tl::unexpected(m_fault.value_or(Error {ErrorCode::NotFound, "the unit is not set up", {}}));
    return handoverView(m_store, *m_view, m_board, now());
}

Result<void> Ward::giveHandover()
{
    if (auto someone = named(); !someone)
        return someone;
    auto view = handover();
    if (!view)
        return tl::unexpected(view.error());
    const auto given = m_store.giveHandover(m_unit, {.what = std::move(view->what), .by = m_actor, .at = now()}, m_actor);
    return refreshed(given ? Result<void>() : tl::unexpected(given.error()));
}

Result<void> Ward::takeHandover()
{
    if (auto someone = named(); !someone)
        return someone;
    const auto last = m_store.lastHandover(m_unit);
    if (!last)
        return tl::unexpected(last.error());
    if (!*last)
        return fail(ErrorCode::NotFound, "no handover was given yet");
    return refreshed(m_store.takeHandover(m_unit, {.given = (*last)->id, .by = m_actor, .at = now()}, m_actor));
}

}
