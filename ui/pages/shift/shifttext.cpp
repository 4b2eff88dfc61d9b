// SPDX-License-Identifier: MIT
#include "ui/pages/shift/shifttext.h"

#include "ui/text/boardtext.h"
#include "ui/text/verdicttext.h"
#include "ui/text/wardtext.h"
#include "ui/widgets/outcomemark.h"

#include <algorithm>
#include <array>
#include <utility>

namespace cradlepost {

ShiftText::ShiftText(const Ward& ward, const ShiftView& view)
    : m_ward(ward)
    , m_view(view)
    , m_times(ward.times())
    , m_reasons(ward.language())
    , m_now(ward.now())
{
}

VerdictState ShiftText::state() const
{
    if (!m_view.standing)
        return VerdictState::NoRound;
    switch (m_view.standing->verdict.state) {
    case Readiness::NotReady:
        return VerdictState::NotReady;
    case Readiness::ReadyWithGaps:
        return VerdictState::ReadyWithGaps;
    case Readiness::Ready:
        break;
    }
    return VerdictState::Ready;
}

QString ShiftText::sentence() const
{
    if (m_view.standing)
        return VerdictText(m_ward.language(), m_times).sentence(m_view.adopted.checklist, *m_view.standing, m_now);
    const auto walked = std::find_if(
        m_view.drafts.begin(), m_view.drafts.end(), [](const Draft& d) { return d.kind == RoundKind::Shift; });
    QStringList parts {tr("Nobody has finished a round in this shift, so nothing is known of it.")};
    if (walked != m_view.drafts.end()) {
        const auto done = std::count_if(walked->answers.begin(), walked->answers.end(), isChecked);
        parts << tr("**One is being walked: %1 of %n item(s) answered.**", nullptr, static_cast<int>(walked->asked.size()))
                     .arg(done);
    }
    if (!m_view.gaps.empty())
        parts << tr("Earlier shifts left %n gap(s) open.", nullptr, static_cast<int>(m_view.gaps.size()));
    return parts.join(QLatin1Char(' '));
}

QString ShiftText::lost() const
{
    QStringList parts;
    for (const UnreadableDraft& draft : m_view.unreadable) {
        //: %1 a kind of round, for example "Check before a birth"
        parts << tr("What was answered so far in \"%1\" can no longer be read; begin it anew.")
                     .arg(WardText::roundKind(draft.kind));
    }
    return parts.join(QLatin1Char(' '));
}

std::size_t ShiftText::rowCount() const
{
    return m_view.standing ? m_view.standing->verdict.reasons.size() : m_view.gaps.size();
}

std::vector<ActionRow> ShiftText::rows(std::size_t most) const
{
    std::vector<ActionRow> rows;
    for (std::size_t i = 0; i < std::min(most, rowCount()); ++i)
        rows.push_back(m_view.standing ? rowOf(m_view.standing->verdict.reasons[i]) : rowOf(m_view.gaps[i]));
    return rows;
}

void ShiftText::setDue(ActionRow& row, Instant due) const
{
    row.by = m_times.moment(due, m_now);
    row.byAside = due >= m_now ? TimeText::span(due - m_now) : tr("late");
}

ActionRow ShiftText::rowOf(const Gap& gap) const
{
    ActionRow row = rowOf(gap.reason);
    row.subtitle = tr("%1; open %2").arg(row.subtitle, TimeText::span(m_now - gap.openedAt));
    return row;
}

ActionRow ShiftText::rowOf(const Reason& reason) const
{
    const auto found = itemNamed(m_ward.store(), m_view, reason.item);
    const Item* item = found ? &*found : nullptr;
    const bool unseen = reason.code == ReasonCode::NotChecked || reason.code == ReasonCode::StepsUnfinished;
    const bool critical = reason.severity == Severity::Critical;
    ActionRow row {.mark = unseen ? Mark::NotChecked : critical ? Mark::GapCritical : Mark::Gap,
        .title = m_reasons.title(reason, item),
        .subtitle = m_reasons.why(reason, item),
        .what = item != nullptr ? m_ward.language().wording(item->whenNotMet) : QString(),
        .who = {},
        .by = {},
        .byAside = {}};
    if (unseen) {
        row.what = tr("Look at it now");
        return row;
    }
    const auto gap = std::find_if(
        m_view.gaps.begin(), m_view.gaps.end(), [&](const Gap& g) { return g.item == reason.item; });
    row.who = gap != m_view.gaps.end() && !gap->owner.empty() ? qs(gap->owner) : tr("nobody yet");
    if (reason.readyAt && *reason.readyAt > m_now) {
        row.who = tr("runs by itself");
        setDue(row, *reason.readyAt);
    } else if (gap != m_view.gaps.end()) {
        setDue(row, gap->due);
    }
    return row;
}

std::vector<Fact> ShiftText::facts() const
{
    std::vector<Fact> facts;
    const BoardView& board = m_ward.board();
    const bool hasBoard = !board.warmers.empty() || !board.births.empty();
    // A round that saw a warmer on is believed until somebody starts its clock.
    const bool byClock = !board.offTooSoon.empty()
        || std::any_of(board.warmers.begin(), board.warmers.end(),
            [](const WarmerRow& row) { return row.standing.onSince.has_value(); });
    if (byClock || (!m_view.standing && !board.warmers.empty()))
        facts.push_back(warmerFact());
    if (hasBoard)
        facts.push_back(birthsFact());
    if (!m_view.standing)
        return facts;
    const Checklist& checklist = m_view.adopted.checklist;
    bool since = byClock;
    bool kit = hasBoard;
    bool measure = false;
    for (std::size_t at = 0; at < checklist.itemCount(); ++at) {
        const ItemRule& rule = checklist.item(at).rule;
        if (const auto* s = std::get_if<SinceRule>(&rule); s != nullptr && !std::exchange(since, true))
            facts.insert(facts.begin(), sinceFact(at, *s));
        else if (const auto* k = std::get_if<KitRule>(&rule); k != nullptr && !std::exchange(kit, true))
            facts.push_back(kitFact(at, *k));
        else if (const auto* m = std::get_if<MeasureRule>(&rule); m != nullptr && !std::exchange(measure, true))
            facts.push_back(measureFact(at, *m));
    }
    return facts;
}

Fact ShiftText::warmerFact() const
{
    const BoardView& board = m_ward.board();
    const BoardText text(m_times, board, m_now);
    const auto of = [&](auto&& which) { return std::find_if(board.warmers.begin(), board.warmers.end(), which); };
    auto first = of([&](const WarmerRow& row) { return !text.offByMistake(row.device.id).isEmpty(); });
    if (first == board.warmers.end())
        first = of([](const WarmerRow& row) { return row.standing.state == WarmerState::Warming; });
    if (first == board.warmers.end())
        first = of([](const WarmerRow& row) { return row.standing.state == WarmerState::Ready; });
    if (first == board.warmers.end())
        first = board.warmers.begin();
    Fact fact {.title = text.device(first->device.id), .value = {}, .aside = {}, .progress = {}, .lines = {}};
    const bool on = first->standing.onSince.has_value();
    fact.value = on ? text.warm(*first) : text.running(*first);
    if (first->standing.state == WarmerState::Warming)
        fact.progress = static_cast<double>(first->standing.onFor.count()) / static_cast<double>(board.warmUp.count());
    const QString mistake = text.offByMistake(first->device.id);
    if (on || !mistake.isEmpty())
        fact.lines << (on ? text.running(*first) : mistake);
    QStringList others;
    for (const WarmerRow& row : board.warmers) {
        if (row.device.id != first->device.id)
            others << tr("%1: %2").arg(text.device(row.device.id),
                row.standing.onSince ? text.warm(row) : text.running(row));
    }
    if (!others.isEmpty())
        fact.lines << others.join(QStringLiteral(" · "));
    return fact;
}

Fact ShiftText::birthsFact() const
{
    const BoardView& board = m_ward.board();
    const BoardText text(m_times, board, m_now);
    Fact fact {.title = tr("Births expected"), .value = tr("none"), .aside = {}, .progress = {}, .lines = {}};
    fact.aside = board.kits ? tr("%n whole kit(s) left", nullptr, static_cast<int>(*board.kits))
                            : tr("kits were not counted");
    if (board.births.empty())
        return fact;
    fact.value = m_ward.language().locale().toString(static_cast<int>(board.births.size()));
    const BirthCover& next = board.births.front();
    fact.lines << text.birth(next.birth) << text.places(next);
    return fact;
}

QString ShiftText::seen(std::size_t at) const
{
    const Instant when = m_view.standing->seenAt[at];
    return tr("seen %1, %2 ago").arg(m_times.moment(when, m_now), TimeText::span(m_now - when));
}

QString ShiftText::unanswered(std::size_t at) const
{
    const Judgement& judged = m_view.standing->judgements[at];
    if (judged.reason)
        return m_reasons.why(*judged.reason, &m_view.adopted.checklist.item(at));
    return tr("does not apply");
}

Fact ShiftText::sinceFact(std::size_t at, const SinceRule& rule) const
{
    const Item& item = m_view.adopted.checklist.item(at);
    Fact fact {.title = m_ward.language().wording(item.label), .value = {}, .aside = {}, .progress = {}, .lines = {}};
    const auto* since = std::get_if<RunningSince>(&m_view.standing->answers[at]);
    if (since == nullptr) {
        fact.value = unanswered(at);
        fact.lines << seen(at);
        return fact;
    }
    const Instant readyAt = since->since + rule.minutes;
    const auto on = std::max(std::chrono::floor<std::chrono::minutes>(m_now - since->since), std::chrono::minutes(0));
    if (readyAt > m_now) {
        fact.value = tr("ready at %1").arg(m_times.clock(readyAt));
        fact.aside = tr("warming, %1 to go").arg(TimeText::span(readyAt - m_now + std::chrono::seconds(59)));
        fact.progress = static_cast<double>(on.count()) / static_cast<double>(rule.minutes.count());
        fact.lines << tr("on for %1 of %n minute(s), since %2", nullptr, static_cast<int>(rule.minutes.count()))
                          .arg(on.count())
                          .arg(m_times.clock(since->since));
    } else {
        fact.value = tr("warm since %1").arg(m_times.clock(readyAt));
        fact.lines << tr("on since %1 · %2").arg(m_times.clock(since->since), seen(at));
    }
    return fact;
}

Fact ShiftText::kitFact(std::size_t at, const KitRule& rule) const
{
    const Item& item = m_view.adopted.checklist.item(at);
    Fact fact {.title = m_ward.language().wording(item.label), .value = {}, .aside = {}, .progress = {}, .lines = {}};
    if (const auto* counted = std::get_if<KitCounted>(&m_view.standing->answers[at])) {
        const WholeKits whole = wholeKits(rule, *counted);
        fact.value = m_reasons.answer(item, *counted, m_times);
        fact.aside = m_reasons.limits(item, m_view.standing->round.limits);
        if (whole.kits < rule.par)
            fact.lines << tr("short of: %1").arg(
                m_ward.language().wording(rule.parts[whole.limitingPart].label));
    } else {
        fact.value = unanswered(at);
    }
    fact.lines << seen(at);
    return fact;
}

Fact ShiftText::measureFact(std::size_t at, const MeasureRule& rule) const
{
    const Item& item = m_view.adopted.checklist.item(at);
    const Answer& answer = m_view.standing->answers[at];
    const LimitSet& set = limitsFor(item, rule, m_view.standing->round.limits);
    Fact fact {.title = m_ward.language().wording(item.label), .value = {}, .aside = {}, .progress = {}, .lines = {}};
    fact.value = std::holds_alternative<Measured>(answer) ? m_reasons.answer(item, answer, m_times) : unanswered(at);
    fact.aside = tr("limits %1").arg(m_reasons.limits(item, m_view.standing->round.limits));
    fact.lines << tr("%1 · %2").arg(seen(at), m_ward.language().wording(set.name));
    return fact;
}

std::vector<StripDay> ShiftText::days(const std::vector<StripColumn>& columns) const
{
    std::vector<StripDay> days;
    std::optional<Date> last;
    for (const StripColumn& column : columns) {
        if (last != column.shift.date)
            days.push_back({.label = m_times.day(column.shift.date), .shifts = 0});
        last = column.shift.date;
        ++days.back().shifts;
    }
    return days;
}

StripCell ShiftText::cell(const StripColumn& column, std::size_t section) const
{
    if (section < column.sections.size()) {
        constexpr std::array marks {
            Mark::GapCritical, Mark::Gap, Mark::NotChecked, Mark::Met, Mark::DoesNotApply};
        return {.mark = marks[static_cast<std::size_t>(column.sections[section])], .word = {}};
    }
    if (column.shift.slot() == m_view.shift.slot())
        return {}; // still to come
    return {.mark = Mark::NotChecked, .word = tr("no round")};
}

StripData ShiftText::strip(const std::vector<StripColumn>& columns) const
{
    StripData data {.finding = {}, .rows = {}, .days = days(columns), .shifts = {}, .cells = {}};
    std::vector<std::vector<SectionState>> states;
    for (const StripColumn& column : columns) {
        data.shifts.push_back(m_times.shift(column.shift));
        if (column.shift.slot() != m_view.shift.slot() || !column.sections.empty())
            states.push_back(column.sections);
    }
    const auto& sections = m_view.adopted.checklist.sections;
    for (std::size_t at = 0; at < sections.size(); ++at) {
        data.rows.push_back(m_ward.language().wording(sections[at].title));
        std::vector<StripCell> cells;
        cells.reserve(columns.size());
        for (const StripColumn& column : columns)
            cells.push_back(cell(column, at));
        data.cells.push_back(std::move(cells));
    }
    const StripFinding finding = findingOf(states);
    const int dayCount = static_cast<int>(data.days.size());
    QString said = finding.section
        ? tr("%1: a gap in %2 of %n round(s)", nullptr, finding.rounds)
              .arg(data.rows[*finding.section])
              .arg(finding.gaps)
        : tr("No gap in %n round(s)", nullptr, finding.rounds);
    said = tr("%1, last %n day(s)", nullptr, dayCount).arg(said);
    if (finding.missing > 0)
        said = tr("%1; %n shift(s) without a round", nullptr, finding.missing).arg(said);
    data.finding = said;
    return data;
}

}
