// SPDX-License-Identifier: MIT
#include "core/store/districthistory.h"

#include "core/review/unitquestions.h"
#include "core/store/districtshelves.h"
#include "core/store/dueshifts.h"
#include "core/store/parts.h"
#include "core/store/unithistory.h"

#include <algorithm>
#include <map>

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

bool isLate(const Statement& row, const Shift& shift, double inTimeShare)
{
    const auto allowed = std::chrono::duration<double, std::milli>(shift.ends - shift.begins) * inTimeShare;
    return std::max(row.time(7), row.time(8)) - shift.begins >= allowed;
}

/** Due and done of a span; `done` holds the slots with a round, in order. */
void countDue(UnitTallies& tallies, const std::vector<Shift>& due, const std::vector<Slot>& done,
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

/** Reads all units, one after the other by the same prepared statements. */
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
        m_from = std::min(m_history.before.from, m_history.months.front() / std::chrono::day(1));
    }

    DistrictHistory read(EntryQuestions questions)
    {
        std::vector<Unit> units = need(m_store.units());
        std::stable_sort(
            units.begin(), units.end(), [](const Unit& a, const Unit& b) { return a.name < b.name; });
        if (!units.empty())
            m_history.zone = need(TimeZone::named(units.front().zone));
        for (const Unit& unit : units)
            readUnit(unit);
        setItems();
        readStock();
        if (questions == EntryQuestions::Ask)
            ask();
        return std::move(m_history);
    }

private:
    /** What is gathered of one unit before all checklists are known. */
    struct Gathered
    {
        std::map<std::size_t, Looks> looks; ///< by position in m_history.lists
    };

    void readUnit(const Unit& unit)
    {
        const TimeZone zone = need(TimeZone::named(unit.zone));
        DistrictUnit one{.id = unit.id, .name = unit.name, .level = unit.level};
        one.months.resize(m_history.months.size());
        m_gathered.emplace_back();
        m_due = dueShifts(*m_parts.database, m_parts.units, unit.id, zone,
            {.from = m_history.before.from, .to = m_history.span.to}, m_history.now);
        m_done.clear();
        readRounds(one);
        countDue(one.span, m_due, m_done, m_history.span, m_history.now);
        countDue(one.before, m_due, m_done, m_history.before, m_history.now);
        readEnd(one, zone);
        readOthers(unit.id);
        readVisits(one, zone);
        m_history.units.push_back(std::move(one));
    }

    void readRounds(DistrictUnit& unit)
    {
        Statement row = m_parts.database->prepare(
            "SELECT slot, checklist, version, outcomes, verdict, met, applicable, finished, recorded, "
            "source, amended FROM round WHERE unit = ? AND slot >= ? AND slot < ? AND kind = 'shift' "
            "ORDER BY slot, recorded");
        row.bind(unit.id).bind(slotOf(m_from, 0)).bind(slotOf(m_history.span.to, 0));
        std::optional<Slot> last;
        auto due = m_due.begin();
        while (row.next()) {
            const Slot slot = row.integer(0);
            // Two stations may each have one of the same shift: the first one recorded counts.
            if (last == slot)
                continue;
            last = slot;
            while (due != m_due.end() && due->slot() < slot)
                ++due;
            const Shift* shift = due != m_due.end() && due->slot() == slot ? &*due : nullptr;
            takeRound(unit, row, shift);
        }
    }

    void takeRound(DistrictUnit& unit, const Statement& row, const Shift* shift)
    {
        const auto state = readinessFromCode(row.textView(4));
        if (!state)
            refuse(ErrorCode::Damaged, "a round has an unknown code in column verdict",
                "Run verify, then rebuild.");
        const Date day = dateOfSlot(row.integer(0));
        const bool isClear = *state != Readiness::NotReady;
        const stats::Tally items{.x = row.integer(5), .n = row.integer(6)};
        const auto month
            = std::find(m_history.months.begin(), m_history.months.end(), day.year() / day.month());
        if (month != m_history.months.end()) {
            UnitMonth& at = unit.months[static_cast<std::size_t>(month - m_history.months.begin())];
            at.noCriticalGap += {.x = isClear ? 1 : 0, .n = 1};
            at.items += items;
        }
        const std::size_t list = listOf(row.textView(1), row.number(2), row.integer(0));
        if (shift == nullptr)
            return;
        m_done.push_back(row.integer(0));
        const bool inSpan = m_history.span.contains(day);
        UnitTallies& tallies = inSpan ? unit.span : unit.before;
        tallies.add(*state);
        tallies.items += items;
        const bool isPaper = row.textView(9) == "paper";
        tallies.paper += isPaper ? 1 : 0;
        tallies.late += !isPaper && isLate(row, *shift, m_options.inTimeShare) ? 1 : 0;
        tallies.amended += row.number(10) > 0 ? 1 : 0;
        if (!inSpan)
            return;
        look(m_gathered.back().looks[list], row.textView(3));
        addShift(unit, shift->code, isClear);
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
    void readEnd(DistrictUnit& unit, const TimeZone& zone)
    {
        Instant end = m_due.empty() ? zone.toInstant({.date = m_history.span.to}) : m_due.back().ends;
        end = std::min(end, m_history.now);
        for (const Gap& gap : m_parts.gaps.during(unit.id, end, end))
            unit.open.push_back(
                {.item = gap.item, .severity = gap.severity, .hours = HourCount(end - gap.openedAt).count()});
        Statement row = m_parts.database->prepare("SELECT finished FROM round WHERE unit = ? AND slot < ? "
                                                  "AND kind = 'shift' ORDER BY slot DESC LIMIT 1");
        row.bind(unit.id).bind(slotOf(m_history.span.to, 0));
        if (row.next())
            unit.lastRound = row.time(0);
        if (!m_due.empty())
            unit.silentDays
                = std::max(0.0, DayCount(end - unit.lastRound.value_or(m_due.front().begins)).count());
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

    void ask()
    {
        for (DistrictUnit& unit : m_history.units) {
            const UnitHistory history = need(unitHistory(m_store, unit.id, m_history.span, m_history.now));
            unit.questions = static_cast<std::int64_t>(need(unitQuestions(history, m_history.span)).size());
        }
    }

    Store::Parts& m_parts;
    const Store& m_store;
    DistrictHistory m_history;
    ReviewOptions m_options;
    Date m_from;
    std::vector<Gathered> m_gathered; ///< by unit
    std::vector<Slot> m_latest; ///< of each list
    std::vector<Shift> m_due; ///< of the unit that is read
    std::vector<Slot> m_done; ///< of it: shifts due with a round
};

Result<DistrictHistory> districtHistory(
    const Store& store, const ReviewSpan& span, Instant now, EntryQuestions questions)
{
    if (span.days() <= 0)
        return fail(ErrorCode::InvalidArgument, "the span is empty", "Give a first and a last month.");
    return attempt([&] { return DistrictReader(store, span, now).read(questions); });
}

}
