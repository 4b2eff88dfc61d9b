// SPDX-License-Identifier: MIT
#include "core/store/amendmenttable.h"

#include "core/store/failure.h"
#include "core/store/recordkind.h"

namespace cradlepost {

namespace {

/** Nothing when the record cannot be read or does not fit: it is left in the ledger and counts for nothing.
 */
std::optional<RoundAmendment> fitting(const Record& record, const RecordId& id, const CountedRound& first)
{
    if (record.kind != recordkind::roundAmended || record.unit != first.unit)
        return std::nullopt;
    const auto body = parseJson(record.body);
    auto amendment = body ? amendmentFromBody(*body) : tl::unexpected(body.error());
    if (!amendment || amendment->amends != id || !checkAmendment(first.round, amendment->round))
        return std::nullopt;
    return std::move(*amendment);
}

}

void AmendmentTable::put(const RecordId& round, const Origin& by)
{
    m_target.prepare("INSERT INTO amendment (station, seq, at, by_station, by_seq) VALUES (?, ?, ?, ?, ?)")
        .bind(round.station)
        .bind(round.seq)
        .bind(by.at)
        .bind(by.id.station)
        .bind(by.id.seq)
        .run();
}

bool AmendmentTable::knows(const RecordId& round) const
{
    Statement row = m_target.prepare("SELECT 1 FROM amendment WHERE station = ? AND seq = ? LIMIT 1");
    row.bind(round.station).bind(round.seq);
    return row.next();
}

std::vector<RecordId> AmendmentTable::rounds() const
{
    std::vector<RecordId> rounds;
    Statement rows = m_target.prepare("SELECT DISTINCT station, seq FROM amendment ORDER BY station, seq");
    while (rows.next())
        rounds.push_back({.station = rows.text(0), .seq = rows.integer(1)});
    return rounds;
}

std::vector<Origin> AmendmentTable::of(const RecordId& round) const
{
    std::vector<Origin> origins;
    Statement rows = m_target.prepare("SELECT at, by_station, by_seq FROM amendment "
                                      "WHERE station = ? AND seq = ? ORDER BY at, by_station, by_seq");
    rows.bind(round.station).bind(round.seq);
    while (rows.next())
        origins.push_back({.at = rows.time(0), .id = {.station = rows.text(1), .seq = rows.integer(2)}});
    return origins;
}

CountedRound AmendmentTable::readFirst(const RecordId& round) const
{
    Record record = m_ledger.read(round);
    if (record.kind != recordkind::round && record.kind != recordkind::observation)
        refuse(ErrorCode::NotFound,
            "record " + round.station + '/' + std::to_string(round.seq) + " is no round");
    return {.unit = std::move(record.unit),
        .actor = std::move(record.actor),
        .round = need(roundFromBody(need(parseJson(record.body)))),
        .amendments = {}};
}

CountedRound AmendmentTable::read(const RecordId& round, const std::optional<RecordId>& without) const
{
    CountedRound counted = readFirst(round);
    RoundRecord last = counted.round;
    for (const Origin& by : of(round)) {
        if (by.id == without)
            continue;
        Record record = m_ledger.read(by.id);
        auto amendment = fitting(record, round, counted);
        if (!amendment)
            continue;
        last = std::move(amendment->round);
        counted.amendments.push_back({.id = by.id,
            .at = by.at,
            .actor = std::move(record.actor),
            .reason = std::move(amendment->reason)});
    }
    counted.round = std::move(last);
    return counted;
}

}
