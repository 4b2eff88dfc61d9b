// SPDX-License-Identifier: MIT
#include "core/checklist/objectreader.h"

#include <algorithm>
#include <limits>

namespace cradlepost {

namespace {

constexpr std::size_t maxIdLength = 40;
constexpr std::size_t maxTextBytes = 1000;
constexpr std::int64_t maxWhole = 999'999'999'999;
constexpr std::int64_t thousand = 1000;

std::string quoted(std::string_view text) { return "'" + std::string(text) + "'"; }

/** What is wrong with a text that people shall read, or nothing. */
std::string textFault(const std::string& text)
{
    if (text.find_first_not_of(' ') == std::string::npos)
        return "must not be empty";
    if (text.size() > maxTextBytes)
        return "is longer than " + std::to_string(maxTextBytes) + " bytes";
    const auto isControl = [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7F; };
    if (std::any_of(text.begin(), text.end(), isControl))
        return "has a control character";
    return {};
}

}

bool isId(std::string_view text)
{
    const auto allowed = [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-'; };
    return !text.empty() && text.size() <= maxIdLength && std::all_of(text.begin(), text.end(), allowed);
}

void FirstFault::report(int line, const std::string& what)
{
    if (m_error)
        return;
    std::string place = line > 0 ? "line " + std::to_string(line) : "";
    for (const std::string& part : {section, item}) {
        if (!part.empty())
            place += (place.empty() ? "" : ", ") + part;
    }
    for (const std::string& part : {rule, what}) {
        if (!part.empty())
            place += (place.empty() ? "" : ": ") + part;
    }
    m_error = Error{.code = ErrorCode::BadDocument, .message = std::move(place), .hint = {}};
}

ObjectReader::ObjectReader(const Json& value, std::string name, std::initializer_list<std::string_view> known,
    ReadingContext& context)
    : m_value(value)
    , m_name(std::move(name))
    , m_context(context)
{
    if (value.asObject() == nullptr)
        m_context.fault.report(value.line, m_name + (m_name.empty() ? "" : ": ") + "must be an object");
    else
        refuseUnknown(known);
}

void ObjectReader::refuseUnknown(std::initializer_list<std::string_view> known)
{
    for (const JsonMember& member : *m_value.asObject()) {
        if (std::find(known.begin(), known.end(), member.name) == known.end())
            fault(member.name, "is not a known member");
    }
}

std::string ObjectReader::inside(std::string_view member) const
{
    return (m_name.empty() ? "" : m_name + ": ") + quoted(member);
}

void ObjectReader::fault(std::string_view member, const std::string& what)
{
    const Json* value = m_value.find(member);
    m_context.fault.report(value == nullptr ? m_value.line : value->line, inside(member) + " " + what);
}

const Json* ObjectReader::need(std::string_view member)
{
    const Json* value = m_value.find(member);
    if (value == nullptr)
        fault(member, "is missing");
    return value;
}

std::string ObjectReader::text(std::string_view member)
{
    const Json* value = need(member);
    if (value == nullptr)
        return {};
    const std::string* text = value->asString();
    if (text == nullptr) {
        fault(member, "must be a text");
        return {};
    }
    if (const std::string wrong = textFault(*text); !wrong.empty())
        fault(member, wrong);
    return *text;
}

std::string ObjectReader::id(std::string_view member)
{
    std::string id = text(member);
    if (!isId(id))
        fault(member, "must be 1 to 40 of a-z, 0-9 and '-'");
    return id;
}

Wording ObjectReader::wording(std::string_view member)
{
    const Json* value = need(member);
    if (value == nullptr)
        return {};
    if (value->asObject() == nullptr) {
        fault(member, "must be an object of language and text");
        return {};
    }
    checkLanguages(*value, member);
    std::map<std::string, std::string> texts;
    for (const JsonMember& entry : *value->asObject()) {
        const std::string* text = entry.value.asString();
        const std::string wrong = text == nullptr ? "must be a text" : textFault(*text);
        if (!wrong.empty()) {
            m_context.fault.report(
                entry.value.line, inside(member) + ": language " + quoted(entry.name) + " " + wrong);
            return {};
        }
        texts.emplace(entry.name, *text);
    }
    return Wording(std::move(texts));
}

void ObjectReader::checkLanguages(const Json& wording, std::string_view member)
{
    for (const JsonMember& entry : *wording.asObject()) {
        if (!m_context.languages.contains(entry.name)) {
            m_context.fault.report(entry.value.line,
                inside(member) + ": language " + quoted(entry.name) + " is not one of 'languages'");
        }
    }
    for (const std::string& language : m_context.languages) {
        if (wording.find(language) == nullptr)
            fault(member, "has no wording in language " + quoted(language));
    }
}

bool ObjectReader::boolean(std::string_view member)
{
    const Json* value = need(member);
    if (value == nullptr)
        return false;
    if (value->asBool() == nullptr) {
        fault(member, "must be true or false");
        return false;
    }
    return *value->asBool();
}

int ObjectReader::integer(std::string_view member, int low, int high)
{
    const Json* value = need(member);
    if (value == nullptr)
        return low;
    const std::int64_t* number = value->asInteger();
    if (number == nullptr) {
        fault(member, "must be a whole number");
        return low;
    }
    if (*number < low || *number > high) {
        fault(member,
            "is " + std::to_string(*number) + ", must be " + std::to_string(low) + " to "
                + std::to_string(high));
        return low;
    }
    return static_cast<int>(*number);
}

Decimal ObjectReader::decimal(std::string_view member)
{
    const Json* value = need(member);
    if (value == nullptr)
        return {};
    if (const std::int64_t* whole = value->asInteger()) {
        if (*whole >= -maxWhole && *whole <= maxWhole)
            return Decimal{*whole * thousand};
    } else if (const std::string* text = value->asString()) {
        // The comma is for people at the keyboard; a document has one form only.
        const auto number = Decimal::parse(*text);
        if (number && text->find(',') == std::string::npos)
            return *number;
    }
    fault(member, "must be a whole number or a decimal text such as \"26.5\"");
    return {};
}

const Json::Array& ObjectReader::array(std::string_view member, std::size_t low, std::size_t high)
{
    static const Json::Array nothing;
    const Json* value = need(member);
    if (value == nullptr)
        return nothing;
    const Json::Array* list = value->asArray();
    if (list == nullptr) {
        fault(member, "must be a list");
        return nothing;
    }
    if (list->empty())
        fault(member, "must not be empty");
    if (list->size() < low || list->size() > high) {
        fault(member,
            "has " + std::to_string(list->size()) + ", must have " + std::to_string(low) + " to "
                + std::to_string(high));
        return nothing;
    }
    return *list;
}

const Json& ObjectReader::object(std::string_view member)
{
    static const Json nothing{Json::Object{}};
    const Json* value = need(member);
    return value == nullptr ? nothing : *value;
}

}
