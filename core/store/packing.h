// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace cradlepost {

/** The text compressed (zlib, RFC 1950: a round to about a third), then the CRC-32 of those bytes, high byte
 * first. */
std::vector<unsigned char> packed(const std::string& text);
/**
 * The text again; nothing when the bytes are not such a text to the last bit, or one above 8 MiB. The CRC-32
 * is there because some bits of a compressed text mean nothing to its reader, and turning one must not go
 * unseen. It does not matter which library wrote it.
 */
std::optional<std::string> unpacked(std::span<const unsigned char> bytes);

}
