// SPDX-License-Identifier: MIT
#include "core/store/verification.h"

#include "core/ledger/canonical.h"
#include "core/store/failure.h"
#include "core/store/migration.h"
#include "core/store/projector.h"
#include "core/store/transaction.h"

#include <map>

namespace cradlepost {

namespace {

std::optional<Fault> checkFile(Database& database)
{
    if (database.dialect() != Dialect::Sqlite)
        return std::nullopt; // the server's own matter
    const std::string said = database.textOf("PRAGMA integrity_check(1)");
    if (said == "ok")
        return std::nullopt;
    return Fault{.where = "file", .what = said};
}

std::string nameOf(const Record& record)
{
    return "record " + record.station + '/' + std::to_string(record.seq);
}

/** Walks all chains; stops at the first fault. */
class ChainWalk
{
public:
    explicit ChainWalk(LedgerTable& ledger)
        : m_ledger(ledger)
    {
    }

    /** The body of a sound record; with a fault before or in it the fault stands in `out`. */
    std::optional<Json> visit(const Record& record, Verified& out)
    {
        if (!out.fault && m_station != record.station)
            begin(record.station, out);
        if (out.fault)
            return std::nullopt;
        Json body;
        if (auto fault = faultOf(record, body)) {
            out.fault = Fault{.where = nameOf(record), .what = *fault};
            return std::nullopt;
        }
        noteTime(record, out);
        ++out.records;
        m_seq = record.seq;
        m_prev = record.hash;
        return body;
    }

private:
    void begin(const std::string& station, Verified& out)
    {
        m_station = station;
        m_seq = 0;
        m_prev = {};
        m_latest = Instant::min();
        m_key = m_ledger.publicKey(station);
        if (!m_key)
            out.fault = Fault{.where = "station " + station, .what = "its public key is missing"};
    }

    std::optional<std::string> faultOf(const Record& record, Json& body) const
    {
        if (record.seq != m_seq + 1)
            return "record " + std::to_string(m_seq + 1) + " is missing before it";
        if (record.prev != m_prev)
            return "it does not follow the record before it (prev)";
        if (const auto sealed = checkSeal(record, *m_key); !sealed)
            return sealed.error().message;
        auto read = parseJson(record.body);
        if (!read)
            return "the body is no JSON: " + read.error().message;
        if (canonicalText(*read) != record.body)
            return std::string("the body is not in canonical form");
        if (const auto sound = checkBody(*read); !sound)
            return sound.error().message;
        body = std::move(*read);
        return std::nullopt;
    }

    void noteTime(const Record& record, Verified& out)
    {
        if (record.madeAt < m_latest) {
            if (out.clockSetBack++ == 0)
                out.firstSetBack = nameOf(record);
        } else {
            m_latest = record.madeAt;
        }
    }

    LedgerTable& m_ledger;
    std::string m_station;
    std::int64_t m_seq = 0;
    Hash m_prev{};
    Instant m_latest;
    std::optional<PublicKey> m_key;
};

void checkStations(LedgerTable& ledger, Verified& out)
{
    for (const std::string& station : ledger.stations()) {
        ++out.stations;
        const auto key = ledger.publicKey(station);
        if (!out.fault && stationId(*key) != station)
            out.fault = Fault{.where = "station " + station, .what = "its id is not that of its public key"};
    }
}

std::optional<Fault> checkDrafts(Database& database)
{
    Statement rows = database.prepare("SELECT unit, kind, body FROM draft ORDER BY unit, kind");
    while (rows.next()) {
        const std::string where = "draft " + rows.text(0) + '/' + rows.text(1);
        const auto json = parseJson(rows.text(2));
        if (!json)
            return Fault{.where = where, .what = "it is no JSON: " + json.error().message};
        const auto draft = draftFromJson(*json);
        if (!draft)
            return Fault{.where = where, .what = draft.error().message};
        if (draft->unit != rows.text(0) || codeName(draft->kind) != rows.text(1))
            return Fault{.where = where, .what = "it is a draft of another unit or kind"};
    }
    return std::nullopt;
}

/** A trigger of the ledger that is gone, or switched off, lets it be changed. */
std::optional<Fault> checkTriggers(Database& database)
{
    std::map<std::string, bool> isOn;
    Statement rows = database.prepare(
        "SELECT tgname, CASE WHEN tgenabled IN ('O', 'A') AND prosrc LIKE '%append-only%' THEN 1 ELSE 0 END "
        "FROM pg_trigger JOIN pg_proc ON pg_proc.oid = tgfoid "
        "WHERE tgrelid IN ('record'::regclass, 'station'::regclass) AND NOT tgisinternal");
    while (rows.next())
        isOn.emplace(rows.text(0), rows.integer(1) != 0);
    for (const char* name :
        {"record_is_not_emptied", "record_keeps_rows", "station_is_not_emptied", "station_keeps_rows"}) {
        const auto at = isOn.find(name);
        if (at == isOn.end())
            return Fault{.where = "schema", .what = std::string(name) + " is missing"};
        if (!at->second)
            return Fault{.where = "schema", .what = std::string(name) + " is not as this program made it"};
    }
    return std::nullopt;
}

std::map<std::string, std::string> schemaOf(Database& database)
{
    std::map<std::string, std::string> schema;
    Statement rows = database.prepare("SELECT name, sql FROM sqlite_schema WHERE sql IS NOT NULL");
    while (rows.next())
        schema.emplace(rows.text(0), rows.text(1));
    return schema;
}

/** A trigger that is gone lets the ledger be changed. Additions of other programs do no harm. */
std::optional<Fault> checkSchema(Database& database, Database& replayed)
{
    if (database.dialect() != Dialect::Sqlite)
        return checkTriggers(database);
    const auto found = schemaOf(database);
    for (const auto& [name, sql] : schemaOf(replayed)) {
        const auto at = found.find(name);
        if (at == found.end())
            return Fault{.where = "schema", .what = name + " is missing"};
        if (at->second != sql)
            return Fault{.where = "schema", .what = name + " is not as this program made it"};
    }
    return std::nullopt;
}

void verifyInto(Verified& out, Database& database)
{
    if ((out.fault = checkFile(database)))
        return;
    LedgerTable ledger(database);
    checkStations(ledger, out);
    if (out.fault)
        return;
    const auto replayed = Database::inMemory();
    migrate(*replayed, schemaSteps());
    {
        Transaction transaction(*replayed);
        Projector projector(database, *replayed);
        ChainWalk walk(ledger);
        projector.beginReplay();
        ledger.forEach([&](const Record& record) {
            if (const auto body = walk.visit(record, out))
                projector.replay(record, *body);
        });
        if (out.fault)
            return;
        projector.endReplay();
        transaction.commit();
    }
    out.fault = compareProjections(database, *replayed);
    if (!out.fault)
        out.fault = checkDrafts(database);
    if (!out.fault)
        out.fault = checkSchema(database, *replayed);
}

}

Verified verifyDatabase(Database& database)
{
    Verified out;
    try {
        const Snapshot snapshot(database);
        verifyInto(out, database);
    } catch (const Failure& failure) {
        const ErrorCode code = failure.error.code;
        if (code != ErrorCode::Damaged && code != ErrorCode::NotADatabase)
            throw;
        out.fault = Fault{.where = "file", .what = failure.error.message};
    }
    return out;
}

}
