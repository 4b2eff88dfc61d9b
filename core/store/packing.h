// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace cradlepost {

/** The text compressed (zlib, RFC 1950): a round to about a third. */
std::vector<unsigned char> packed(const std::string& text);
/** The text again; nothing when the bytes are not such a text, or one above 8 MiB. */
std::optional<std::string> unpacked(std::span<const unsigned char> bytes);

}
