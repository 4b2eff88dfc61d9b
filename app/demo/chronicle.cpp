// SPDX-License-Identifier: MIT
#include "app/demo/chronicle.h"

#include <algorithm>

namespace cradlepost::demo {

using namespace std::chrono;

namespace {

bool isNight(const Shift& shift) { return shift.code == "night"; }
Moment momentOf(const Shift& shift) { return {.day = shift.date, .night = isNight(shift)}; }

std::vector<std::string> notMet(const Checklist& checklist, const RoundRecord& round)
{
    std::vector<std::string> items;
    for (std::size_t at = 0; at < round.outcomes.size(); ++at) {
        if (round.outcomes[at] == 'g' || round.outcomes[at] == 'u')
            items.push_back(checklist.item(at).id);
    }
    return items;
}

std::vector<std::size_t> positionsOf(const Checklist& checklist, const std::vector<std::string>& items)
{
    std::vector<std::size_t> positions;
    for (const std::string& item : items)
        positions.push_back(*checklist.position(item));
    return positions;
}

}

Chronicle::Chronicle(Store& store, FixedClock& clock, const UnitPlan& plan, const Stories& stories,
    const Lists& lists, TimeZone zone, Instant until)
    : m_store(store)
    , m_clock(clock)
    , m_plan(plan)
    , m_stories(stories)
    , m_lists(lists)
    , m_zone(std::move(zone))
    , m_calendar(plan.pattern, m_zone)
    , m_until(until)
    , m_limit(plan.is(sorrelHill) ? until - minutes(16) : until)
    , m_free(Instant::min())
    , m_random(Random::named("days of " + plan.unit.id))
    , m_ward(plan, stories, lists.shift.checklist)
    , m_storeroom(store, clock, plan, stories, lists.shift.checklist, m_zone)
    , m_devices(store, clock, plan, stories, m_zone)
    , m_afterwards(plan, stories, lists.shift.checklist, m_zone)
{
}

Result<int> Chronicle::write()
{
    Shift shift = m_calendar.shift(m_stories.first, 0);
    m_clock.set(shift.begins - hours(26));
    if (auto done = setUp(); !done)
        return tl::unexpected(done.error());
    for (; shift.begins <= m_until; shift = m_calendar.next(shift)) {
        auto done = work(shift);
        if (done && shift.ends > m_until
            && !m_booksClosed) // where this shift's round is done the books are closed with it
            done = closeBooks(shift.begins, shift);
        if (done && isPresent(shift))
            done = present(shift);
        if (!done)
            return tl::unexpected(done.error());
    }
    return m_rounds;
}

Result<void> Chronicle::setUp()
{
    const std::string& unit = m_plan.unit.id;
    const std::string& actor = m_plan.people.front().initials;
    const Date from = addDays(m_stories.first, -1);
    auto done = m_store.describeUnit(m_plan.unit, actor);
    if (done)
        done = m_store.setPattern(unit, {.from = from, .pattern = m_plan.pattern}, actor);
    if (done)
        done = m_store.setPeople(unit, m_plan.people, actor);
    for (const Lists::Entry* entry : {&m_lists.shift, &m_lists.preBirth, &m_lists.afterUse}) {
        m_clock.advance(minutes(4));
        if (done)
            done = m_store.adopt(unit,
                {.from = from,
                    .document = entry->document,
                    .limits = limitsOf(entry->checklist, m_plan.limits)},
                actor);
    }
    return done;
}

Result<void> Chronicle::closeBooks(Instant at, const Shift& shift)
{
    m_booksClosed = true;
    const auto done = m_storeroom.close(at, shift.date, m_ward);
    return done ? m_devices.close(at) : done;
}

Result<void> Chronicle::work(const Shift& shift)
{
    m_ofShift.reset();
    if (auto done = m_storeroom.pass(shift, m_ward); !done)
        return done;
    if (auto done = m_devices.pass(shift); !done)
        return done;
    m_ward.pass(momentOf(shift), shift.begins);
    if (auto done = catchUp(shift); !done)
        return done;
    Events events;
    expect(shift, events);
    while (!events.empty()) {
        const auto [at, event] = *events.begin();
        events.erase(events.begin());
        if (event == Event::SpotCheck) { // by somebody who is on no other round
            if (auto done = spotCheck(std::max(at, m_free + seconds(90)), shift); !done)
                return done;
            continue;
        }
        const Instant start
            = m_free == Instant::min() ? at : std::max(at, m_free + seconds(m_random.between(60, 150)));
        if (auto done = happen(event, start, shift, events); !done)
            return done;
    }
    return {};
}

void Chronicle::expect(const Shift& shift, Events& events)
{
    const Habits& habits = m_plan.habits;
    const bool silent = isSilent(m_plan, shift.date, m_stories);
    const double missed = (1 - habits.roundsDone)
        * (habits.roundsDone < 0.5 ? 1
                : isNight(shift)   ? 1.4
                                   : 0.8);
    const bool copied = isCopied(m_plan, shift.date, m_stories);
    if (!m_random.chance(copied ? 0.01 : missed) && !silent && !isPresent(shift) && !isOutstanding(shift))
        events.emplace(dueStart(shift), Event::ShiftRound);
    const auto length = floor<minutes>(shift.ends - shift.begins);
    constexpr int draws = 6;
    const double each = habits.birthsPerDay * static_cast<double>(length.count()) / (24.0 * 60 * draws);
    for (int i = 0; i < draws; ++i) {
        if (!m_random.chance(each))
            continue;
        const Instant birth
            = shift.begins + minutes(m_random.between(20, static_cast<int>(length.count()) - 75));
        events.emplace(birth, Event::Birth);
        if (m_random.chance(habits.checksDone) && !silent)
            events.emplace(birth - minutes(m_random.between(4, 18)), Event::PreBirth);
        if (m_random.chance(habits.checksDone * 0.85) && !silent)
            events.emplace(birth + minutes(m_random.between(30, 65)), Event::AfterUse);
    }
}

Instant Chronicle::dueStart(const Shift& shift)
{
    if (isLate(m_plan) && m_random.chance(0.65)) {
        const double share = 0.5 + 0.52 * m_random.real();
        return shift.begins
            + seconds(static_cast<int>(
                share * static_cast<double>(floor<seconds>(shift.ends - shift.begins).count())));
    }
    if (isCopied(m_plan, shift.date, m_stories))
        return shift.begins + seconds(22 * 60 + m_random.between(-45, 45));
    return shift.begins + seconds(5 * 60 + static_cast<int>(45 * 60 * m_random.real() * m_random.real()));
}

Result<void> Chronicle::happen(Event event, Instant at, const Shift& shift, Events& events)
{
    switch (event) {
    case Event::ShiftRound:
        return shiftRound(at, shift, events);
    case Event::Recheck:
        return recheck(at, shift);
    case Event::Birth:
        m_ward.birth(shift.date);
        return {};
    case Event::PreBirth:
    case Event::AfterUse:
    case Event::SpotCheck:
        break;
    }
    return check(event, at, shift);
}

Result<RoundRecord> Chronicle::freshRound(Instant start, const Shift& shift, const std::string& actor)
{
    Draft draft = Walk::begin(
        m_lists.shift.checklist, RoundKind::Shift, m_plan.unit.id, actor, shift, m_plan.limits, start);
    const auto times = walkingTimes(m_lists.shift.checklist, draft.asked, paceOf(actor), m_random);
    return walked(m_lists.shift.checklist, m_zone, std::move(draft), times,
        [&](std::size_t at, Instant finish) -> Answer {
            if (m_random.chance(m_plan.habits.leftOut))
                return NotChecked{};
            return m_ward.seen(m_lists.shift.checklist.item(at), {.at = finish, .day = shift.date});
        });
}

Result<RoundRecord> Chronicle::copiedRound(
    Instant start, const Shift& shift, const std::string& actor, const RoundRecord& from)
{
    Draft draft = Walk::begin(
        m_lists.shift.checklist, RoundKind::Shift, m_plan.unit.id, actor, shift, m_plan.limits, start);
    const auto times = typingTimes(draft.asked.size(), m_random);
    const days apart(daysBetween(from.shift.date, shift.date));
    return walked(
        m_lists.shift.checklist, m_zone, std::move(draft), times, [&](std::size_t at, Instant) -> Answer {
            if (const auto* running = std::get_if<RunningSince>(&from.answers[at]))
                return RunningSince{running->since + apart}; // the same clock time
            return from.answers[at];
        });
}

Result<void> Chronicle::shiftRound(Instant start, const Shift& shift, Events& events)
{
    if (shift.ends > m_until && start < m_limit) // what the book says then is what the round sees
        if (auto done = closeBooks(start, shift); !done)
            return done;
    const std::string actor = actorOf(shift);
    const auto last = m_last.find(shift.index);
    const bool copied
        = isCopied(m_plan, shift.date, m_stories) && last != m_last.end() && !m_random.chance(0.05);
    const auto round
        = copied ? copiedRound(start, shift, actor, last->second) : freshRound(start, shift, actor);
    if (!round)
        return tl::unexpected(round.error());
    const auto saved = save(m_lists.shift.checklist, *round, actor);
    if (!saved || !*saved)
        return saved ? Result<void>() : tl::unexpected(saved.error());
    m_last.insert_or_assign(shift.index, *round);
    if (m_afterwards.isLookedAt(*round))
        events.emplace(round->finished + minutes(25), Event::SpotCheck);
    if (copied)
        return {};
    m_free += seconds(m_random.between(60, 240));
    if (auto done = act(decide(m_plan, m_stories, m_book, shift.date, m_free, m_random), actor, seconds(25));
        !done)
        return done;
    const auto items = notMet(m_lists.shift.checklist, *round);
    const Instant again = round->finished + minutes(m_random.between(25, 170));
    if (m_ward.mendSome(items, momentOf(shift)) && m_random.chance(0.4) && again < shift.ends)
        events.emplace(again, Event::Recheck);
    return {};
}

Result<void> Chronicle::recheck(Instant start, const Shift& shift)
{
    if (shift.ends > m_until && start < m_limit) // what was brought since is written up as well
        if (auto done = closeBooks(start, shift); !done)
            return done;
    const RoundRecord& first = m_ofShift->round;
    Draft draft = Walk::beginRecheck(m_lists.shift.checklist, m_plan.unit.id, m_ofShift->actor, shift,
        m_plan.limits, m_ofShift->id, first.answers,
        positionsOf(m_lists.shift.checklist, notMet(m_lists.shift.checklist, first)), start);
    const auto times
        = walkingTimes(m_lists.shift.checklist, draft.asked, paceOf(m_ofShift->actor) * 1.3, m_random);
    const auto round = walked(
        m_lists.shift.checklist, m_zone, std::move(draft), times, [&](std::size_t at, Instant finish) {
            return m_ward.seen(m_lists.shift.checklist.item(at), {.at = finish, .day = shift.date});
        });
    if (!round)
        return tl::unexpected(round.error());
    const auto saved = save(m_lists.shift.checklist, *round, m_ofShift->actor);
    return saved ? Result<void>() : tl::unexpected(saved.error());
}

Result<void> Chronicle::catchUp(const Shift& shift)
{
    const Instant at = std::max(m_free, shift.begins) + seconds(30);
    if (at > m_limit - minutes(1))
        return {};
    const auto rounds = m_afterwards.catchUp(m_store, m_clock, shift, at);
    if (!rounds)
        return tl::unexpected(rounds.error());
    m_rounds += *rounds;
    return {};
}

Result<void> Chronicle::spotCheck(Instant at, const Shift& shift)
{
    const std::string observer = m_afterwards.observerOf(m_ofShift->actor);
    const auto round = m_afterwards.spotCheck(m_ofShift->round, at, observer, [&](std::size_t item) {
        return m_ward.seen(m_lists.shift.checklist.item(item), {.at = at, .day = shift.date});
    });
    if (!round || round->finished > m_limit)
        return round ? Result<void>() : tl::unexpected(round.error());
    m_clock.set(round->finished);
    const auto id = m_store.saveRound(m_plan.unit.id, *round, observer);
    if (!id)
        return tl::unexpected(id.error());
    m_free = round->finished;
    ++m_rounds;
    return {};
}

Result<void> Chronicle::check(Event event, Instant start, const Shift& shift)
{
    if (shift.ends > m_until && start < m_limit) // a check counts too
        if (auto done = closeBooks(start, shift); !done)
            return done;
    const bool before = event == Event::PreBirth;
    const Checklist& list = before ? m_lists.preBirth.checklist : m_lists.afterUse.checklist;
    const std::string actor = actorOf(shift);
    Draft draft = Walk::begin(list, list.use, m_plan.unit.id, actor, shift, m_plan.limits, start);
    const auto times = walkingTimes(list, draft.asked, paceOf(actor) * (before ? 0.8 : 1.2), m_random);
    const auto round
        = walked(list, m_zone, std::move(draft), times, [&](std::size_t at, Instant finish) -> Answer {
              if (m_random.chance(m_plan.habits.leftOut * 3))
                  return NotChecked{};
              return m_ward.seen(list.item(at), {.at = finish, .day = shift.date});
          });
    if (!round)
        return tl::unexpected(round.error());
    const auto saved = save(list, *round, actor);
    return saved ? Result<void>() : tl::unexpected(saved.error());
}

Result<void> Chronicle::present(const Shift& shift)
{
    m_limit = m_until;
    const std::string actor = actorOf(shift);
    const Instant finish = m_until - minutes(2);
    Draft draft = Walk::begin(
        m_lists.shift.checklist, RoundKind::Shift, m_plan.unit.id, actor, shift, m_plan.limits, finish);
    const auto times = walkingTimes(m_lists.shift.checklist, draft.asked, 0.95, m_random);
    draft.started = finish - (finishOf(finish, times) - finish);
    const Instant switchedOn = floor<minutes>(m_until) - minutes(18);
    const auto round = walked(
        m_lists.shift.checklist, m_zone, std::move(draft), times, [&](std::size_t at, Instant end) -> Answer {
            const Item& item = m_lists.shift.checklist.item(at);
            if (item.id == "warmer-on-since")
                return RunningSince{switchedOn};
            return m_ward.seen(item, {.at = end, .day = shift.date});
        });
    if (!round)
        return tl::unexpected(round.error());
    const auto saved = save(m_lists.shift.checklist, *round, actor);
    if (!saved || !*saved)
        return saved ? Result<void>() : tl::unexpected(saved.error());
    m_free += seconds(20);
    return act(decideNow(m_plan, m_book, m_free, m_random), actor, seconds(15));
}

Result<bool> Chronicle::save(const Checklist& checklist, const RoundRecord& round, const std::string& actor)
{
    if (round.finished > m_limit)
        return false;
    if (isOnPaper(m_plan, round.shift.date, m_stories)) {
        if (round.kind == RoundKind::Shift) { // there are no sheets for the checks
            m_afterwards.onPaper(round, actor);
            m_book.note(checklist, round);
            m_free = round.finished;
        }
        return false;
    }
    m_clock.set(round.finished + milliseconds(m_random.between(200, 2400)));
    auto id = m_store.saveRound(m_plan.unit.id, round, actor);
    if (!id)
        return tl::unexpected(id.error());
    m_free = m_clock.now();
    m_book.note(checklist, round);
    ++m_rounds;
    if (round.kind == RoundKind::Shift)
        m_afterwards.recorded(*id, round, m_book);
    if (round.kind == RoundKind::Shift)
        m_ofShift = SavedRound{.id = std::move(*id), .actor = actor, .round = round};
    return true;
}

Result<void> Chronicle::act(const std::vector<GapAction>& actions, const std::string& actor, seconds apart)
{
    for (const GapAction& action : actions) {
        if (m_free > m_limit)
            return {};
        m_clock.set(m_free);
        if (auto done = m_store.actOnGap(m_plan.unit.id, action, actor); !done)
            return done;
        m_book.owned(action.item);
        m_free += apart;
    }
    return {};
}

std::string Chronicle::actorOf(const Shift& shift)
{
    const auto n = static_cast<int>(m_plan.people.size());
    const int rota = static_cast<int>(sys_days(shift.date).time_since_epoch().count()) / 2 + shift.index * 2;
    const int who = m_random.chance(0.15) ? m_random.between(0, n - 1) : rota % n;
    return m_plan.people[static_cast<std::size_t>(who)].initials;
}

double Chronicle::paceOf(const std::string& actor) const
{
    return m_plan.habits.pace * (0.85 + 0.35 * Random::named("pace of " + actor).real());
}

}
