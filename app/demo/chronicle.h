// SPDX-License-Identifier: MIT
#pragma once

#include "app/demo/afterwards.h"
#include "app/demo/decisions.h"
#include "app/demo/devices.h"
#include "app/demo/lists.h"
#include "app/demo/roundmaker.h"
#include "app/demo/storeroom.h"
#include "app/demo/ward.h"
#include "core/store/store.h"

namespace cradlepost::demo {

/** Writes one unit's months into the store, in the order of time, as its own station. */
class Chronicle
{
public:
    Chronicle(Store& store, FixedClock& clock, const UnitPlan& plan, const Stories& stories,
        const Lists& lists, TimeZone zone, Instant until);

    /** Rounds and checks written. */
    Result<int> write();

private:
    enum class Event { ShiftRound, Recheck, Birth, PreBirth, AfterUse, SpotCheck };
    using Events = std::multimap<Instant, Event>;

    Result<void> setUp();
    Result<void> work(const Shift& shift);
    /** The books of the ward are brought up to date before the last round. */
    Result<void> closeBooks(Instant at, const Shift& shift);
    void expect(const Shift& shift, Events& events);
    [[nodiscard]] Instant dueStart(const Shift& shift);
    Result<void> happen(Event event, Instant at, const Shift& shift, Events& events);
    Result<void> shiftRound(Instant start, const Shift& shift, Events& events);
    Result<RoundRecord> freshRound(Instant start, const Shift& shift, const std::string& actor);
    Result<RoundRecord> copiedRound(
        Instant start, const Shift& shift, const std::string& actor, const RoundRecord& from);
    Result<void> recheck(Instant start, const Shift& shift);
    Result<void> catchUp(const Shift& shift);
    Result<void> spotCheck(Instant at, const Shift& shift);
    Result<void> check(Event event, Instant start, const Shift& shift);
    /** The round that stands on the first page when the demo is opened. */
    Result<void> present(const Shift& shift);
    Result<bool> save(const Checklist& checklist, const RoundRecord& round, const std::string& actor);
    Result<void> act(
        const std::vector<GapAction>& actions, const std::string& actor, std::chrono::seconds apart);
    [[nodiscard]] std::string actorOf(const Shift& shift);
    [[nodiscard]] double paceOf(const std::string& actor) const;
    [[nodiscard]] bool isPresent(const Shift& shift) const
    {
        return m_plan.is(sorrelHill) && shift.ends > m_until;
    }
    [[nodiscard]] bool isOutstanding(const Shift& shift) const
    {
        return isBehindNow(m_plan) && shift.ends > m_until;
    }

    Store& m_store;
    FixedClock& m_clock;
    const UnitPlan& m_plan;
    const Stories& m_stories;
    const Lists& m_lists;
    TimeZone m_zone;
    ShiftCalendar m_calendar;
    Instant m_until;
    Instant m_limit; ///< nothing is finished after it
    Instant m_free; ///< nobody is on a round any more
    Random m_random;
    Ward m_ward;
    Storeroom m_storeroom;
    Devices m_devices;
    GapBook m_book;
    Afterwards m_afterwards;
    bool m_booksClosed = false; ///< with a round of the last shift
    int m_rounds = 0;
    std::map<int, RoundRecord> m_last; ///< the last round of each shift of the day, to copy
    std::optional<SavedRound> m_ofShift; ///< the round of the shift that is on
};

}
