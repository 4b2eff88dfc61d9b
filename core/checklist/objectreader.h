// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/json.h"
#include "core/checklist/checklist.h"

#include <initializer_list>
#include <set>

namespace cradlepost {

/** The first fault of a document, with the place the reading had reached. Later faults are ignored. */
class FirstFault
{
public:
    std::string section; ///< as it is printed, "section 'room'", empty outside of one
    std::string item; ///< "item 'towels'", empty outside of one
    std::string rule; ///< "measure", empty outside of one

    /** Keeps "line N, section 'a', item 'b': rule: what" unless there is a fault already. */
    void report(int line, const std::string& what);
    [[nodiscard]] bool found() const { return m_error.has_value(); }
    [[nodiscard]] const Error& error() const { return *m_error; }

private:
    std::optional<Error> m_error;
};

/** What every object of one document is read with. */
struct ReadingContext
{
    FirstFault fault;
    std::set<std::string> languages; ///< every wording has exactly these
};

/**
 * Reads the members of one JSON object strictly. A member that is absent, unknown, of the wrong type or out
 * of range is reported; the call then gives an empty value, which the caller may carry on with, since a
 * document with a fault is refused as a whole.
 */
class ObjectReader
{
public:
    /** `name` is how messages call this object; members beside `known` are faults. */
    ObjectReader(const Json& value, std::string name, std::initializer_list<std::string_view> known,
        ReadingContext& context);

    [[nodiscard]] bool has(std::string_view member) const { return m_value.find(member) != nullptr; }
    /** A text that is not blank and has no control characters, at most 1000 bytes. */
    std::string text(std::string_view member);
    /** [a-z0-9-]{1,40} */
    std::string id(std::string_view member);
    Wording wording(std::string_view member);
    bool boolean(std::string_view member);
    int integer(std::string_view member, int low, int high);
    /** An integer or a decimal string such as "26.5". */
    Decimal decimal(std::string_view member);
    /** The elements, or an empty list when their number is not within low..high. */
    const Json::Array& array(std::string_view member, std::size_t low, std::size_t high);
    /** The member's value, or an empty object. */
    const Json& object(std::string_view member);

    /** Reports a fault at a member's line, or at the object's when the member is absent. */
    void fault(std::string_view member, const std::string& what);

private:
    const Json* need(std::string_view member);
    void refuseUnknown(std::initializer_list<std::string_view> known);
    void checkLanguages(const Json& wording, std::string_view member);
    [[nodiscard]] std::string inside(std::string_view member) const;

    const Json& m_value;
    std::string m_name;
    ReadingContext& m_context;
};

/** True when a text is an id: [a-z0-9-]{1,40}. */
bool isId(std::string_view text);

}
