// SPDX-License-Identifier: MIT
#pragma once

#include "core/round/changeidea.h"
#include "core/store/database.h"
#include "core/store/origin.h"

namespace cradlepost {

/** The projection `change_idea`: of each idea what the last record says. */
class ChangeIdeaTable
{
public:
    explicit ChangeIdeaTable(Database& database)
        : m_database(database)
    {
    }

    void put(const std::string& unit, const ChangeIdea& idea, const Origin& origin);
    /** By first day, then by id. */
    [[nodiscard]] std::vector<ChangeIdea> of(const std::string& unit) const;

private:
    Database& m_database;
};

}
