// SPDX-License-Identifier: MIT
#pragma once

#include "core/round/walk.h"
#include "core/store/database.h"
#include "core/store/store.h"

namespace cradlepost {

/** The table `draft`: one draft a unit and kind. It is no projection; a rebuild leaves it alone. */
class DraftTable
{
public:
    explicit DraftTable(Database& database)
        : m_database(database)
    {
    }

    void put(const Draft& draft, Instant now);
    void drop(const std::string& unit, RoundKind kind);
    /** Those that can be read, the latest saved first. */
    [[nodiscard]] std::vector<Draft> of(const std::string& unit) const;
    [[nodiscard]] std::vector<UnreadableDraft> unreadable(const std::string& unit) const;

private:
    Database& m_database;
};

}
