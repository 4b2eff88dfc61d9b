// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/json.h"

#include <optional>
#include <string>

namespace cradlepost::compute {

/** What a method answers: an object whose member names are documented per method and stay as they are. */
struct Report
{
    Json::Object body;
};

/** A figure that may not exist: null then. */
inline Json maybe(const std::optional<double>& value) { return value ? Json(*value) : Json(); }
inline Json whole(std::size_t value) { return Json(static_cast<std::int64_t>(value)); }
/** A row position from 0 as users count it: from 1, the header not counted. */
inline Json rowNumber(std::size_t row) { return whole(row + 1); }

/** One line of JSON (RFC 8259); numbers in the shortest form that reads back as the same number. */
std::string toJsonLine(const Report& report);

/** The same for eyes: one "name: value" a line, lists of objects as tables. Numbers in the same full
 * precision. */
std::string toPlainText(const Report& report);

}
