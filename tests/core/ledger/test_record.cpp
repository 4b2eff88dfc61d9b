// SPDX-License-Identifier: MIT
#include "core/ledger/record.h"

#include <doctest/doctest.h>
#include <functional>
#include <sodium.h>

using namespace cradlepost;

namespace {

StationKey aKey(unsigned char first)
{
    std::array<unsigned char, 32> seed{first};
    return StationKey::fromSeed(seed);
}

Record aRecord(const StationKey& key)
{
    Record record{.station = key.id(),
        .seq = 7,
        .unit = "sorrel-hill",
        .kind = "unit",
        .madeAt = fromMs(1764012240000),
        .actor = "AB",
        .body = R"({"name":"Sorrel Hill"})"};
    record.prev.fill(0xAB);
    seal(record, key);
    return record;
}

}

TEST_CASE("the hash is SHA-256 over the canonical JSON of all fields but hash and signature")
{
    const Record record = aRecord(aKey(1));
    std::string prev;
    for (int i = 0; i < 32; ++i)
        prev += "ab";
    const std::string text
        = R"({"actor":"AB","body":{"name":"Sorrel Hill"},"kind":"unit","made_at":1764012240000,)"
          R"("prev":")"
        + prev + R"(","seq":7,"station":")" + record.station + R"(","unit":"sorrel-hill"})";
    Hash expected;
    crypto_hash_sha256(expected.data(), reinterpret_cast<const unsigned char*>(text.data()), text.size());
    CHECK(record.hash == expected);
}

TEST_CASE("a sealed record checks")
{
    const StationKey key = aKey(1);
    CHECK(checkSeal(aRecord(key), key.publicKey()).has_value());
}

TEST_CASE("a change in any field breaks the seal")
{
    const StationKey key = aKey(1);
    const std::pair<const char*, std::function<void(Record&)>> changes[] = {
        {"seq", [](Record& r) { ++r.seq; }},
        {"unit", [](Record& r) { r.unit[0] = 'S'; }},
        {"kind", [](Record& r) { r.kind += 's'; }},
        {"made at", [](Record& r) { r.madeAt += std::chrono::milliseconds(1); }},
        {"actor", [](Record& r) { r.actor = "BA"; }},
        {"body", [](Record& r) { r.body[10] ^= 1; }},
        {"prev", [](Record& r) { r.prev[31] ^= 1; }},
        {"hash", [](Record& r) { r.hash[0] ^= 0x80; }},
        {"signature", [](Record& r) { r.signature[5] ^= 4; }},
    };
    for (const auto& [field, change] : changes) {
        CAPTURE(field);
        Record record = aRecord(key);
        change(record);
        const auto checked = checkSeal(record, key.publicKey());
        REQUIRE_FALSE(checked.has_value());
        CHECK(checked.error().code == ErrorCode::Forged);
    }
}

TEST_CASE("a record sealed again by another key is found out")
{
    const StationKey key = aKey(1);
    const StationKey other = aKey(2);
    Record record = aRecord(key);
    record.actor = "ZZ";
    seal(record, other);
    CHECK(
        checkSeal(record, key.publicKey()).error().message == "the signature does not fit the station's key");
    CHECK(checkSeal(record, other.publicKey()).error().message == "the station's id is not that of its key");
}

TEST_CASE("the error says whether the hash or the signature is wrong")
{
    const StationKey key = aKey(1);
    Record record = aRecord(key);
    record.body = "{}";
    CHECK(checkSeal(record, key.publicKey()).error().message == "the hash does not fit the record");
    record.hash = hashOf(record);
    CHECK(
        checkSeal(record, key.publicKey()).error().message == "the signature does not fit the station's key");
}
