// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/packedmonth.h"

#include <functional>
#include <map>

namespace cradlepost {

/**
 * The projection `round_month`: the shift rounds of a unit and month packed into one row, since reviews read years of
 * them at once. Of two rounds of one shift the one that was recorded first counts; only that one is here.
 */
class RoundMonthTable
{
public:
    explicit RoundMonthTable(Database& database)
        : m_database(database)
    {
    }

    void put(const std::string& unit, const RoundRow& row, const std::vector<ReadingFact>& readings);
    /** The round says what `round` says from now on; one that does not count here stays left out. */
    void amend(const std::string& unit, const RecordId& id, const RoundRecord& round,
        const std::vector<ReadingFact>& readings, const RoundTable::Amended& amended);

    // Many rounds at once: months stay open in memory until write().
    void gather() { m_gathering = true; }
    void write();
    void forget();

    /** Slots from <= slot < to; rounds before `wholeFrom` come without outcomes and readings. */
    struct Wish
    {
        Slot from = 0;
        Slot to = 0;
        Slot wholeFrom = std::numeric_limits<Slot>::min();
    };
    /** The months that hold these slots, in order. */
    void visit(const std::string& unit, const Wish& wish, const std::function<void(PackedMonth)>& take) const;

private:
    using Key = std::pair<std::string, Slot>; ///< unit and month
    PackedMonth& open(const std::string& unit, Slot slot);
    void close();
    void write(const Key& key, const PackedMonth& month);

    Database& m_database;
    std::map<Key, PackedMonth> m_open;
    bool m_gathering = false;
};

}
