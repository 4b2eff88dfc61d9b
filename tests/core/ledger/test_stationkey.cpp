// SPDX-License-Identifier: MIT
#include "core/ledger/stationkey.h"

#include <cstdlib>
#include <doctest/doctest.h>
#include <filesystem>
#include <fstream>
#include <set>
#include <sodium.h>
#include <sys/stat.h>
#include <thread>
#include <vector>

using namespace cradlepost;
namespace fs = std::filesystem;

namespace {

std::vector<unsigned char> fromHex(std::string_view hex)
{
    std::vector<unsigned char> bytes(hex.size() / 2);
    if (hex.empty())
        return bytes;
    REQUIRE(
        sodium_hex2bin(bytes.data(), bytes.size(), hex.data(), hex.size(), nullptr, nullptr, nullptr) == 0);
    return bytes;
}

std::string toHex(std::span<const unsigned char> bytes)
{
    std::string text(bytes.size() * 2 + 1, '\0');
    sodium_bin2hex(text.data(), text.size(), bytes.data(), bytes.size());
    text.pop_back();
    return text;
}

/** A folder of its own, gone at the end. */
struct Folder
{
    Folder()
    {
        std::string name = (fs::temp_directory_path() / "cradlepost-key-XXXXXX").string();
        path = ::mkdtemp(name.data());
    }
    ~Folder() { fs::remove_all(path); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    fs::path path;
};

struct Vector
{
    const char* seed;
    const char* publicKey;
    const char* message;
    const char* signature;
};

}

TEST_CASE("keys and signatures are those of RFC 8032 section 7.1")
{
    const Vector vectors[] = {
        {"9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
            "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a", "",
            "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46b"
            "d25bf5f0595bbe24655141438e7a100b"},
        {"4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
            "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c", "72",
            "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c"
            "387b2eaeb4302aeeb00d291612bb0c00"},
        {"c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7",
            "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025", "af82",
            "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc659"
            "4a7c15e9716ed28dc027beceea1ec40a"},
        {"833fe62409237b9d62ec77587520911e9a759cec1d19755b7da901b96dca3d42",
            "ec172b93ad5e563bf4932c70e1245034c35467ef2efd4d64ebf819683467e2bf",
            "ddaf35a193617abacc417349ae20413112e6fa4e89a97ea20a9eeee64b55d39a2192992a274fc1a836ba3c23a3feebbd"
            "454d4423643ce80e2a9ac94fa54ca49f",
            "dc2a4459e7369633a52b1bf277839a00201009a3efbf3ecb69bea2186c26b58909351fc9ac90b3ecfdfbc7c66431e030"
            "3dca179c138ac17ad9bef1177331a704"},
    };
    for (const Vector& vector : vectors) {
        const auto seed = fromHex(vector.seed);
        const StationKey key = StationKey::fromSeed(std::span<const unsigned char, 32>(seed));
        CHECK(toHex(key.publicKey()) == vector.publicKey);
        CHECK(toHex(key.sign(fromHex(vector.message))) == vector.signature);
    }
}

TEST_CASE("a station id is the base32 of the first ten bytes of the key's hash, worked out apart")
{
    // python3: base64.b32encode(hashlib.sha256(bytes.fromhex("d75a...511a")).digest()[:10]).lower()
    const auto bytes = fromHex("d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a");
    PublicKey key;
    std::copy(bytes.begin(), bytes.end(), key.begin());
    CHECK(stationId(key) == "eh7ddx5bksrgcytl");
}

TEST_CASE("made keys differ from each other")
{
    std::set<std::string> ids;
    for (int i = 0; i < 50; ++i)
        ids.insert(StationKey::generate().id());
    CHECK(ids.size() == 50);
}

TEST_CASE("the key file is made once, for its owner's eyes only, and read again")
{
    const Folder folder;
    const std::string path = (folder.path / "station.key").string();
    const auto made = StationKey::loadOrCreate(path);
    REQUIRE(made.has_value());
    struct stat about
    {
    };
    REQUIRE(::stat(path.c_str(), &about) == 0);
    CHECK((about.st_mode & 0777) == 0600);
    CHECK(about.st_nlink == 1);
    const auto read = StationKey::loadOrCreate(path);
    REQUIRE(read.has_value());
    CHECK(read->publicKey() == made->publicKey());
    CHECK(std::distance(fs::directory_iterator(folder.path), fs::directory_iterator()) == 1);
}

TEST_CASE("programs that start at the same moment end with the same key")
{
    for (int round = 0; round < 20; ++round) {
        const Folder folder;
        const std::string path = (folder.path / "station.key").string();
        std::vector<std::string> ids(4);
        std::vector<std::thread> threads;
        for (std::string& id : ids)
            threads.emplace_back([&id, &path] {
                if (const auto key = StationKey::loadOrCreate(path))
                    id = key->id();
            });
        for (std::thread& thread : threads)
            thread.join();
        CHECK(ids[0].size() == 16);
        CHECK(std::set<std::string>(ids.begin(), ids.end()).size() == 1);
    }
}

TEST_CASE("a key file with anything else in it is damaged, and is left as it is")
{
    const Folder folder;
    const std::string path = (folder.path / "station.key").string();
    for (const std::string& content : {std::string(), std::string("no key\n"), std::string(64, 'g') + '\n',
             std::string(64, 'a'), std::string(66, 'a') + '\n'}) {
        std::ofstream(path, std::ios::binary) << content;
        const auto key = StationKey::loadOrCreate(path);
        REQUIRE_FALSE(key.has_value());
        CHECK(key.error().code == ErrorCode::Damaged);
        CHECK(key.error().message.find(path) != std::string::npos);
        CHECK(fs::file_size(path) == content.size());
    }
}

TEST_CASE("a folder that is not there is said to be missing")
{
    const Folder folder;
    const auto key = StationKey::loadOrCreate((folder.path / "nowhere" / "station.key").string());
    REQUIRE_FALSE(key.has_value());
    CHECK(key.error().code == ErrorCode::NotFound);
}

TEST_CASE("what is sealed for a station opens there, whole, and nowhere else")
{
    const std::array<unsigned char, 32> seed{1};
    const StationKey receiver = StationKey::fromSeed(seed);
    const std::vector<unsigned char> message{4, 8, 15, 16, 23, 42};
    auto box = sealedFor(receiver.publicKey(), message);
    REQUIRE(box.has_value());
    CHECK(receiver.unseal(*box) == message);
    CHECK_FALSE(StationKey::generate().unseal(*box).has_value());
    CHECK_FALSE(receiver.unseal(std::span(*box).first(box->size() - 1)).has_value());
    CHECK_FALSE(receiver.unseal({}).has_value());
    box->back() ^= 1;
    CHECK_FALSE(receiver.unseal(*box).has_value());
}

TEST_CASE("nothing is sealed for a key that is none")
{
    CHECK_FALSE(sealedFor(PublicKey{}, {}).has_value());
}
