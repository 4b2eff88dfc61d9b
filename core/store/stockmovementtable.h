// SPDX-License-Identifier: MIT
#pragma once

#include "core/round/roundrecord.h"
#include "core/store/database.h"
#include "core/supply/stockmovement.h"

namespace cradlepost {

/** The projection `stock_movement`: what came to the shelves and left them, as the records say it. */
class StockMovementTable
{
public:
    explicit StockMovementTable(Database& database)
        : m_database(database)
    {
    }

    void put(const std::string& unit, const StockMovement& movement, const RecordId& id);
    /** By item, then in the order in which they happened; of one item unless it is empty. */
    [[nodiscard]] std::vector<Recorded<StockMovement>> movements(
        const std::string& unit, const std::string& item = {}) const;

private:
    Database& m_database;
};

}
