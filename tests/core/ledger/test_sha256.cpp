// SPDX-License-Identifier: MIT
#include "core/ledger/sha256.h"

#include <doctest/doctest.h>
#include <random>
#include <sodium.h>
#include <string>

using namespace cradlepost;

namespace {
std::string hexOf(const Hash& hash)
{
    char text[2 * sizeof(Hash) + 1];
    return sodium_bin2hex(text, sizeof text, hash.data(), hash.size());
}
}

TEST_CASE("the examples of NIST for SHA-256 (FIPS 180-4, 'Examples with Intermediate Values')")
{
    CHECK(hexOf(sha256("abc")) == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    CHECK(hexOf(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"))
        == "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    CHECK(hexOf(sha256("")) == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    CHECK(hexOf(sha256(std::string(1'000'000, 'a')))
        == "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

TEST_CASE("texts of all lengths, in pieces, as libsodium hashes them whole")
{
    std::mt19937 random(180);
    for (std::size_t length = 0; length < 300; ++length) {
        std::string text(length, ' ');
        for (char& c : text)
            c = static_cast<char>(random() & 0xFFU);
        Hash expected;
        crypto_hash_sha256(expected.data(), reinterpret_cast<const unsigned char*>(text.data()), text.size());
        const std::size_t cut = length == 0 ? 0 : random() % length;
        Sha256 digest;
        digest.add(std::string_view(text).substr(0, cut));
        CHECK(digest.soFar() == sha256(text.substr(0, cut)));
        digest.add(std::string_view(text).substr(cut));
        CHECK(digest.soFar() == expected);
    }
}
