// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/chain.h"
#include "core/store/database.h"

namespace cradlepost {

/** The table `station_trust`. No projection. */
class TrustTable
{
public:
    explicit TrustTable(Database& database)
        : m_database(database)
    {
    }

    /** By name. */
    [[nodiscard]] std::vector<TrustedStation> all() const;
    /** Replaces what was said about this station before. */
    void put(const TrustedStation& trusted);
    /** Whether it was there. */
    bool drop(const std::string& station);

private:
    Database& m_database;
};

}
