// SPDX-License-Identifier: MIT
#include "core/store/packing.h"

#include <algorithm>
#include <cstdint>
#include <libdeflate.h>
#include <memory>
#include <new>

namespace cradlepost {

namespace {
constexpr std::size_t largest = 8U << 20U; // a few hundred times the largest checklist
constexpr std::size_t sumBytes = 4;

// Reused: making one takes longer than a round takes to pack.
struct WorkerEnd
{
    void operator()(libdeflate_compressor* one) const { libdeflate_free_compressor(one); }
    void operator()(libdeflate_decompressor* one) const { libdeflate_free_decompressor(one); }
};

libdeflate_compressor* compressor()
{
    constexpr int level = 1; // a third of the usual level's time for four bytes more in a hundred
    static thread_local const std::unique_ptr<libdeflate_compressor, WorkerEnd> one(libdeflate_alloc_compressor(level));
    if (one == nullptr)
        throw std::bad_alloc();
    return one.get();
}

libdeflate_decompressor* decompressor()
{
    static thread_local const std::unique_ptr<libdeflate_decompressor, WorkerEnd> one(libdeflate_alloc_decompressor());
    if (one == nullptr)
        throw std::bad_alloc();
    return one.get();
}

std::uint32_t sumOf(std::span<const unsigned char> bytes)
{
    return libdeflate_crc32(0, bytes.data(), bytes.size());
}
}

std::vector<unsigned char> packed(const std::string& text)
{
    std::vector<unsigned char> bytes(libdeflate_zlib_compress_bound(compressor(), text.size()));
    bytes.resize(libdeflate_zlib_compress(compressor(), text.data(), text.size(), bytes.data(), bytes.size()));
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
    std::string text;
    for (std::size_t room = std::min(largest, 4096 + 4 * bytes.size());; room = std::min(largest, 2 * room)) {
        text.resize(room);
        std::size_t taken = 0;
        std::size_t written = 0;
        const auto end = libdeflate_zlib_decompress_ex(
            decompressor(), bytes.data(), bytes.size(), text.data(), text.size(), &taken, &written);
        if (end == LIBDEFLATE_INSUFFICIENT_SPACE && room < largest)
            continue;
        if (end != LIBDEFLATE_SUCCESS || taken != bytes.size())
            return std::nullopt;
        text.resize(written);
        return text;
    }
}

}
