// SPDX-License-Identifier: MIT
#include "core/ledger/record.h"

#include "core/ledger/canonical.h"

#include <sodium.h>

namespace cradlepost {

namespace {

std::string toHex(const Hash& hash)
{
    static constexpr char digits[] = "0123456789abcdef";
    std::string text;
    text.reserve(hash.size() * 2);
    for (const unsigned char byte : hash) {
        text += digits[byte >> 4];
        text += digits[byte & 0xF];
    }
    return text;
}

/** The body is canonical JSON already, so it goes in as it stands; the names are in canonical order. */
std::string sealedText(const Record& record)
{
    std::string out;
    out.reserve(record.body.size() + 256);
    out += "{\"actor\":";
    appendCanonical(out, record.actor);
    out += ",\"body\":" + record.body + ",\"kind\":";
    appendCanonical(out, record.kind);
    out += ",\"made_at\":" + std::to_string(toMs(record.madeAt));
    out += ",\"prev\":\"" + toHex(record.prev) + "\",\"seq\":" + std::to_string(record.seq) + ",\"station\":";
    appendCanonical(out, record.station);
    out += ",\"unit\":";
    appendCanonical(out, record.unit);
    out += '}';
    return out;
}

}

Hash hashOf(const Record& record) { return sha256(sealedText(record)); }

void seal(Record& record, const StationKey& key)
{
    record.hash = hashOf(record);
    record.signature = key.sign(record.hash);
}

Result<void> checkSeal(const Record& record, const PublicKey& key)
{
    if (stationId(key) != record.station)
        return fail(ErrorCode::Forged, "the station's id is not that of its key");
    if (hashOf(record) != record.hash)
        return fail(ErrorCode::Forged, "the hash does not fit the record");
    if (crypto_sign_verify_detached(
            record.signature.data(), record.hash.data(), record.hash.size(), key.data())
        != 0)
        return fail(ErrorCode::Forged, "the signature does not fit the station's key");
    return {};
}

}
