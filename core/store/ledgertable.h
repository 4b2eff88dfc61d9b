// SPDX-License-Identifier: MIT
#pragma once

#include "core/ledger/record.h"
#include "core/round/roundrecord.h"
#include "core/store/chain.h"
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
    /** The same with the record's body packed before. */
    void insert(const Record& record, std::span<const unsigned char> packedBody);
    [[nodiscard]] std::optional<RecordSeal> sealOf(const RecordId& id) const;
    /** The first record of the chain that was made at or after `since`. */
    [[nodiscard]] std::optional<std::int64_t> firstSince(const std::string& station, Instant since) const;
    [[nodiscard]] bool hasWritten(const std::string& station, const std::string& unit) const;
    /** Throws NotFound. */
    [[nodiscard]] Record read(const RecordId& id) const;
    [[nodiscard]] std::string body(const RecordId& id) const;
    [[nodiscard]] Instant madeAt(const RecordId& id) const;
    /** All records, station by station in the order of seq. */
    void forEach(const std::function<void(const Record&)>& visit) const;
    /** Those of one chain with from <= seq <= to, in order. */
    void forEach(const std::string& station, std::int64_t from, std::int64_t to,
        const std::function<void(const Record&)>& visit) const;
    [[nodiscard]] std::vector<std::string> stations() const;

private:
    Database& m_database;
};

}
