// SPDX-License-Identifier: MIT
#include "core/store/checklisttable.h"

#include "core/checklist/reader.h"
#include "core/ledger/canonical.h"
#include "core/round/draftcodec.h"
#include "core/store/bodies.h"
#include "core/store/failure.h"


namespace cradlepost {

namespace {

Hash fingerprint(const Json& document) { return sha256(canonicalText(document)); }

}

void ChecklistTable::refuseAnother(const Checklist& checklist, const Json& document) const
{
    Statement row = m_target.prepare("SELECT sha256 FROM checklist WHERE checklist = ? AND version = ?");
    row.bind(checklist.id).bind(checklist.version);
    if (row.next() && row.bytes<32>(0) != fingerprint(document))
        refuse(ErrorCode::AlreadyExists,
            "checklist " + checklist.id + " version " + std::to_string(checklist.version)
                + " is there already with another content",
            "Give the changed document a new version.");
}

bool ChecklistTable::put(const Checklist& checklist, const Json& document, const Origin& origin)
{
    const Hash hash = fingerprint(document);
    bool isNew = true;
    {
        Statement row = m_target.prepare(
            "SELECT sha256, at, station, seq FROM checklist WHERE checklist = ? AND version = ?");
        row.bind(checklist.id).bind(checklist.version);
        if (row.next()) {
            const Origin first{.at = row.time(1), .id = {.station = row.text(2), .seq = row.integer(3)}};
            if (first <= origin)
                return false;
            isNew = row.bytes<32>(0) != hash;
        }
    }
    m_target
        .prepare(
            "INSERT INTO checklist (checklist, version, sha256, at, station, seq) VALUES (?, ?, ?, ?, ?, ?) "
            "ON CONFLICT (checklist, version) DO UPDATE SET sha256 = excluded.sha256, at = excluded.at, "
            "station = excluded.station, seq = excluded.seq")
        .bind(checklist.id)
        .bind(checklist.version)
        .bind(std::span<const unsigned char>(hash))
        .bind(origin.at)
        .bind(origin.id.station)
        .bind(origin.id.seq)
        .run();
    if (isNew)
        m_parsed.erase({checklist.id, checklist.version});
    return isNew;
}

void ChecklistTable::put(
    const std::string& unit, const Checklist& checklist, const Adoption& adoption, const Origin& origin)
{
    m_target
        .prepare("INSERT INTO adoption (unit, kind, from_day, checklist, version, limits, at, station, seq) "
                 "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (unit, kind, from_day) DO UPDATE SET "
                 "checklist = excluded.checklist, version = excluded.version, limits = excluded.limits, "
                 "at = excluded.at, station = excluded.station, seq = excluded.seq "
                 "WHERE (excluded.at, excluded.station, excluded.seq) > (adoption.at, adoption.station, "
                 "adoption.seq)")
        .bind(unit)
        .bind(codeName(checklist.use))
        .bind(toIso(adoption.from))
        .bind(checklist.id)
        .bind(checklist.version)
        .bind(canonicalText(limitsToJson(adoption.limits)))
        .bind(origin.at)
        .bind(origin.id.station)
        .bind(origin.id.seq)
        .run();
}

std::shared_ptr<const Checklist> ChecklistTable::find(const std::string& id, int version)
{
    if (const auto known = m_parsed.find({id, version}); known != m_parsed.end())
        return known->second;
    RecordId record;
    {
        Statement row
            = m_target.prepare("SELECT station, seq FROM checklist WHERE checklist = ? AND version = ?");
        row.bind(id).bind(version);
        if (!row.next())
            return nullptr;
        record = {.station = row.text(0), .seq = row.integer(1)};
    }
    const Adoption adoption = need(adoptionFromBody(need(parseJson(m_ledger.body(record)))));
    auto checklist = std::make_shared<const Checklist>(need(readChecklist(adoption.document)));
    m_parsed.emplace(std::pair(id, version), checklist);
    return checklist;
}

std::optional<ChecklistTable::Adopted> ChecklistTable::adopted(
    const std::string& unit, RoundKind kind, Date day) const
{
    Statement row
        = m_target.prepare("SELECT checklist, version, limits FROM adoption "
                           "WHERE unit = ? AND kind = ? AND from_day <= ? ORDER BY from_day DESC LIMIT 1");
    row.bind(unit).bind(codeName(kind)).bind(toIso(day));
    if (!row.next())
        return std::nullopt;
    const Json limits = need(parseJson(row.text(2)));
    return Adopted{
        .checklist = row.text(0), .version = row.number(1), .limits = need(limitsFromJson(&limits))};
}

}
