// SPDX-License-Identifier: MIT
#include "core/store/packing.h"

#include <cstdint>
#include <new>
#include <zlib.h>

namespace cradlepost {

namespace {
constexpr std::size_t largest = 8U << 20U; // a few hundred times the largest checklist
constexpr std::size_t sumBytes = 4;

std::uint32_t sumOf(std::span<const unsigned char> bytes)
{
    return static_cast<std::uint32_t>(crc32(0, bytes.data(), static_cast<uInt>(bytes.size())));
}
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
    const std::uint32_t sum = sumOf(bytes);
    for (const int shift : {24, 16, 8, 0})
        bytes.push_back(static_cast<unsigned char>(sum >> shift));
    return bytes;
}

std::optional<std::string> unpacked(std::span<const unsigned char> bytes)
{
    if (bytes.size() < sumBytes)
        return std::nullopt;
    std::uint32_t sum = 0;
    for (const unsigned char byte : bytes.last(sumBytes))
        sum = sum << 8 | byte;
    bytes = bytes.first(bytes.size() - sumBytes);
    if (sumOf(bytes) != sum)
        return std::nullopt;
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

}
