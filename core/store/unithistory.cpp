// SPDX-License-Identifier: MIT
#include "core/store/unithistory.h"

#include "core/store/dueshifts.h"
#include "core/store/parts.h"

#include <algorithm>
#include <charconv>

namespace cradlepost {

namespace {

/** "0=26400 20=80000", as the projection writes it. */
std::vector<ReadingFact> readingsFrom(std::string_view text)
{
    std::vector<ReadingFact> readings;
    const char* at = text.data();
    const char* const end = at + text.size();
    while (at < end) {
        ReadingFact reading;
        const auto position = std::from_chars(at, end, reading.position);
        const bool hasValue = position.ec == std::errc() && position.ptr < end && *position.ptr == '=';
        const auto value = hasValue ? std::from_chars(position.ptr + 1, end, reading.value.thousandths)
                                    : std::from_chars_result{at, std::errc::invalid_argument};
        if (value.ec != std::errc() || (value.ptr != end && *value.ptr != ' '))
            refuse(ErrorCode::Damaged, "a round has readings that cannot be read: " + std::string(text),
                "Run verify, then rebuild.");
        readings.push_back(reading);
        at = value.ptr == end ? end : value.ptr + 1;
    }
    return readings;
}

}

/** Reads one unit's history, the rounds straight from their rows. */
class HistoryReader
{
public:
    HistoryReader(const Store& store, std::string unit)
        : m_store(store)
        , m_parts(*store.m_parts)
        , m_unit(std::move(unit))
    {
    }

    UnitHistory read(const ReviewSpan& span, Instant now)
    {
        m_history.unit = m_unit;
        m_history.zone = need(TimeZone::named(m_parts.knownUnit(m_unit).zone));
        m_history.from = lookBack(span);
        m_history.to = span.to;
        m_history.now = now;
        readAdoptions();
        readOthers();
        m_history.due = dueShifts(*m_parts.database, m_parts.units, m_unit, m_history.zone,
            {.from = m_history.from, .to = m_history.to}, now);
        readRounds();
        const TimeZone& zone = m_history.zone;
        // The weeks before the span set limits by their rounds; of their gaps nothing is asked.
        m_history.gapsFrom = span.from;
        m_history.gaps = m_parts.gaps.during(m_unit, zone.toInstant({.date = span.from}),
            zone.toInstant({.date = addDays(m_history.to, 1)}));
        m_history.changes = need(m_store.changeIdeas(m_unit));
        readSpotChecks(span);
        return std::move(m_history);
    }

private:
    struct Since
    {
        Date from;
        ChosenLimits limits;
    };

    void readAdoptions()
    {
        const char* query
            = "SELECT from_day FROM adoption WHERE unit = ? AND kind = 'shift' ORDER BY from_day";
        for (const Date day : daysOf(*m_parts.database, query, m_unit)) {
            auto adopted = m_parts.projector.checklists().adopted(m_unit, RoundKind::Shift, day);
            m_adoptions.push_back({.from = day, .limits = std::move(adopted->limits)});
        }
    }

    void readOthers()
    {
        for (const RoundKind kind : {RoundKind::PreBirth, RoundKind::AfterUse}) {
            const auto adopted
                = m_parts.projector.checklists().adopted(m_unit, kind, addDays(m_history.to, -1));
            if (!adopted)
                continue;
            if (auto list = m_parts.projector.checklists().find(adopted->checklist, adopted->version))
                m_history.others.push_back(std::move(list));
        }
    }

    void readRounds()
    {
        Statement row = m_parts.database->prepare(
            "SELECT slot, checklist, version, outcomes, verdict, met, applicable, readiness, started, "
            "finished, recorded, source, amended, amended_at, actor, readings FROM round "
            "WHERE unit = ? AND slot >= ? AND slot < ? AND kind = 'shift' ORDER BY slot, recorded");
        row.bind(m_unit).bind(slotOf(m_history.from, 0)).bind(slotOf(m_history.to, 0));
        while (row.next()) {
            // Two stations may each have one of the same shift: the first one recorded counts.
            if (m_history.rounds.empty() || m_history.rounds.back().slot != row.integer(0))
                m_history.rounds.push_back(roundIn(row));
        }
    }

    RoundFact roundIn(const Statement& row)
    {
        const auto state = readinessFromCode(row.textView(4));
        if (!state)
            refuse(ErrorCode::Damaged, "a round has an unknown code in column verdict",
                "Run verify, then rebuild.");
        RoundFact fact{.slot = row.integer(0),
            .list = listOf(row.textView(1), row.number(2), dateOfSlot(row.integer(0))),
            .outcomes = row.text(3),
            .state = *state,
            .met = row.number(5),
            .applicable = row.number(6),
            .index = row.number(7),
            .started = row.time(8),
            .finished = row.time(9),
            .recorded = row.time(10),
            .fromPaper = row.textView(11) == "paper",
            .amended = row.number(12),
            .amendedAt = {},
            .actor = row.text(14),
            .readings = readingsFrom(row.textView(15))};
        if (!row.isNull(13))
            fact.amendedAt = row.time(13);
        return fact;
    }

    /** Position of a checklist with the limits that the unit had picked on that day. */
    std::size_t listOf(std::string_view id, int version, Date day)
    {
        const auto after = std::upper_bound(m_adoptions.begin(), m_adoptions.end(), day,
            [](Date one, const Since& adoption) { return one < adoption.from; });
        const ChosenLimits limits = after == m_adoptions.begin() ? ChosenLimits() : std::prev(after)->limits;
        for (std::size_t i = m_history.lists.size(); i-- > 0;) {
            const ChecklistInForce& list = m_history.lists[i];
            if (list.checklist->version == version && list.checklist->id == id && list.limits == limits)
                return i;
        }
        m_history.lists.push_back(
            {.checklist = m_parts.knownChecklist(std::string(id), version), .limits = limits});
        return m_history.lists.size() - 1;
    }

    void readSpotChecks(const ReviewSpan& span)
    {
        const auto checks = need(m_store.spotChecks(m_unit, slotOf(span.from, 0), slotOf(span.to, 0)));
        for (const SavedRound& saved : checks) {
            const RoundRecord& round = saved.round;
            const auto checklist = m_parts.knownChecklist(round.checklist, round.version);
            SpotCheck check{.slot = round.shift.slot(), .at = round.finished, .seen = {}};
            for (std::size_t i = 0; i < std::min(round.outcomes.size(), checklist->itemCount()); ++i) {
                if (round.outcomes[i] != 'u')
                    check.seen.push_back(
                        {.item = checklist->item(i).id, .outcome = static_cast<Outcome>(round.outcomes[i])});
            }
            m_history.spotChecks.push_back(std::move(check));
        }
    }

    const Store& m_store;
    Store::Parts& m_parts;
    std::string m_unit;
    UnitHistory m_history;
    std::vector<Since> m_adoptions;
};

Result<UnitHistory> unitHistory(
    const Store& store, const std::string& unit, const ReviewSpan& span, Instant now)
{
    return attempt([&] { return HistoryReader(store, unit).read(span, now); });
}

}
