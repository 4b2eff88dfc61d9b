// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string_view>

namespace cradlepost {

/** Code points of a UTF-8 text, not bytes: a letter of Devanagari takes three. */
std::size_t countCharacters(std::string_view utf8);

/** Whether the text stands on one line: no control character in it, no blank before or after it. */
bool isOneLine(std::string_view utf8);

}
