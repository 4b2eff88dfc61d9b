// SPDX-License-Identifier: MIT
#include "core/store/arrivals.h"
#include "core/store/parts.h"
#include "core/store/store.h"
#include "core/store/trusttable.h"

#include <set>

namespace cradlepost {

namespace {

/** Tables of projections that name the station of what stands in them, by unit: the key begins with it. */
constexpr const char* writerTables[] = {"round", "unit", "shift_pattern", "people", "adoption", "gap_action"};

}

/** What Store::takeIn hands out. */
class Store::Intake final : public Arrivals
{
public:
    explicit Intake(Parts& parts)
        : m_parts(parts)
        , m_trust(*parts.database)
    {
    }

    Result<void> addStation(const std::string& station, const PublicKey& key) override
    {
        return attempt([&] { m_parts.ledger.addStation(station, key); });
    }
    Result<std::int64_t> endOf(const std::string& station) override
    {
        return attempt([&] { return m_parts.ledger.tip(station).seq; });
    }
    Result<std::optional<RecordSeal>> sealOf(const std::string& station, std::int64_t seq) override
    {
        return attempt([&] { return m_parts.ledger.sealOf({.station = station, .seq = seq}); });
    }
    Result<void> add(const Arrival& arrival) override
    {
        return attempt([&] {
            m_parts.ledger.insert(arrival.record, arrival.packedBody);
            if (arrival.round)
                m_parts.projector.replay(arrival.record, *arrival.round);
            else
                m_parts.projector.replay(arrival.record, arrival.body);
        });
    }
    Result<void> trust(const TrustedStation& trusted) override
    {
        return attempt([&] { m_trust.put(trusted); });
    }

private:
    Parts& m_parts;
    TrustTable m_trust;
};

Result<StationKey> Store::ownKey() const
{
    return attempt([&] { return m_parts->signingKey(); });
}

Result<std::vector<Chain>> Store::chains() const
{
    return attempt([&] {
        const Snapshot snapshot(*m_parts->database);
        std::vector<Chain> chains;
        for (const std::string& station : m_parts->ledger.stations()) {
            const ChainTip tip = m_parts->ledger.tip(station);
            chains.push_back({.station = station,
                .key = m_parts->ledger.publicKey(station).value_or(PublicKey{}),
                .seq = tip.seq,
                .hash = tip.hash});
        }
        return chains;
    });
}

Result<std::optional<RecordSeal>> Store::sealOf(const std::string& station, std::int64_t seq) const
{
    return attempt([&] { return m_parts->ledger.sealOf({.station = station, .seq = seq}); });
}

Result<std::optional<std::int64_t>> Store::firstSince(const std::string& station, Instant since) const
{
    return attempt([&] { return m_parts->ledger.firstSince(station, since); });
}

Result<void> Store::records(const std::string& station, std::int64_t from, std::int64_t to,
    const std::function<Result<void>(const Record&)>& visit) const
{
    return attempt([&] {
        const Snapshot snapshot(*m_parts->database);
        m_parts->ledger.forEach(station, from, to, [&](const Record& record) { need(visit(record)); });
    });
}

Result<std::vector<std::string>> Store::writersOf(const std::string& unit) const
{
    return attempt([&] {
        std::set<std::string> writers;
        for (const char* table : writerTables) {
            Statement rows = m_parts->database->prepare(
                std::string("SELECT DISTINCT station FROM ") + table + " WHERE unit = ?");
            rows.bind(unit);
            while (rows.next())
                writers.insert(rows.text(0));
        }
        return std::vector<std::string>(writers.begin(), writers.end());
    });
}

Result<bool> Store::hasWritten(const std::string& station, const std::string& unit) const
{
    return attempt([&] { return m_parts->ledger.hasWritten(station, unit); });
}

Result<std::vector<TrustedStation>> Store::trustedStations() const
{
    return attempt([&] { return TrustTable(*m_parts->database).all(); });
}

Result<void> Store::trust(const TrustedStation& trusted)
{
    return m_parts->inTransaction([&] { TrustTable(*m_parts->database).put(trusted); });
}

Result<void> Store::distrust(const std::string& station)
{
    return m_parts->inTransaction([&] {
        if (!TrustTable(*m_parts->database).drop(station))
            refuse(ErrorCode::NotFound, "station " + station + " is not trusted here");
    });
}

Result<void> Store::takeIn(const std::function<Result<void>(Arrivals&)>& bring)
{
    return m_parts->inTransaction([&] {
        Intake intake(*m_parts);
        m_parts->projector.gatherLate();
        need(bring(intake));
        m_parts->projector.carryLate();
    });
}

}
