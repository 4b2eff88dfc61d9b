// SPDX-License-Identifier: MIT
#include "core/store/ledgertable.h"

#include "core/store/failure.h"
#include "core/store/packing.h"

namespace cradlepost {

namespace {

std::string nameOf(const RecordId& id) { return "record " + id.station + '/' + std::to_string(id.seq); }

std::optional<std::string> bodyIn(const Statement& row, int column) { return unpacked(row.blob(column)); }

[[noreturn]] void refuseBody(const RecordId& id)
{
    refuse(ErrorCode::Damaged, nameOf(id) + ": the body cannot be unpacked",
        "Run verify, then restore a backup.");
}

/** A body that cannot be unpacked comes out empty: no hash fits that. */
Record recordIn(const Statement& row)
{
    return {.station = row.text(0),
        .seq = row.integer(1),
        .unit = row.text(2),
        .kind = row.text(3),
        .madeAt = row.time(4),
        .actor = row.text(5),
        .body = bodyIn(row, 6).value_or(""),
        .prev = row.bytes<32>(7),
        .hash = row.bytes<32>(8),
        .signature = row.bytes<64>(9)};
}

}

ChainTip LedgerTable::tip(const std::string& station) const
{
    Statement row
        = m_database.prepare("SELECT seq, hash FROM record WHERE station = ? ORDER BY seq DESC LIMIT 1");
    row.bind(station);
    if (!row.next())
        return {};
    return {.seq = row.integer(0), .hash = row.bytes<32>(1)};
}

void LedgerTable::addStation(const std::string& station, const PublicKey& key)
{
    m_database
        .prepare("INSERT INTO station (station, public_key) VALUES (?, ?) ON CONFLICT (station) DO NOTHING")
        .bind(station)
        .bind(std::span<const unsigned char>(key))
        .run();
}

std::optional<PublicKey> LedgerTable::publicKey(const std::string& station) const
{
    Statement row = m_database.prepare("SELECT public_key FROM station WHERE station = ?");
    row.bind(station);
    if (!row.next())
        return std::nullopt;
    return row.bytes<32>(0);
}

void LedgerTable::insert(const Record& record) { insert(record, packed(record.body)); }

void LedgerTable::insert(const Record& record, std::span<const unsigned char> packedBody)
{
    m_database
        .prepare("INSERT INTO record (station, seq, unit, kind, made_at, actor, body, prev, hash, signature) "
                 "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
        .bind(record.station)
        .bind(record.seq)
        .bind(record.unit)
        .bind(record.kind)
        .bind(record.madeAt)
        .bind(record.actor)
        .bind(packedBody)
        .bind(std::span<const unsigned char>(record.prev))
        .bind(std::span<const unsigned char>(record.hash))
        .bind(std::span<const unsigned char>(record.signature))
        .run();
}

std::optional<RecordSeal> LedgerTable::sealOf(const RecordId& id) const
{
    Statement row = m_database.prepare("SELECT hash, signature FROM record WHERE station = ? AND seq = ?");
    row.bind(id.station).bind(id.seq);
    if (!row.next())
        return std::nullopt;
    return RecordSeal{.hash = row.bytes<32>(0), .signature = row.bytes<64>(1)};
}

std::optional<std::int64_t> LedgerTable::firstSince(const std::string& station, Instant since) const
{
    Statement row = m_database.prepare(
        "SELECT seq FROM record WHERE station = ? AND made_at >= ? ORDER BY seq LIMIT 1");
    row.bind(station).bind(since);
    return row.next() ? std::optional(row.integer(0)) : std::nullopt;
}

bool LedgerTable::hasWritten(const std::string& station, const std::string& unit) const
{
    Statement row = m_database.prepare("SELECT 1 FROM record WHERE station = ? AND unit = ? LIMIT 1");
    row.bind(station).bind(unit);
    return row.next();
}

Record LedgerTable::read(const RecordId& id) const
{
    Statement row
        = m_database.prepare("SELECT station, seq, unit, kind, made_at, actor, body, prev, hash, signature "
                             "FROM record WHERE station = ? AND seq = ?");
    row.bind(id.station).bind(id.seq);
    if (!row.next())
        refuse(ErrorCode::NotFound, nameOf(id) + " is not in the ledger");
    Record record = recordIn(row);
    if (record.body.empty())
        refuseBody(id);
    return record;
}

std::string LedgerTable::body(const RecordId& id) const
{
    Statement row = m_database.prepare("SELECT body FROM record WHERE station = ? AND seq = ?");
    row.bind(id.station).bind(id.seq);
    if (!row.next())
        refuse(ErrorCode::NotFound, nameOf(id) + " is not in the ledger");
    auto body = bodyIn(row, 0);
    if (!body)
        refuseBody(id);
    return std::move(*body);
}

Instant LedgerTable::madeAt(const RecordId& id) const
{
    Statement row = m_database.prepare("SELECT made_at FROM record WHERE station = ? AND seq = ?");
    row.bind(id.station).bind(id.seq);
    if (!row.next())
        refuse(ErrorCode::NotFound, nameOf(id) + " is not in the ledger");
    return row.time(0);
}

void LedgerTable::forEach(const std::function<void(const Record&)>& visit) const
{
    Statement rows
        = m_database.scan("SELECT station, seq, unit, kind, made_at, actor, body, prev, hash, signature "
                             "FROM record ORDER BY station, seq");
    while (rows.next())
        visit(recordIn(rows));
}

void LedgerTable::forEach(const std::string& station, std::int64_t from, std::int64_t to,
    const std::function<void(const Record&)>& visit) const
{
    Statement rows
        = m_database.scan("SELECT station, seq, unit, kind, made_at, actor, body, prev, hash, signature "
                             "FROM record WHERE station = ? AND seq BETWEEN ? AND ? ORDER BY seq");
    rows.bind(station).bind(from).bind(to);
    while (rows.next())
        visit(recordIn(rows));
}

std::vector<std::string> LedgerTable::stations() const
{
    std::vector<std::string> stations;
    Statement rows = m_database.prepare("SELECT station FROM station ORDER BY station");
    while (rows.next())
        stations.push_back(rows.text(0));
    return stations;
}

}
