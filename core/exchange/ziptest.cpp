// SPDX-License-Identifier: MIT
#include "core/exchange/ziptest.h"

#include <cstdint>
#include <fstream>
#include <iterator>
#include <optional>
#include <string_view>
#include <zlib.h>

namespace cradlepost {

namespace {

/** Little-endian; 0 behind the end. Layout: APPNOTE.TXT, the ZIP file format specification, 4.3.7 to 4.3.16.
 */
std::size_t numberAt(std::string_view bytes, std::size_t at, std::size_t length)
{
    std::size_t number = 0;
    for (std::size_t i = length; i > 0 && at + length <= bytes.size(); --i)
        number = number << 8U | static_cast<unsigned char>(bytes[at + i - 1]);
    return number;
}

std::optional<std::string> unpacked(std::string_view packed, std::size_t size)
{
    std::string out(size, '\0');
    z_stream stream{};
    if (inflateInit2(&stream, -MAX_WBITS) != Z_OK)
        return std::nullopt;
    stream.next_in = reinterpret_cast<Bytef*>(const_cast<char*>(packed.data())); // zlib does not write there
    stream.avail_in = static_cast<uInt>(packed.size());
    stream.next_out = reinterpret_cast<Bytef*>(out.data());
    stream.avail_out = static_cast<uInt>(size);
    const int state = inflate(&stream, Z_FINISH);
    const bool whole = state == Z_STREAM_END && stream.total_out == size;
    inflateEnd(&stream);
    if (!whole)
        return std::nullopt;
    return out;
}

bool closesItsRoot(std::string_view xml)
{
    const auto declared = xml.find("?>");
    const auto root = xml.find('<', declared == std::string_view::npos ? 0 : declared);
    const auto last = xml.find_last_not_of(" \r\n\t");
    if (root == std::string_view::npos || last == std::string_view::npos)
        return false;
    const std::string name(xml.substr(root + 1, xml.find_first_of(" />\n", root) - root - 1));
    const std::string_view text = xml.substr(0, last + 1);
    return text.ends_with("</" + name + '>') || (text.ends_with("/>") && text.rfind('<') == root);
}

/** One entry of the central directory; moves `at` to the next. */
bool isWholePart(std::string_view zip, std::size_t& at)
{
    if (numberAt(zip, at, 4) != 0x02014b50)
        return false;
    const std::size_t nameLength = numberAt(zip, at + 28, 2);
    const std::size_t packedSize = numberAt(zip, at + 20, 4);
    const std::size_t size = numberAt(zip, at + 24, 4);
    const std::size_t local = numberAt(zip, at + 42, 4);
    const bool isDeflated = numberAt(zip, at + 10, 2) == 8;
    at += 46 + nameLength + numberAt(zip, at + 30, 2) + numberAt(zip, at + 32, 2);
    const std::size_t data = local + 30 + numberAt(zip, local + 26, 2) + numberAt(zip, local + 28, 2);
    if (numberAt(zip, local, 4) != 0x04034b50 || data + packedSize > zip.size())
        return false;
    const std::string_view packed = zip.substr(data, packedSize);
    const auto xml = isDeflated ? unpacked(packed, size) : std::string(packed);
    return xml && closesItsRoot(*xml);
}

}

bool hasWholeParts(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    const std::string zip{std::istreambuf_iterator<char>(file), {}};
    const auto end = zip.rfind("PK\x05\x06");
    if (end == std::string::npos)
        return false;
    std::size_t at = numberAt(zip, end + 16, 4);
    const std::size_t count = numberAt(zip, end + 10, 2);
    for (std::size_t i = 0; i < count; ++i) {
        if (!isWholePart(zip, at))
            return false;
    }
    return count > 0;
}

}
