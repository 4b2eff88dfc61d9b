// SPDX-License-Identifier: MIT
#include "core/store/districthistory.h"

#include "core/base/orderedwork.h"
#include "core/review/unitquestions.h"
#include "core/store/districtshelves.h"
#include "core/store/parts.h"
#include "core/store/unithistory.h"

#include <algorithm>
#include <map>
#include <span>
#include <thread>

namespace cradlepost {

namespace {

using DayCount = std::chrono::duration<double, std::ratio<86400>>;
using HourCount = std::chrono::duration<double, std::ratio<3600>>;

/** Gaps and looks of the items of one checklist, by position. */
using Looks = std::vector<stats::Tally>;

void look(Looks& looks, std::string_view outcomes)
{
    looks.resize(std::max(looks.size(), outcomes.size()));
    for (std::size_t i = 0; i < outcomes.size(); ++i) {
        const char letter = outcomes[i];
        looks[i].x += letter == 'g' ? 1 : 0;
        looks[i].n += letter == 'g' || letter == 'm' ? 1 : 0;
    }
}

bool isLate(const RoundFact& round, const Shift& shift, double inTimeShare)
{
    const auto allowed = std::chrono::duration<double, std::milli>(shift.ends - shift.begins) * inTimeShare;
    return std::max(round.finished, round.recorded) - shift.begins >= allowed;
}

/** Due and done of a span; `done` holds the slots with a round, in order. */
void countDue(UnitTallies& tallies, std::span<const Shift> due, const std::vector<Slot>& done,
    const ReviewSpan& span, Instant now)
{
    std::map<Date, bool> days; // with a round due: whether one was done
    for (const Shift& shift : due) {
        if (!span.contains(shift.date))
            continue;
        const bool isDone = std::binary_search(done.begin(), done.end(), shift.slot());
        if (!isDone && shift.ends > now)
            continue;
        ++tallies.due;
        tallies.done += isDone ? 1 : 0;
        days[shift.date] = days[shift.date] || isDone;
    }
    int silence = 0;
    for (const auto& [day, isDone] : days) {
        silence = isDone ? 0 : silence + 1;
        tallies.longestSilence = std::max(tallies.longestSilence, silence);
    }
}

}

/** A unit's rounds on their way to whoever looks into their entries. */
struct Entries
{
    std::size_t unit = 0; ///< position in the district
    UnitHistory history;
    std::int64_t questions = 0;
};

/**
 * Reads all units, one after the other by the same prepared statements. What their entries say is worked out in other
 * threads meanwhile: it takes as long as the reading.
 */
class DistrictReader
{
public:
    DistrictReader(const Store& store, const ReviewSpan& span, Instant now)
        : m_parts(*store.m_parts)
        , m_store(store)
    {
        m_history.span = span;
        m_history.before = spanBefore(span);
        m_history.now = now;
        m_history.months = seriesOf(span);
        m_series = m_history.months.front() / std::chrono::day(1);
    }

    DistrictHistory read(EntryQuestions questions)
    {
        std::vector<Unit> units = need(m_store.units());
        std::stable_sort(
            units.begin(), units.end(), [](const Unit& a, const Unit& b) { return a.name < b.name; });
        if (!units.empty())
            m_history.zone = need(TimeZone::named(units.front().zone));
        if (questions == EntryQuestions::Ask)
            m_entries.emplace(threads(), [span = m_history.span](Entries& entries) {
                entries.questions = static_cast<std::int64_t>(need(unitQuestions(entries.history, span)).size());
                entries.history = {}; // given back here, beside the reading
            });
        for (const Unit& unit : units)
            readUnit(unit);
        while (m_entries && m_entries->waiting() > 0)
            takeEntries();
        setItems();
        readStock();
        return std::move(m_history);
    }

private:
    /** What is gathered of one unit before all checklists are known. */
    struct Gathered
    {
        std::map<std::size_t, Looks> looks; ///< by position in m_history.lists
    };

    /** Beside the one that reads. */
    static unsigned threads() { return std::max(2U, std::thread::hardware_concurrency()) - 1; }

    void takeEntries()
    {
        const Entries done = m_entries->take();
        m_history.units[done.unit].questions = done.questions;
    }

    void readUnit(const Unit& unit)
    {
        const Date dueFrom = m_entries ? std::min(m_history.before.from, lookBack(m_history.span))
                                       : m_history.before.from;
        UnitHistory history = need(unitRounds(m_store, unit.id,
            {.from = std::min(dueFrom, m_series), .dueFrom = dueFrom}, m_history.span, m_history.now));
        DistrictUnit one{.id = unit.id, .name = unit.name, .level = unit.level};
        one.months.resize(m_history.months.size());
        m_gathered.emplace_back();
        const auto due = std::find_if(history.due.begin(), history.due.end(),
            [&](const Shift& shift) { return shift.date >= m_history.before.from; });
        const std::span<const Shift> counted(due, history.due.end());
        m_done.clear();
        takeRounds(one, history, counted);
        countDue(one.span, counted, m_done, m_history.span, m_history.now);
        countDue(one.before, counted, m_done, m_history.before, m_history.now);
        readEnd(one, history, counted);
        readOthers(unit.id);
        readVisits(one, history.zone);
        m_history.units.push_back(std::move(one));
        if (!m_entries)
            return;
        if (m_entries->waiting() > 2 * std::size_t{threads()})
            takeEntries();
        m_entries->put({.unit = m_history.units.size() - 1, .history = std::move(history)});
    }

    void addToMonth(DistrictUnit& unit, Date day, bool isClear, stats::Tally items) const
    {
        const auto month
            = std::find(m_history.months.begin(), m_history.months.end(), day.year() / day.month());
        if (month == m_history.months.end())
            return;
        UnitMonth& at = unit.months[static_cast<std::size_t>(month - m_history.months.begin())];
        at.noCriticalGap += {.x = isClear ? 1 : 0, .n = 1};
        at.items += items;
    }

    void takeRounds(DistrictUnit& unit, const UnitHistory& history, std::span<const Shift> due)
    {
        std::vector<std::size_t> lists; // of the unit's, among all
        for (const ChecklistInForce& list : history.lists)
            lists.push_back(listOf(list.checklist->id, list.checklist->version, 0));
        auto shift = due.begin();
        for (const RoundFact& round : history.rounds) {
            const Date day = dateOfSlot(round.slot);
            const std::size_t list = lists[round.list];
            m_latest[list] = std::max(m_latest[list], round.slot);
            addToMonth(unit, day, round.state != Readiness::NotReady, itemsOf(round));
            while (shift != due.end() && shift->slot() < round.slot)
                ++shift;
            if (shift != due.end() && shift->slot() == round.slot)
                takeRound(unit, round, *shift, list);
        }
    }

    static stats::Tally itemsOf(const RoundFact& round) { return {.x = round.met, .n = round.applicable}; }

    void takeRound(DistrictUnit& unit, const RoundFact& round, const Shift& shift, std::size_t list)
    {
        m_done.push_back(round.slot);
        const bool inSpan = m_history.span.contains(shift.date);
        UnitTallies& tallies = inSpan ? unit.span : unit.before;
        tallies.add(round.state);
        tallies.items += itemsOf(round);
        tallies.paper += round.fromPaper ? 1 : 0;
        tallies.late += !round.fromPaper && isLate(round, shift, m_options.inTimeShare) ? 1 : 0;
        tallies.amended += round.amended > 0 ? 1 : 0;
        if (!inSpan)
            return;
        look(m_gathered.back().looks[list], round.outcomes);
        addShift(unit, shift.code, round.state != Readiness::NotReady);
    }

    static void addShift(DistrictUnit& unit, const std::string& code, bool isClear)
    {
        auto at = std::find_if(
            unit.shifts.begin(), unit.shifts.end(), [&](const UnitShift& one) { return one.shift == code; });
        if (at == unit.shifts.end())
            at = unit.shifts.insert(at, {.shift = code});
        at->noCriticalGap += {.x = isClear ? 1 : 0, .n = 1};
    }

    std::size_t listOf(std::string_view id, int version, Slot slot)
    {
        for (std::size_t i = 0; i < m_history.lists.size(); ++i) {
            const Checklist& list = *m_history.lists[i].checklist;
            if (list.version == version && list.id == id) {
                m_latest[i] = std::max(m_latest[i], slot);
                return i;
            }
        }
        m_history.lists.push_back(
            {.checklist = m_parts.knownChecklist(std::string(id), version), .limits = {}});
        m_latest.push_back(slot);
        return m_history.lists.size() - 1;
    }

    void readOthers(const std::string& unit)
    {
        for (const RoundKind kind : {RoundKind::PreBirth, RoundKind::AfterUse}) {
            const auto adopted
                = m_parts.projector.checklists().adopted(unit, kind, addDays(m_history.span.to, -1));
            if (!adopted)
                continue;
            auto list = m_parts.projector.checklists().find(adopted->checklist, adopted->version);
            auto& others = m_history.others;
            if (list && std::find(others.begin(), others.end(), list) == others.end())
                others.push_back(std::move(list));
        }
    }

    /** What stands at the end of the span. */
    void readEnd(DistrictUnit& unit, const UnitHistory& history, std::span<const Shift> due)
    {
        Instant end = due.empty() ? history.zone.toInstant({.date = m_history.span.to}) : due.back().ends;
        end = std::min(end, m_history.now);
        for (const Gap& gap : m_parts.gaps.during(unit.id, end, end))
            unit.open.push_back(
                {.item = gap.item, .severity = gap.severity, .hours = HourCount(end - gap.openedAt).count()});
        unit.lastRound = lastRound(history);
        if (!due.empty())
            unit.silentDays
                = std::max(0.0, DayCount(end - unit.lastRound.value_or(due.front().begins)).count());
    }

    std::optional<Instant> lastRound(const UnitHistory& history) const
    {
        if (!history.rounds.empty())
            return history.rounds.back().finished;
        Statement row = m_parts.database->prepare("SELECT finished FROM round WHERE unit = ? AND slot < ? "
                                                  "AND kind = 'shift' ORDER BY slot DESC LIMIT 1");
        row.bind(history.unit).bind(slotOf(m_history.span.to, 0));
        return row.next() ? std::optional(row.time(0)) : std::nullopt;
    }

    void readVisits(DistrictUnit& unit, const TimeZone& zone)
    {
        const Instant first = zone.toInstant({.date = m_history.months.front() / std::chrono::day(1)});
        unit.visits = need(m_store.visits(unit.id, first));
        std::erase_if(unit.visits,
            [&](const VisitResult& visit) { return zone.toLocal(visit.at).date >= m_history.span.to; });
    }

    void readStock()
    {
        std::vector<std::string> ids;
        for (const DistrictUnit& unit : m_history.units)
            ids.push_back(unit.id);
        m_history.shelves = need(districtShelves(m_store, ids, m_history.now));
        m_history.distances = need(m_store.distances());
    }

    /** The items of all checklists, the latest one's first; then each unit's gaps in that order. */
    void setItems()
    {
        std::vector<std::size_t> order(m_history.lists.size());
        for (std::size_t i = 0; i < order.size(); ++i)
            order[i] = i;
        std::stable_sort(order.begin(), order.end(),
            [&](std::size_t a, std::size_t b) { return m_latest[a] > m_latest[b]; });
        std::map<std::string, std::size_t> place;
        for (const std::size_t list : order) {
            const Checklist& checklist = *m_history.lists[list].checklist;
            for (std::size_t at = 0; at < checklist.itemCount(); ++at) {
                const Item& item = checklist.item(at);
                if (place.try_emplace(item.id, m_history.items.size()).second)
                    m_history.items.push_back({.id = item.id,
                        .section = checklist.sectionOf(at).id,
                        .severity = item.severity,
                        .kind = item.kind()});
            }
        }
        for (std::size_t unit = 0; unit < m_history.units.size(); ++unit) {
            auto& gaps = m_history.units[unit].gaps;
            gaps.resize(m_history.items.size());
            for (const auto& [list, looks] : m_gathered[unit].looks) {
                const Checklist& checklist = *m_history.lists[list].checklist;
                for (std::size_t at = 0; at < std::min(looks.size(), checklist.itemCount()); ++at)
                    gaps[place[checklist.item(at).id]] += looks[at];
            }
        }
        if (!order.empty())
            std::swap(m_history.lists[order.front()], m_history.lists.back()); // the latest last
    }

    Store::Parts& m_parts;
    const Store& m_store;
    DistrictHistory m_history;
    ReviewOptions m_options;
    Date m_series; ///< first day of its months
    std::vector<Gathered> m_gathered; ///< by unit
    std::vector<Slot> m_latest; ///< of each list
    std::vector<Slot> m_done; ///< of the unit that is read: shifts due with a round
    std::optional<OrderedWork<Entries>> m_entries; ///< when they are asked about
};

Result<DistrictHistory> districtHistory(
    const Store& store, const ReviewSpan& span, Instant now, EntryQuestions questions)
{
    if (span.days() <= 0)
        return fail(ErrorCode::InvalidArgument, "the span is empty", "Give a first and a last month.");
    return attempt([&] { return DistrictReader(store, span, now).read(questions); });
}

}
