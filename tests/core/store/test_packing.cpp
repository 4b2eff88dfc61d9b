// SPDX-License-Identifier: MIT
#include "core/store/packing.h"

#include <doctest/doctest.h>
#include <random>
#include <zlib.h>

using namespace cradlepost;

TEST_CASE("a text comes back as it was packed")
{
    std::mt19937 random(3);
    for (const std::size_t size : {0U, 1U, 100U, 4095U, 4096U, 4097U, 100'000U}) {
        std::string text(size, ' ');
        for (char& c : text)
            c = static_cast<char>(random() % 256);
        CHECK(unpacked(packed(text)) == text);
    }
}

TEST_CASE("a round's text takes a third of its bytes or less")
{
    std::string text = "{\"answers\":[";
    for (int i = 0; i < 60; ++i)
        text += "\"y\",{\"n\":[[10,\"2027-06-12\",\"L17\"]]},";
    CHECK(packed(text).size() * 3 < text.size());
}

TEST_CASE("what is cut, longer, changed or no packed text at all is refused")
{
    const std::string text(500, 'x');
    auto bytes = packed(text);
    for (std::size_t size = 0; size < bytes.size(); ++size)
        CHECK_FALSE(unpacked(std::span(bytes).first(size)).has_value());
    auto longer = bytes;
    longer.push_back(0);
    CHECK_FALSE(unpacked(longer).has_value());
}

TEST_CASE("one bit turned anywhere in the packed bytes is refused, also where it fills up a byte")
{
    std::mt19937 random(5);
    for (const std::size_t size : {0U, 1U, 2U, 3U, 50U, 51U, 300U, 20'000U}) {
        std::string noise(size, ' ');
        for (char& c : noise)
            c = static_cast<char>(random() % 256);
        const std::string words = "{\"answers\":[\"y\",\"absent\"]," + std::string(size, 'm') + "}";
        for (const std::string& text : {noise, words}) {
            const auto bytes = packed(text);
            for (std::size_t bit = 0; bit<bytes.size() * 8; bit += size> 1000 ? 97 : 1) {
                auto changed = bytes;
                changed[bit / 8] = static_cast<unsigned char>(changed[bit / 8] ^ (1U << (bit % 8)));
                CAPTURE(size);
                CAPTURE(bit);
                CHECK_FALSE(unpacked(changed).has_value());
            }
            CHECK(unpacked(bytes) == text);
        }
    }
}

TEST_CASE("a small text that would unpack to more than there can be is refused")
{
    CHECK_FALSE(unpacked(packed(std::string(20U << 20U, ' '))).has_value());
}

TEST_CASE("a text that another zlib has packed otherwise is read all the same")
{
    const std::string text(3000, 'x');
    uLongf size = compressBound(3000);
    std::vector<unsigned char> bytes(size);
    REQUIRE(
        compress2(bytes.data(), &size, reinterpret_cast<const Bytef*>(text.data()), 3000, Z_NO_COMPRESSION)
        == Z_OK);
    bytes.resize(size);
    const auto sum = crc32(0, bytes.data(), static_cast<uInt>(bytes.size()));
    for (const int shift : {24, 16, 8, 0})
        bytes.push_back(static_cast<unsigned char>(sum >> shift));
    CHECK(bytes != packed(text));
    CHECK(unpacked(bytes) == text);
}
