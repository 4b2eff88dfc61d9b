// SPDX-License-Identifier: MIT
#include "core/store/parts.h"
#include "core/store/store.h"

#include "core/base/refusal.h"
#include "core/ledger/canonical.h"
#include "core/store/stationplace.h"

namespace cradlepost {

const StationKey& Store::Parts::signingKey()
{
    if (key)
        return *key;
    key = need(StationKey::loadOrCreate(besideOf(*database) + ".key"));
    return *key;
}

std::optional<DraftShelter>& Store::Parts::draftShelter()
{
    if (!shelter && database->dialect() != Dialect::Sqlite)
        shelter.emplace(besideOf(*database) + ".drafts");
    return shelter;
}

bool Store::Parts::isThere(const Entered& record) const
{
    // Its old connection may be at work still: it holds this lock until it has ended.
    database->connection().lock("station/" + record.id.station);
    const auto seal = ledger.sealOf(record.id);
    return seal && seal->hash == record.hash;
}

RecordId Store::Parts::append(
    const char* kind, const std::string& unit, const Json& body, const std::string& actor)
{
    const Record record = enter(kind, unit, body, actor);
    projector.apply(record, body);
    return {.station = record.station, .seq = record.seq};
}

RecordId Store::Parts::append(const std::string& unit, const RoundRecord& round, const std::string& actor)
{
    const char* kind = round.kind == RoundKind::SpotCheck ? recordkind::observation : recordkind::round;
    const Record record = enter(kind, unit, toBody(round), actor);
    projector.apply(record, round);
    return {.station = record.station, .seq = record.seq};
}

Record Store::Parts::enter(
    const char* kind, const std::string& unit, const Json& body, const std::string& actor)
{
    need(checkBody(body));
    if (actor.empty() || actor.size() > 64 || !isUtf8(actor))
        refuse(refused(refusal::nobodyNamed, {}, "a record needs to know who made it",
            "Give initials of 1 to 12 characters."));
    const StationKey& station = signingKey();
    // Others may write with the same key from another window: the chain's end holds until the commit.
    database->connection().lock("station/" + station.id());
    const ChainTip tip = ledger.tip(station.id());
    if (tip.seq == 0)
        ledger.addStation(station.id(), station.publicKey());
    Record record{.station = station.id(),
        .seq = tip.seq + 1,
        .unit = unit,
        .kind = kind,
        .madeAt = clock.now(),
        .actor = actor,
        .body = canonicalText(body),
        .prev = tip.hash};
    seal(record, station);
    ledger.insert(record);
    entered = Entered{.id = {.station = record.station, .seq = record.seq}, .hash = record.hash};
    return record;
}

Unit Store::Parts::knownUnit(const std::string& id) const
{
    auto unit = units.unit(id);
    if (!unit)
        refuse(ErrorCode::NotFound, "unit '" + id + "' is not known", "Describe it in the set-up first.");
    return std::move(*unit);
}

std::shared_ptr<const Checklist> Store::Parts::knownChecklist(const std::string& id, int version)
{
    auto checklist = projector.checklists().find(id, version);
    if (!checklist)
        refuse(ErrorCode::NotFound,
            "checklist '" + id + "' version " + std::to_string(version) + " is not known",
            "Adopt it in the set-up first.");
    return checklist;
}

SavedRound Store::Parts::savedRound(const RecordId& id) const
{
    CountedRound counted = amendments.read(id);
    return {.id = id,
        .actor = std::move(counted.actor),
        .round = std::move(counted.round),
        .amendments = std::move(counted.amendments)};
}

}
