// SPDX-License-Identifier: MIT
#pragma once

#include "core/ledger/record.h"
#include "core/round/roundrecord.h"
#include "core/store/database.h"

#include <functional>

namespace cradlepost {

/** The last record of a chain. */
struct ChainTip
{
    std::int64_t seq = 0; ///< 0: the chain has not begun
    Hash hash{};
};

/** The tables `station` and `record`. */
class LedgerTable
{
public:
    explicit LedgerTable(Database& database)
        : m_database(database)
    {
    }

    [[nodiscard]] ChainTip tip(const std::string& station) const;
    void addStation(const std::string& station, const PublicKey& key);
    [[nodiscard]] std::optional<PublicKey> publicKey(const std::string& station) const;
    void insert(const Record& record);
    /** Throws NotFound. */
    [[nodiscard]] Record read(const RecordId& id) const;
    [[nodiscard]] std::string body(const RecordId& id) const;
    [[nodiscard]] Instant madeAt(const RecordId& id) const;
    /** All records, station by station in the order of seq. */
    void forEach(const std::function<void(const Record&)>& visit) const;
    [[nodiscard]] std::vector<std::string> stations() const;

private:
    Database& m_database;
};

}
