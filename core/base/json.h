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

    std::variant<std::nullptr_t, bool, std::int64_t, double, std::string, Array, Object>
        value; ///< null at first
    int line = 0;

    // Defined where JsonMember is known: before that no Object can be made or dropped.
    Json() noexcept;
    Json(const Json& other);
    Json(Json&& other) noexcept;
    Json& operator=(const Json& other);
    Json& operator=(Json&& other) noexcept;
    ~Json();
    Json(bool v);
    Json(int v);
    Json(std::int64_t v);
    Json(double v);
    Json(const char* v);
    Json(std::string_view v);
    Json(std::string v);
    Json(Array v);
    Json(Object v);

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

inline Json::Json() noexcept = default;
inline Json::Json(const Json& other) = default;
inline Json::Json(Json&& other) noexcept = default;
inline Json& Json::operator=(const Json& other) = default;
inline Json& Json::operator=(Json&& other) noexcept = default;
inline Json::~Json() = default;

/**
 * Reads one JSON text (RFC 8259, UTF-8, within I-JSON of RFC 7493: no name twice in an object, no lone
 * surrogates). Nesting is limited to 64 levels. The error says line and column.
 */
Result<Json> parseJson(std::string_view text);

}
