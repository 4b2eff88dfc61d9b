// SPDX-License-Identifier: MIT
#include "core/exchange/trust.h"

#include "packs.h"

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

struct Pair
{
    Pair()
    {
        ward.addUnit("sorrel-hill");
        ward.walk("sorrel-hill", 0);
        ward.pack(ward.file("all.pack"));
    }
    Station ward{1};
    Station supervisor{2};
};

bool says(const Error& error, const std::string& what)
{
    return error.message.find(what) != std::string::npos;
}

}

TEST_CASE("a fingerprint is eight groups of five digits from the sum of the key")
{
    // SHA-256 of 32 zero bytes: 66687aad f862bd77 6c8fc18b 8e9f8e20 08971485 6ee233b3 902a591d 0d5f2925
    CHECK(fingerprint(PublicKey{}) == "23181 20599 60523 21280 18917 18131 94429 40261");
    PublicKey other{};
    other[31] = 1;
    CHECK(fingerprint(other) != fingerprint(PublicKey{}));
    CHECK(fingerprint(other).size() == 47);
}

TEST_CASE("records of a station that nobody has trusted are refused, with what to compare")
{
    Pair pair;
    const auto refused = pair.supervisor.take(pair.ward.file("all.pack"));
    REQUIRE_FALSE(refused.has_value());
    CHECK(refused.error().code == ErrorCode::InvalidArgument);
    CHECK(says(refused.error(), "station " + pair.ward.key.id() + " is not trusted yet"));
    CHECK(says(refused.error(), fingerprint(pair.ward.key.publicKey())));
    CHECK_FALSE(says(refused.error(), "CAUTION"));
    CHECK(refused.error().hint.find("--trust " + pair.ward.key.id()) != std::string::npos);
    CHECK(pair.supervisor.ledger() == "");
}

TEST_CASE("a station is trusted once, before or with its first pack")
{
    Pair pair;
    must(pair.supervisor.store->trust({.station = pair.ward.key.id(),
        .key = std::nullopt,
        .name = "Sorrel Hill",
        .at = pair.supervisor.clock.now(),
        .by = "EF",
        .units = {}}));
    CHECK(must(pair.supervisor.take(pair.ward.file("all.pack"))).trusted.empty());
    pair.ward.walk("sorrel-hill", 1);
    pair.ward.pack(pair.ward.file("more.pack"));
    CHECK(must(pair.supervisor.take(pair.ward.file("more.pack"))).fresh == 1);
    must(pair.supervisor.store->distrust(pair.ward.key.id()));
    pair.ward.walk("sorrel-hill", 2);
    pair.ward.pack(pair.ward.file("most.pack"));
    CHECK_FALSE(pair.supervisor.take(pair.ward.file("most.pack")).has_value());
    CHECK(pair.supervisor.store->distrust(pair.ward.key.id()).error().code == ErrorCode::NotFound);
}

TEST_CASE("trust for one station is none for another in the same pack")
{
    Pair pair;
    Station third(3);
    third.addUnit("alder-fen");
    third.pack(third.file("all.pack"));
    must(pair.ward.take(third.file("all.pack"), trusting({&third})));
    pair.ward.pack(pair.ward.file("both.pack"));
    const auto refused = pair.supervisor.take(pair.ward.file("both.pack"), trusting({&pair.ward}));
    REQUIRE_FALSE(refused.has_value());
    CHECK(says(refused.error(), third.key.id() + " is not trusted yet"));
    CHECK_FALSE(says(refused.error(), pair.ward.key.id()));
    CHECK(must(pair.supervisor.store->trustedStations()).empty());
}

TEST_CASE("another station that begins to write a unit is a loud stop, trusted or not")
{
    Pair pair;
    must(pair.supervisor.take(pair.ward.file("all.pack"), trusting({&pair.ward})));
    // The ward's database was restored: its chain goes on with a new key.
    Station restored(4);
    must(restored.take(pair.ward.file("all.pack"), trusting({&pair.ward})));
    restored.walk("sorrel-hill", 1);
    restored.pack(restored.file("new.pack"));
    auto refused = pair.supervisor.take(restored.file("new.pack"));
    REQUIRE_FALSE(refused.has_value());
    CHECK(says(refused.error(), restored.key.id() + " is not trusted yet"));
    CHECK(
        says(refused.error(), "CAUTION: the records of sorrel-hill come from station " + pair.ward.key.id()));
    // Trusted for a unit of its own, it still may not write for another one.
    must(pair.supervisor.store->trust({.station = restored.key.id(),
        .key = std::nullopt,
        .name = "Alder Fen",
        .at = pair.supervisor.clock.now(),
        .by = "EF",
        .units = {"alder-fen"}}));
    refused = pair.supervisor.take(restored.file("new.pack"));
    REQUIRE_FALSE(refused.has_value());
    CHECK(says(refused.error(), "is trusted, but begins to write for another one"));
    CHECK(says(refused.error(), "CAUTION"));
    must(pair.supervisor.take(restored.file("new.pack"), trusting({&restored})));
    const auto trusted = must(pair.supervisor.store->trustedStations());
    const auto word = std::find_if(
        trusted.begin(), trusted.end(), [&](const auto& t) { return t.station == restored.key.id(); });
    REQUIRE(word != trusted.end());
    CHECK(word->name == "Alder Fen");
    CHECK(word->key == restored.key.publicKey());
    CHECK(word->units == std::vector<std::string>{"alder-fen", "sorrel-hill"});
    restored.walk("sorrel-hill", 2);
    restored.pack(restored.file("newer.pack"));
    CHECK(must(pair.supervisor.take(restored.file("newer.pack"))).fresh == 1);
    CHECK(difference(restored, pair.supervisor) == "");
}

TEST_CASE("the own station is always trusted: its lost records come back from others")
{
    Pair pair;
    must(pair.supervisor.take(pair.ward.file("all.pack"), trusting({&pair.ward})));
    pair.supervisor.pack(pair.supervisor.file("back.pack"));
    Station again(1); // the same key beside an empty database
    CHECK(must(again.take(pair.supervisor.file("back.pack"))).fresh == 5);
    CHECK(difference(again, pair.ward) == "");
    again.walk("sorrel-hill", 1);
    CHECK(textOf(again.store->verify()) == "");
}
