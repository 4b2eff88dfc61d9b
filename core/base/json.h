// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace cradlepost {

struct JsonMember;

/** A JSON value that knows the line it was read from (0 when it was made here). */
struct Json
{
    using Array = std::vector<Json>;
    using Object = std::vector<JsonMember>; ///< in the order of the text, no name twice

    std::variant<std::nullptr_t, bool, std::int64_t, double, std::string, Array, Object> value = nullptr;
    int line = 0;

    Json() = default;
    Json(bool v) : value(v) { }
    Json(int v) : value(std::int64_t {v}) { }
    Json(std::int64_t v) : value(v) { }
    Json(double v) : value(v) { }
    Json(const char* v) : value(std::string(v)) { }
    Json(std::string_view v) : value(std::string(v)) { }
    Json(std::string v) : value(std::move(v)) { }
    Json(Array v) : value(std::move(v)) { }
    Json(Object v) : value(std::move(v)) { }

    [[nodiscard]] bool isNull() const { return std::holds_alternative<std::nullptr_t>(value); }
    [[nodiscard]] const bool* asBool() const { return std::get_if<bool>(&value); }
    [[nodiscard]] const std::int64_t* asInteger() const { return std::get_if<std::int64_t>(&value); }
    [[nodiscard]] const std::string* asString() const { return std::get_if<std::string>(&value); }
    [[nodiscard]] const Array* asArray() const { return std::get_if<Array>(&value); }
    [[nodiscard]] const Object* asObject() const { return std::get_if<Object>(&value); }
    /** The member of that name, or nullptr when there is none or this is no object. */
    [[nodiscard]] const Json* find(std::string_view name) const;
    [[nodiscard]] const std::string* findString(std::string_view name) const;
    [[nodiscard]] const std::int64_t* findInteger(std::string_view name) const;
};

struct JsonMember
{
    std::string name;
    Json value;
};

/**
 * Reads one JSON text (RFC 8259, UTF-8, within I-JSON of RFC 7493: no name twice in an object, no lone
 * surrogates). Nesting is limited to 64 levels. The error says line and column.
 */
Result<Json> parseJson(std::string_view text);

}
