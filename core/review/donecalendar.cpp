// SPDX-License-Identifier: MIT
#include "core/review/donecalendar.h"

#include <set>

namespace cradlepost {

namespace {

DoneState stateOf(const ChosenRound& round, const ReviewOptions& options)
{
    if (round.fact->fromPaper)
        return DoneState::Paper;
    const auto length = round.shift->ends - round.shift->begins;
    const auto allowed = std::chrono::duration<double, std::milli>(length) * options.inTimeShare;
    const Instant at = std::max(round.fact->finished, round.fact->recorded);
    return at - round.shift->begins < allowed ? DoneState::InTime : DoneState::Late;
}

void count(DoneCalendar& calendar, const DoneCell& cell)
{
    calendar.late += cell.state == DoneState::Late ? 1 : 0;
    calendar.missing += cell.state == DoneState::Missing ? 1 : 0;
    calendar.paper += cell.state == DoneState::Paper ? 1 : 0;
    calendar.amended += cell.amended > 0 ? 1 : 0;
}

}

const char* codeName(DoneState state)
{
    switch (state) {
    case DoneState::InTime:
        return "in-time";
    case DoneState::Late:
        return "late";
    case DoneState::Paper:
        return "paper";
    case DoneState::Missing:
        return "missing";
    case DoneState::Running:
        break;
    }
    return "running";
}

DoneCalendar doneCalendar(const Selection& selection)
{
    DoneCalendar calendar{.shifts = selection.shifts};
    const auto rounds = selection.rounds();
    auto round = rounds.begin();
    std::set<std::string> hands;
    std::int64_t done = 0;
    for (const Shift* shift : selection.due) {
        if (!selection.span.contains(shift->date))
            continue;
        DoneCell cell{.shift = *shift};
        if (round != rounds.end() && round->shift == shift) {
            cell.state = stateOf(*round, selection.options);
            cell.readiness = round->state;
            cell.amended = round->fact->amended;
            hands.insert(round->fact->actor);
            ++done;
            ++round;
        } else if (shift->ends > selection.history->now) {
            cell.state = DoneState::Running;
        }
        count(calendar, cell);
        calendar.cells.push_back(std::move(cell));
    }
    calendar.done = shareOf({.x = done, .n = done + calendar.missing});
    const std::int64_t timed = done - calendar.paper;
    calendar.inTime = shareOf({.x = timed - calendar.late, .n = timed});
    calendar.hands = static_cast<std::int64_t>(hands.size());
    return calendar;
}

}
