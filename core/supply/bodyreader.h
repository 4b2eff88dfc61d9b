// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/calendar.h"
#include "core/base/decimal.h"
#include "core/base/json.h"

#include <set>
#include <vector>

namespace cradlepost {

/** 1 to `most` characters, no control characters, not blank: what BodyReader::text takes. */
bool isPlainText(const std::string& text, std::size_t most);

/**
 * Reads the members of one record body strictly. A member that is absent, of the wrong type, out of range or
 * written in another form than this program writes is a fault; the call then gives an empty value, which the
 * caller may carry on with, since `finish` refuses the body as a whole.
 */
class BodyReader
{
public:
    /** `name` is how messages call the body: "stock record". `body` must outlive the reader. */
    BodyReader(const Json& body, std::string name);

    [[nodiscard]] bool has(std::string_view member) const { return m_body.find(member) != nullptr; }
    /** [a-z0-9-]{1,40} */
    std::string id(std::string_view member);
    /** 1 to `most` characters, no control characters, not blank. */
    std::string text(std::string_view member, std::size_t most);
    std::int64_t integer(std::string_view member, std::int64_t low, std::int64_t high);
    /** Milliseconds of UTC between the years 1970 and 9999. */
    Instant moment(std::string_view member);
    Date day(std::string_view member);
    Decimal decimal(std::string_view member, Decimal low, Decimal high);
    /** A flag is written as true and left out when it is not set. */
    bool flag(std::string_view member);
    /** A list of ids, strictly rising, 1 to `most` of them; none when the member is absent. */
    std::vector<std::string> ids(std::string_view member, std::size_t most);
    /** 1 to `most` objects; none when the member is absent. */
    const Json::Array& list(std::string_view member, std::size_t most);
    /** The member itself, or null: for a part that has a reader of its own. */
    const Json& part(std::string_view member);
    /** One of the codes that `read` knows. */
    template <class Read> auto code(std::string_view member, Read read)
    {
        const auto found = read(word(member));
        if (!found)
            fault(std::string(member), "is not a known word");
        return found.value_or(typename decltype(found)::value_type{});
    }

    /** Keeps the first fault only. */
    void fault(const std::string& member, const std::string& what);
    /** Takes over the fault of a part, if it has one. */
    void adopt(const Result<void>& inner);
    /**
     * The first fault; else NewerSchema when the body has a member that nobody asked for: what it says is not
     * dropped in silence.
     */
    [[nodiscard]] Result<void> finish() const;

private:
    const Json* take(std::string_view member);
    std::string word(std::string_view member);

    const Json& m_body;
    std::string m_name;
    std::set<std::string, std::less<>> m_taken;
    std::optional<Error> m_fault;
};

}
