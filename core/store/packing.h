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

/**
 * The same, and nothing either when packed() would write other bytes: some bits of RFC 1951 mean nothing to the
 * reader (they fill up a byte, or name a code that is not used), and turning one must not go unseen.
 */
std::optional<std::string> unpackedExactly(std::span<const unsigned char> bytes);

}
