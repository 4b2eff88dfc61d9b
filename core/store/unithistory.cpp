// SPDX-License-Identifier: MIT
#include "core/store/unithistory.h"

#include "core/store/dueshifts.h"
#include "core/store/parts.h"

#include <algorithm>

namespace cradlepost {

/** Reads one unit's history, the rounds from their packed months. */
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
        begin({.from = lookBack(span), .to = span.to}, lookBack(span), now);
        readOthers();
        const TimeZone& zone = m_history.zone;
        // The weeks before the span set limits by their rounds; of their gaps nothing is asked.
        m_history.gapsFrom = span.from;
        m_history.gaps = m_parts.gaps.during(m_unit, zone.toInstant({.date = span.from}),
            zone.toInstant({.date = addDays(m_history.to, 1)}));
        m_history.changes = need(m_store.changeIdeas(m_unit));
        readSpotChecks(span);
        return std::move(m_history);
    }
    UnitHistory read(const RoundsWish& wish, const ReviewSpan& span, Instant now)
    {
        begin({.from = wish.from, .to = span.to}, wish.dueFrom, now);
        readSpotChecks(span);
        return std::move(m_history);
    }

private:
    struct Since
    {
        Date from;
        ChosenLimits limits;
    };

    /** Shifts due and rounds. */
    void begin(const ReviewSpan& days, Date dueFrom, Instant now)
    {
        m_history.unit = m_unit;
        m_history.zone = need(TimeZone::named(m_parts.knownUnit(m_unit).zone));
        m_history.from = days.from;
        m_history.to = days.to;
        m_history.now = now;
        readAdoptions();
        m_history.due = dueShifts(*m_parts.database, m_parts.units, m_unit, m_history.zone,
            {.from = dueFrom, .to = days.to}, now);
        readRounds(dueFrom);
    }

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

    void readRounds(Date wholeFrom)
    {
        const Slot from = slotOf(m_history.from, 0);
        const Slot to = slotOf(m_history.to, 0);
        const RoundMonthTable::Wish wish{.from = from, .to = to, .wholeFrom = slotOf(wholeFrom, 0)};
        m_parts.months.visit(m_unit, wish, [&](PackedMonth month) {
            for (PackedRound& round : month.rounds)
                if (from <= round.slot && round.slot < to)
                    m_history.rounds.push_back(factOf(month, round));
        });
    }

    RoundFact factOf(const PackedMonth& month, PackedRound& round)
    {
        return {.slot = round.slot,
            .list = listOf(month.names[round.checklist], round.version, dateOfSlot(round.slot)),
            .outcomes = std::move(round.outcomes),
            .state = round.state,
            .met = round.met,
            .applicable = round.applicable,
            .index = round.index,
            .started = round.started,
            .finished = round.finished,
            .recorded = round.recorded,
            .fromPaper = round.fromPaper,
            .amended = round.amended,
            .amendedAt = round.amendedAt,
            .actor = month.names[round.actor],
            .readings = std::move(round.readings)};
    }

    /** Position of a checklist with the limits that the unit had picked on that day. */
    std::size_t listOf(std::string_view id, int version, Date day)
    {
        const auto after = std::upper_bound(m_adoptions.begin(), m_adoptions.end(), day,
            [](Date one, const Since& adoption) { return one < adoption.from; });
        const auto isThat = [&](std::size_t i) {
            const Checklist& list = *m_history.lists[i].checklist;
            return list.version == version && list.id == id;
        };
        // Most rounds are like the one before.
        if (!m_history.lists.empty() && m_lastAfter == after && isThat(m_lastList))
            return m_lastList;
        m_lastAfter = after;
        const ChosenLimits limits = after == m_adoptions.begin() ? ChosenLimits() : std::prev(after)->limits;
        for (std::size_t i = m_history.lists.size(); i-- > 0;) {
            if (isThat(i) && m_history.lists[i].limits == limits)
                return m_lastList = i;
        }
        m_history.lists.push_back(
            {.checklist = m_parts.knownChecklist(std::string(id), version), .limits = limits});
        return m_lastList = m_history.lists.size() - 1;
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
    std::vector<Since>::iterator m_lastAfter; ///< of the round before: the adoption that comes after it ...
    std::size_t m_lastList = 0; ///< ... and its list
};

Result<UnitHistory> unitHistory(
    const Store& store, const std::string& unit, const ReviewSpan& span, Instant now)
{
    return attempt([&] { return HistoryReader(store, unit).read(span, now); });
}

Result<UnitHistory> unitRounds(const Store& store, const std::string& unit, const RoundsWish& wish,
    const ReviewSpan& span, Instant now)
{
    return attempt([&] { return HistoryReader(store, unit).read(wish, span, now); });
}

}
