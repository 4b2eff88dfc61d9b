// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/clock.h"
#include "core/base/json.h"

#include <span>

namespace cradlepost {

/** A line that is canonical JSON (RFC 8785) to the letter. */
Result<Json> readCanonical(std::string_view line);

/** Reads an object that has exactly the members that are asked for; end() says whether it had. */
class Fields
{
public:
    explicit Fields(const Json& json)
        : m_json(json)
    {
    }
    void text(const char* name, std::string& out);
    void integer(const char* name, std::int64_t& out);
    /** UTC milliseconds, from 1970 to the end of year 9999. */
    void time(const char* name, Instant& out);
    void hex(const char* name, std::span<unsigned char> out);
    void array(const char* name, const Json::Array*& out);
    /** The member's value as it is. */
    void any(const char* name, const Json*& out);
    /** BadDocument, with the first member that does not hold; `what` names the object. */
    [[nodiscard]] Result<void> end(const char* what) const;

private:
    const Json* member(const char* name);
    void miss(const char* name);

    const Json& m_json;
    std::size_t m_asked = 0;
    std::string m_missed;
};

}
