// SPDX-License-Identifier: MIT
#include "core/supply/bodyreader.h"

#include "core/base/characters.h"
#include "core/checklist/objectreader.h"

#include <algorithm>

namespace cradlepost {

namespace {
constexpr std::int64_t lastMoment = 253'402'300'799'999; // the end of the year 9999

/** Within I-JSON and free of control characters; not blank. */
bool isPlain(const std::string& text)
{
    const bool control = std::any_of(text.begin(), text.end(),
        [](char c) { return static_cast<unsigned char>(c) < 0x20 || static_cast<unsigned char>(c) == 0x7F; });
    return !control && text.find_first_not_of(' ') != std::string::npos;
}
}

bool isPlainText(const std::string& text, std::size_t most)
{
    return isPlain(text) && countCharacters(text) <= most;
}

BodyReader::BodyReader(const Json& body, std::string name)
    : m_body(body)
    , m_name(std::move(name))
{
    if (body.asObject() == nullptr)
        fault("body", "is no object");
}

const Json* BodyReader::take(std::string_view member)
{
    m_taken.insert(std::string(member));
    const Json* value = m_body.find(member);
    if (value == nullptr)
        fault(std::string(member), "is missing");
    return value;
}

std::string BodyReader::word(std::string_view member)
{
    const Json* value = take(member);
    const std::string* text = value != nullptr ? value->asString() : nullptr;
    return text != nullptr ? *text : std::string();
}

std::string BodyReader::id(std::string_view member)
{
    std::string found = word(member);
    if (!isId(found))
        fault(std::string(member), "is no id of 1 to 40 letters a-z, digits and hyphens");
    return found;
}

std::string BodyReader::text(std::string_view member, std::size_t most)
{
    std::string found = word(member);
    if (!isPlainText(found, most))
        fault(std::string(member), "is no text of 1 to " + std::to_string(most) + " characters");
    return found;
}

std::int64_t BodyReader::integer(std::string_view member, std::int64_t low, std::int64_t high)
{
    const Json* value = take(member);
    const std::int64_t* n = value != nullptr ? value->asInteger() : nullptr;
    if (n != nullptr && *n >= low && *n <= high)
        return *n;
    fault(std::string(member),
        "is no whole number from " + std::to_string(low) + " to " + std::to_string(high));
    return low;
}

Instant BodyReader::moment(std::string_view member) { return fromMs(integer(member, 0, lastMoment)); }

Date BodyReader::day(std::string_view member)
{
    const auto found = dateFromIso(word(member));
    if (!found)
        fault(std::string(member), "is no day");
    return found.value_or(Date());
}

Decimal BodyReader::decimal(std::string_view member, Decimal low, Decimal high)
{
    const std::string text = word(member);
    const auto found = Decimal::parse(text);
    if (!found || found->toString() != text || *found < low || *found > high) {
        fault(std::string(member), "is no number from " + low.toString() + " to " + high.toString());
        return low;
    }
    return *found;
}

bool BodyReader::flag(std::string_view member)
{
    if (!has(member))
        return false;
    const bool* set = take(member)->asBool();
    if (set == nullptr || !*set)
        fault(std::string(member), "is a flag: true, or left out");
    return true;
}

std::vector<std::string> BodyReader::ids(std::string_view member, std::size_t most)
{
    std::vector<std::string> found;
    if (!has(member))
        return found;
    const Json::Array* values = take(member)->asArray();
    if (values == nullptr || values->empty() || values->size() > most) {
        fault(std::string(member), "is no list of 1 to " + std::to_string(most) + " ids");
        return found;
    }
    for (const Json& value : *values) {
        const std::string* one = value.asString();
        if (one == nullptr || !isId(*one) || (!found.empty() && *one <= found.back())) {
            fault(std::string(member), "is no list of ids in rising order");
            return {};
        }
        found.push_back(*one);
    }
    return found;
}

const Json::Array& BodyReader::list(std::string_view member, std::size_t most)
{
    static const Json::Array none;
    if (!has(member))
        return none;
    const Json::Array* values = take(member)->asArray();
    if (values != nullptr && !values->empty() && values->size() <= most)
        return *values;
    fault(std::string(member), "is no list of 1 to " + std::to_string(most) + " parts");
    return none;
}

const Json& BodyReader::part(std::string_view member)
{
    static const Json none;
    const Json* value = take(member);
    return value != nullptr ? *value : none;
}

void BodyReader::fault(const std::string& member, const std::string& what)
{
    if (!m_fault)
        m_fault = Error{
            .code = ErrorCode::BadDocument, .message = m_name + ": '" + member + "' " + what, .hint = {}};
}

void BodyReader::adopt(const Result<void>& inner)
{
    if (!inner && !m_fault)
        m_fault = inner.error();
}

Result<void> BodyReader::finish() const
{
    if (m_fault)
        return tl::unexpected(*m_fault);
    for (const JsonMember& member : *m_body.asObject()) {
        if (!m_taken.contains(member.name))
            return fail(ErrorCode::NewerSchema,
                m_name + ": a later version of this program wrote it; this one does not know its member '"
                    + member.name + "'",
                "Install the version of the station that wrote it, or a later one.");
    }
    return {};
}

}
