// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/database.h"
#include "core/store/origin.h"
#include "core/store/unit.h"

namespace cradlepost {

/** The projections `unit`, `shift_pattern` and `people`. Writing keeps what has the later origin. */
class UnitTable
{
public:
    explicit UnitTable(Database& database)
        : m_database(database)
    {
    }

    void put(const Unit& unit, const Origin& origin);
    void put(const std::string& unit, const PatternFrom& pattern, const Origin& origin);
    void put(const std::string& unit, const std::vector<Person>& people, const Origin& origin);

    /** By name. */
    [[nodiscard]] std::vector<Unit> units() const;
    [[nodiscard]] std::optional<Unit> unit(const std::string& id) const;
    /** The pattern with the latest `from` not after `day`. */
    [[nodiscard]] std::optional<PatternFrom> pattern(const std::string& unit, Date day) const;
    [[nodiscard]] std::vector<Person> people(const std::string& unit) const;

private:
    Database& m_database;
};

}
