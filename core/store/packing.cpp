// SPDX-License-Identifier: MIT
#include "core/store/packing.h"

#include <algorithm>
#include <new>
#include <zlib.h>

namespace cradlepost {

namespace {
constexpr std::size_t largest = 8U << 20U; // a few hundred times the largest checklist
}

std::vector<unsigned char> packed(const std::string& text)
{
    // The smallest window that holds the text and small tables: a quarter of a megabyte taken and given back
    // with every round would cost as much as the rest of the work here.
    int windowBits = 9;
    while (windowBits < 15 && (std::size_t{1} << windowBits) < text.size())
        ++windowBits;
    constexpr int memoryLevel = 5;
    z_stream stream{};
    if (deflateInit2(&stream, Z_DEFAULT_COMPRESSION, Z_DEFLATED, windowBits, memoryLevel, Z_DEFAULT_STRATEGY)
        != Z_OK)
        throw std::bad_alloc();
    std::vector<unsigned char> bytes(deflateBound(&stream, static_cast<uLong>(text.size())));
    stream.next_in = reinterpret_cast<Bytef*>(const_cast<char*>(text.data())); // zlib only reads it
    stream.avail_in = static_cast<uInt>(text.size());
    stream.next_out = bytes.data();
    stream.avail_out = static_cast<uInt>(bytes.size());
    deflate(&stream, Z_FINISH); // the bound makes one call enough
    bytes.resize(stream.total_out);
    deflateEnd(&stream);
    return bytes;
}

std::optional<std::string> unpacked(std::span<const unsigned char> bytes)
{
    z_stream stream{};
    if (inflateInit(&stream) != Z_OK)
        return std::nullopt;
    stream.next_in = const_cast<Bytef*>(bytes.data()); // zlib only reads it
    stream.avail_in = static_cast<uInt>(bytes.size());
    std::string text;
    int step = Z_OK;
    while (step == Z_OK && text.size() < largest) {
        const std::size_t had = text.size();
        text.resize(had + 4096 + had);
        stream.next_out = reinterpret_cast<Bytef*>(text.data() + had);
        stream.avail_out = static_cast<uInt>(text.size() - had);
        step = inflate(&stream, Z_NO_FLUSH);
        text.resize(text.size() - stream.avail_out);
    }
    const bool whole = step == Z_STREAM_END && stream.avail_in == 0;
    inflateEnd(&stream);
    return whole ? std::optional(std::move(text)) : std::nullopt;
}

std::optional<std::string> unpackedExactly(std::span<const unsigned char> bytes)
{
    auto text = unpacked(bytes);
    if (!text)
        return std::nullopt;
    const auto again = packed(*text);
    return std::equal(again.begin(), again.end(), bytes.begin(), bytes.end()) ? text : std::nullopt;
}

}
