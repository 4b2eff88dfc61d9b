// SPDX-License-Identifier: MIT
#include "core/exchange/packrecord.h"

#include "core/exchange/packfields.h"
#include "core/ledger/canonical.h"

namespace cradlepost {

namespace {

Result<void> checkTexts(const Record& record)
{
    // As long as anything that this program writes; the parser has made sure of UTF-8.
    constexpr std::size_t longest = 256;
    if (record.unit.empty() || record.unit.size() > longest)
        return fail(ErrorCode::BadDocument, "its unit is no unit's id");
    if (record.kind.empty() || record.kind.size() > longest)
        return fail(ErrorCode::BadDocument, "its kind is no kind of record");
    if (record.actor.empty() || record.actor.size() > longest)
        return fail(ErrorCode::BadDocument, "its actor is nobody");
    if (!isStationId(record.station) || record.seq < 1)
        return fail(ErrorCode::BadDocument, "it names no place in a chain");
    return {};
}

std::string textBefore(const Record& record)
{
    std::string out = "{\"actor\":";
    appendCanonical(out, record.actor);
    return out + ",\"body\":";
}

std::string textBehind(const Record& record)
{
    std::string out = ",\"hash\":\"" + toHex(record.hash) + "\",\"kind\":";
    appendCanonical(out, record.kind);
    out += ",\"made_at\":" + std::to_string(toMs(record.madeAt));
    out += ",\"prev\":\"" + toHex(record.prev) + "\",\"seq\":" + std::to_string(record.seq);
    out += ",\"signature\":\"" + toHex(record.signature) + "\",\"station\":";
    appendCanonical(out, record.station);
    out += ",\"unit\":";
    appendCanonical(out, record.unit);
    return out + '}';
}

}

std::string recordLine(const Record& record)
{
    return textBefore(record) + record.body + textBehind(record) + '\n'; // the body is canonical already
}

Result<ReadRecord> readCheckedRecord(std::string_view line)
{
    auto json = parseJson(line);
    if (!json)
        return fail(ErrorCode::BadDocument, "it is no JSON: " + json.error().message);
    ReadRecord read;
    Record& record = read.record;
    const Json* body = nullptr;
    Fields fields(*json);
    fields.text("actor", record.actor);
    fields.any("body", body);
    fields.hex("hash", record.hash);
    fields.text("kind", record.kind);
    fields.time("made_at", record.madeAt);
    fields.hex("prev", record.prev);
    fields.integer("seq", record.seq);
    fields.hex("signature", record.signature);
    fields.text("station", record.station);
    fields.text("unit", record.unit);
    if (const auto done = fields.end("the record"); !done)
        return tl::unexpected(done.error());
    if (const auto sound = checkTexts(record); !sound)
        return tl::unexpected(sound.error());
    const std::string before = textBefore(record);
    const std::string behind = textBehind(record);
    if (line.size() < before.size() + behind.size() || !line.starts_with(before) || !line.ends_with(behind))
        return fail(ErrorCode::BadDocument, "it is not in canonical form");
    record.body = line.substr(before.size(), line.size() - before.size() - behind.size());
    for (JsonMember& member : std::get<Json::Object>(json->value))
        if (member.name == "body")
            read.body = std::move(member.value);
    return read;
}

Result<ReadRecord> readRecord(std::string_view line)
{
    auto read = readCheckedRecord(line);
    if (!read)
        return read;
    if (const auto sound = checkBody(read->body); !sound)
        return fail(ErrorCode::BadDocument, sound.error().message);
    if (canonicalText(read->body) != read->record.body)
        return fail(ErrorCode::BadDocument, "it is not in canonical form");
    return read;
}

Result<void> checkRecord(const Record& record, const PublicKey& key, const std::optional<RecordSeal>& known)
{
    if (known && known->hash == record.hash && known->signature == record.signature) {
        if (hashOf(record) != record.hash)
            return fail(ErrorCode::Forged, "the hash does not fit the record");
        return {};
    }
    return checkSeal(record, key);
}

}
