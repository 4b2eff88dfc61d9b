// SPDX-License-Identifier: MIT
#include "core/base/characters.h"

#include <algorithm>

namespace cradlepost {

std::size_t countCharacters(std::string_view utf8)
{
    return static_cast<std::size_t>(std::count_if(
        utf8.begin(), utf8.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

bool isOneLine(std::string_view utf8)
{
    const auto isControl = [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7F; };
    return std::none_of(utf8.begin(), utf8.end(), isControl)
        && (utf8.empty() || (utf8.front() != ' ' && utf8.back() != ' '));
}

}
