// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/json.h"

namespace cradlepost {

/**
 * The one text of a JSON value: RFC 8785 (names sorted by UTF-16 units, ECMAScript numbers, no white space).
 * Not-a-number and infinity, which no JSON text can hold, come out as null; checkBody refuses them anyway.
 */
std::string canonicalText(const Json& value);

/** Appends one string with its quotes, escaped as RFC 8785 section 3.2.2.2 says. */
void appendCanonical(std::string& out, std::string_view text);

/**
 * Whether a value may stand in a record: every number an integer within +-(2^53 - 1), no floating point,
 * every text sound UTF-8. The error names the member.
 */
Result<void> checkBody(const Json& body);

/** Whether these bytes are UTF-8 (RFC 3629: no surrogates, no overlong forms, nothing above U+10FFFF). */
bool isUtf8(std::string_view text);

}
