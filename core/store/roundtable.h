// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/history.h"
#include "core/store/database.h"
#include "core/store/store.h"

namespace cradlepost {

/** The projection `round`. */
class RoundTable
{
public:
    explicit RoundTable(Database& database)
        : m_database(database)
    {
    }

    /** `setBack`: how far the clock was behind what the chain had seen, see Origin. */
    void put(const std::string& unit, const RoundRow& row, const std::vector<ReadingFact>& readings,
        std::chrono::milliseconds setBack);

    /** How often a round was amended, and when the last time. */
    struct Amended
    {
        int times = 0;
        Instant last;
    };
    /** The row says what `round` says from now on; its setBack, or nothing when there is no such row. */
    std::optional<std::chrono::milliseconds> amend(const std::string& unit, const RecordId& id,
        const RoundRecord& round, const std::vector<ReadingFact>& readings, const Amended& amended);

    [[nodiscard]] std::vector<RoundRow> range(const std::string& unit, Slot from, Slot to) const;
    /** Shift round, re-checks and checks of one shift, but spot checks, in the order they were finished. */
    [[nodiscard]] std::vector<RecordId> ofShift(const std::string& unit, Slot slot) const;
    [[nodiscard]] bool hasShiftRound(const std::string& unit, Slot slot) const;
    [[nodiscard]] bool has(const std::string& unit, Slot slot, const RecordId& id, RoundKind kind) const;
    /** What was measured in one round. */
    struct Measurements
    {
        Slot slot = 0;
        RecordId id;
        std::string checklist;
        int version = 1;
        std::vector<ReadingFact> readings;
    };
    /** The spot checks with from <= slot < to, in the order they were finished. */
    [[nodiscard]] std::vector<RecordId> spotChecks(const std::string& unit, Slot from, Slot to) const;
    /** Of all rounds and checks, but spot checks, with from <= slot < to in which something was measured. */
    [[nodiscard]] std::vector<Measurements> measurements(const std::string& unit, Slot from, Slot to) const;
    /** Units with a round by this checklist version. */
    [[nodiscard]] std::vector<std::string> unitsUsing(const std::string& checklist, int version) const;

    /** Where each round or check of a unit stands in the order of its gaps; spot checks stand nowhere. */
    struct Place
    {
        Instant at;
        RecordId id;
        bool isAmended = false;
    };
    [[nodiscard]] std::vector<Place> places(const std::string& unit) const;

    /** Letters counted by item position, for one checklist version. */
    struct VersionTally
    {
        std::string checklist;
        int version = 1;
        Slot latest = 0; ///< of its rounds in the range
        std::vector<std::array<int, 4>> byPosition; ///< m, g, n, u
    };
    /** Of the shift rounds with from <= slot < to. Reads the letters as bytes, through SQLite's own
     * interface. */
    [[nodiscard]] std::vector<VersionTally> tallies(const std::string& unit, Slot from, Slot to) const;

private:
    Database& m_database;
};

}
