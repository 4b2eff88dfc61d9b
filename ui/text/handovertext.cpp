// SPDX-License-Identifier: MIT
#include "ui/text/handovertext.h"

#include "core/supply/shelfplan.h"
#include "ui/text/wardtext.h"

#include <algorithm>
#include <functional>

namespace cradlepost {

namespace {

// Of each list, so that all of it stays on one page of paper.
constexpr std::size_t mostChanges = 5;
constexpr std::size_t mostBirths = 4;
constexpr std::size_t mostGaps = 8;
constexpr std::size_t mostShelves = 4;
constexpr std::size_t mostRequests = 7;

/** A line each, the rest as a count. */
template <class T>
void list(QStringList& lines, const std::vector<T>& all, std::size_t most,
    const std::function<QString(const T&)>& say, const std::function<QString(int)>& more)
{
    const std::size_t shown = all.size() > most ? most - 1 : all.size();
    for (std::size_t at = 0; at < shown; ++at)
        lines << say(all[at]);
    if (shown < all.size())
        lines << more(static_cast<int>(all.size() - shown));
}

std::optional<Readiness> readinessOf(const std::string& code)
{
    for (const Readiness one : {Readiness::NotReady, Readiness::ReadyWithGaps, Readiness::Ready}) {
        if (code == codeName(one))
            return one;
    }
    return std::nullopt;
}

}

HandoverText::HandoverText(const Store& store, const ShiftView& shift, const BoardView& board,
    const HandoverView& view, const Language& language, Instant now)
    : m_store(store)
    , m_shift(shift)
    , m_board(board)
    , m_view(view)
    , m_language(language)
    , m_times(language, shift.calendar.zone())
    , m_now(now)
    , m_open(store.openGaps(shift.unit.id).value_or(std::vector<Gap>()))
{
}

QStringList HandoverPart::allLines() const
{
    QStringList all;
    for (const HandoverGapWords& gap : gaps) {
        QStringList cells{QStringLiteral("**%1**").arg(gap.what)};
        for (const QString& cell : {gap.why, gap.who, gap.by}) {
            if (!cell.isEmpty())
                cells << cell;
        }
        all << cells.join(QStringLiteral(" · "));
    }
    return all + lines;
}

QString HandoverText::item(const std::string& id) const
{
    const auto found = itemNamed(m_store, m_shift, id);
    return found ? m_language.wording(found->label) : qs(id);
}

QString HandoverText::stock(const std::string& id) const
{
    const auto found = m_view.stockNames.find(id);
    if (found == m_view.stockNames.end())
        return qs(id);
    return qs(shelfName(found->second, m_shift.adopted.checklist, m_language.code().toStdString())
                  .value_or(found->second));
}

QString HandoverText::answer(const Handover& what) const
{
    const auto state = readinessOf(what.state);
    return state ? WardText::readiness(*state) : tr("No round in this shift");
}

HandoverWords HandoverText::words() const
{
    const Handover& what = m_view.what;
    HandoverWords words{.unit = qs(m_shift.unit.name),
        .shift = m_times.shift(m_shift.shift),
        .answer = answer(what),
        .company = {},
        .changes = changes(),
        .parts = {situation(), background(), assessment(), recommendation()},
        .given = {},
        .taken = {}};
    if (what.roundFinished)
        words.company = tr("%1 of %2 items met, round finished %3")
                            .arg(what.met)
                            .arg(what.applicable)
                            .arg(m_times.moment(*what.roundFinished, m_now));
    if (m_view.last && m_view.last->given.at >= m_shift.shift.begins) {
        words.given = tr("Given by %1, %2")
                          .arg(qs(m_view.last->given.by), m_times.moment(m_view.last->given.at, m_now));
        if (m_view.last->taken)
            words.taken = tr("Taken by %1, %2")
                              .arg(qs(m_view.last->taken->by), m_times.moment(m_view.last->taken->at, m_now));
    }
    return words;
}

HandoverPart HandoverText::situation() const
{
    const Handover& what = m_view.what;
    HandoverPart part{.title = tr("Situation"), .lines = {}};
    const auto critical = std::count_if(what.gaps.begin(), what.gaps.end(),
        [](const HandoverGap& one) { return one.severity == Severity::Critical; });
    part.lines << (critical > 0 ? tr("**%n critical gap(s)** open", nullptr, static_cast<int>(critical))
                                : tr("No critical gap is open"));
    part.lines << (what.births.empty()
            ? tr("No birth is on the board")
            : tr("**%n birth(s)** expected", nullptr, static_cast<int>(what.births.size())));
    return part;
}

HandoverPart HandoverText::background() const
{
    const BoardText board(m_times, m_board, m_now);
    HandoverPart part{.title = tr("Background"), .lines = {}};
    list<BirthCover>(
        part.lines, m_board.births, mostBirths,
        [&](const BirthCover& cover) {
            return tr("Birth **%1**: %2; %3")
                .arg(board.birth(cover.birth), board.places(cover), board.kit(cover));
        },
        [](int more) { return tr("and %n more birth(s)", nullptr, more); });
    for (const WarmerRow& row : m_board.warmers)
        part.lines << tr("%1: %2").arg(board.device(row.device.id),
            row.standing.readyAt ? tr("%1, **%2**").arg(board.running(row), board.warm(row))
                                 : board.running(row));
    if (m_board.kits)
        part.lines << tr("%n whole kit(s) left", nullptr, static_cast<int>(*m_board.kits));
    return part;
}

QString HandoverText::why(const HandoverGap& gap, const Item* item) const
{
    const auto open = std::find_if(m_open.begin(), m_open.end(),
        [&](const Gap& one) { return one.item == gap.item && one.nth == gap.nth; });
    return open == m_open.end() ? QString() : ReasonText(m_language).why(open->reason, item);
}

HandoverGapWords HandoverText::gap(const HandoverGap& gap) const
{
    const auto named = itemNamed(m_store, m_shift, gap.item);
    const QString name = named ? m_language.wording(named->label) : qs(gap.item);
    const QString due = m_times.moment(gap.due, m_now);
    return {.what = gap.severity == Severity::Critical ? tr("Critical: %1").arg(name) : name,
        .why = why(gap, named ? &*named : nullptr),
        .who = gap.owner.empty() ? tr("nobody yet") : qs(gap.owner),
        .by = gap.due < m_now ? tr("by %1, late").arg(due) : tr("by %1").arg(due)};
}

QString HandoverText::lowStock(const HandoverStock& low) const
{
    const QString line
        = tr("Short: **%1**, %n left", nullptr, static_cast<int>(low.usable)).arg(stock(low.item));
    return low.runsOut ? tr("%1, runs out %2").arg(line, m_times.day(*low.runsOut)) : line;
}

HandoverPart HandoverText::assessment() const
{
    const Handover& what = m_view.what;
    HandoverPart part{.title = tr("Assessment"), .lines = {}};
    const std::size_t shown = what.gaps.size() > mostGaps ? mostGaps - 1 : what.gaps.size();
    for (std::size_t at = 0; at < shown; ++at)
        part.gaps.push_back(gap(what.gaps[at]));
    if (shown < what.gaps.size())
        part.lines << tr("and %n more gap(s), see Gaps", nullptr, static_cast<int>(what.gaps.size() - shown));
    list<HandoverStock>(
        part.lines, what.stock, mostShelves, [&](const HandoverStock& one) { return lowStock(one); },
        [](int more) { return tr("and %n more item(s), see Stores", nullptr, more); });
    const BoardText board(m_times, m_board, m_now);
    for (const HandoverDevice& one : what.devices)
        part.lines << tr("%1 is out for repair").arg(board.device(one.device));
    if (part.gaps.empty() && part.lines.isEmpty())
        part.lines << tr("Nothing is open and nothing runs out");
    return part;
}

QString HandoverText::request(const HandoverRequest& request) const
{
    const BoardText board(m_times, m_board, m_now);
    const QString by = request.by ? m_times.moment(*request.by, m_now) : QString();
    switch (request.ask) {
    case HandoverAsk::MendBeforeBirth:
        return tr("Mend before the next birth: **%1**").arg(item(request.subject));
    case HandoverAsk::Restock:
        return tr("Restock %1").arg(stock(request.subject));
    case HandoverAsk::SwitchOnWarmer:
        return tr("Switch **%1** on by **%2**").arg(board.device(request.subject), by);
    case HandoverAsk::AssembleKit:
        return tr("Make up a kit for the birth %1").arg(board.birth(request.subject));
    case HandoverAsk::ReadFridge:
        return tr("Read %1 before %2").arg(board.device(request.subject), by);
    case HandoverAsk::ChaseRepair:
        return tr("Ask after the repair of %1").arg(board.device(request.subject));
    case HandoverAsk::DoRound:
        break;
    }
    return tr("Walk the round of %1 by %2").arg(TimeText::shiftName(request.subject), by);
}

HandoverPart HandoverText::recommendation() const
{
    HandoverPart part{.title = tr("Recommendation"), .lines = {}};
    auto requests = m_view.what.requests;
    std::stable_sort(
        requests.begin(), requests.end(), [](const HandoverRequest& a, const HandoverRequest& b) {
            const auto weight = [](const HandoverRequest& one) {
                return one.ask == HandoverAsk::SwitchOnWarmer ? 0 : one.ask == HandoverAsk::Restock ? 2 : 1;
            };
            return weight(a) < weight(b);
        });
    list<HandoverRequest>(
        part.lines, requests, mostRequests, [&](const HandoverRequest& one) { return request(one); },
        [](int more) { return tr("and %n more thing(s) to do", nullptr, more); });
    return part;
}

QString HandoverText::change(const HandoverChange& change) const
{
    using Code = HandoverChangeCode;
    const BoardText board(m_times, m_board, m_now);
    const auto stateName = [&](const std::string& code) {
        const auto state = readinessOf(code);
        return state ? WardText::readiness(*state) : tr("No round in this shift");
    };
    switch (change.code) {
    case Code::StateChanged:
        return tr("Was: %1. Now: **%2**").arg(stateName(change.before), stateName(change.after));
    case Code::GapOpened:
        return tr("New gap: **%1**").arg(item(change.subject));
    case Code::GapChanged:
        return tr("Other owner or time: %1").arg(item(change.subject));
    case Code::GapMended:
        return tr("Mended: %1").arg(item(change.subject));
    case Code::StockWorse:
        return tr("Shorter: %1").arg(stock(change.subject));
    case Code::StockBetter:
        return tr("Restocked: %1").arg(stock(change.subject));
    case Code::DeviceOut:
        return tr("Out for repair: %1").arg(board.device(change.subject));
    case Code::DeviceBack:
        return tr("Back from repair: %1").arg(board.device(change.subject));
    case Code::WarmerOn:
        return tr("Switched on: %1").arg(board.device(change.subject));
    case Code::WarmerOff:
        return tr("Switched off: %1").arg(board.device(change.subject));
    case Code::BirthExpected:
        return tr("Newly expected: birth %1").arg(board.birth(change.subject));
    case Code::BirthChanged:
        return tr("Expected otherwise: birth %1").arg(board.birth(change.subject));
    case Code::BirthGone:
        break;
    }
    return tr("A birth is off the board");
}

HandoverPart HandoverText::changes() const
{
    if (!m_view.last)
        return {.title = tr("The first handover of this ward"), .lines = {}};
    HandoverPart part{
        .title = tr("Since the handover of %1").arg(m_times.moment(m_view.last->given.at, m_now)),
        .lines = {}};
    list<HandoverChange>(
        part.lines, m_view.changes, mostChanges, [&](const HandoverChange& one) { return change(one); },
        [](int more) { return tr("and %n more change(s)", nullptr, more); });
    if (part.lines.isEmpty())
        part.lines << tr("Nothing has changed");
    return part;
}

}
