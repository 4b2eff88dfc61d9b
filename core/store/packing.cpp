// SPDX-License-Identifier: MIT
#include "core/store/packing.h"

#include <zlib.h>

namespace cradlepost {

namespace {
constexpr std::size_t largest = 8U << 20U; // a few hundred times the largest checklist
}

std::vector<unsigned char> packed(const std::string& text)
{
    uLongf size = compressBound(static_cast<uLong>(text.size()));
    std::vector<unsigned char> bytes(size);
    compress2(bytes.data(), &size, reinterpret_cast<const Bytef*>(text.data()),
        static_cast<uLong>(text.size()), Z_BEST_COMPRESSION);
    bytes.resize(size);
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

}
