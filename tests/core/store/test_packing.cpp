// SPDX-License-Identifier: MIT
#include "core/store/packing.h"

#include <doctest/doctest.h>
#include <random>

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
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        auto changed = bytes;
        changed[i] ^= 0x10;
        const auto out = unpacked(changed);
        CHECK((!out || *out == text));
    }
}

TEST_CASE("a small text that would unpack to more than there can be is refused")
{
    CHECK_FALSE(unpacked(packed(std::string(20U << 20U, ' '))).has_value());
}
