// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/json.h"

namespace cradlepost {

/** The one text of a JSON value: RFC 8785 (names sorted by UTF-16 units, ECMAScript numbers, no white space). */
std::string canonicalText(const Json& value);

/** Whether a value may stand in a record: every number an integer within +-(2^53 - 1), no floating point. */
Result<void> checkBody(const Json& body);

}
