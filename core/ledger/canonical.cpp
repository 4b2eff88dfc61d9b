// SPDX-License-Identifier: MIT
#include "core/ledger/canonical.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace cradlepost {

namespace {

constexpr std::int64_t largestExact = (std::int64_t{1} << 53) - 1;

/** UTF-8 bytes in the order of UTF-16 units: surrogates (lead bytes F0 to F4) stand before U+E000 to U+FFFF.
 */
bool sortsBefore(std::string_view a, std::string_view b)
{
    const auto weight = [](char c) {
        const auto byte = static_cast<unsigned char>(c);
        return byte == 0xEE || byte == 0xEF ? byte + 0x10 : byte;
    };
    return std::lexicographical_compare(
        a.begin(), a.end(), b.begin(), b.end(), [&](char x, char y) { return weight(x) < weight(y); });
}

/** ECMAScript's Number::toString for a finite number above zero, from its shortest digits. */
void appendPositive(std::string& out, double value)
{
    char text[32];
    const auto end = std::to_chars(text, text + sizeof text, value, std::chars_format::scientific).ptr;
    const auto mark = std::find(text, end, 'e');
    std::string digits(1, text[0]);
    if (mark - text > 2)
        digits.append(text + 2, mark);
    int exponent = 0;
    const char* exponentText = mark + 1;
    std::from_chars(*exponentText == '+' ? exponentText + 1 : exponentText, end, exponent);

    const int count = static_cast<int>(digits.size());
    const int point = exponent + 1; // digits before the decimal point
    if (count <= point && point <= 21) {
        out += digits;
        out.append(static_cast<std::size_t>(point - count), '0');
    } else if (0 < point && point <= 21) {
        out += digits.substr(0, static_cast<std::size_t>(point)) + '.'
            + digits.substr(static_cast<std::size_t>(point));
    } else if (-6 < point && point <= 0) {
        out += "0." + std::string(static_cast<std::size_t>(-point), '0') + digits;
    } else {
        out += digits[0];
        if (count > 1)
            out += '.' + digits.substr(1);
        out += exponent < 0 ? "e-" : "e+";
        out += std::to_string(std::abs(exponent));
    }
}

void appendNumber(std::string& out, double value)
{
    if (!std::isfinite(value)) {
        out += "null";
    } else if (value == 0.0) {
        out += '0'; // minus zero too
    } else {
        if (value < 0)
            out += '-';
        appendPositive(out, std::abs(value));
    }
}

void append(std::string& out, const Json& json);

void appendArray(std::string& out, const Json::Array& array)
{
    out += '[';
    for (std::size_t i = 0; i < array.size(); ++i) {
        if (i > 0)
            out += ',';
        append(out, array[i]);
    }
    out += ']';
}

void appendMember(std::string& out, const JsonMember& member)
{
    if (out.back() != '{')
        out += ',';
    appendCanonical(out, member.name);
    out += ':';
    append(out, member.value);
}

void appendObject(std::string& out, const Json::Object& object)
{
    const auto comesBefore = [](const JsonMember& a, const JsonMember& b) { return sortsBefore(a.name, b.name); };
    out += '{';
    if (std::is_sorted(object.begin(), object.end(), comesBefore)) { // as in whatever was canonical before
        for (const JsonMember& member : object)
            appendMember(out, member);
    } else {
        std::vector<const JsonMember*> members;
        members.reserve(object.size());
        for (const JsonMember& member : object)
            members.push_back(&member);
        std::sort(members.begin(), members.end(),
            [&](const JsonMember* a, const JsonMember* b) { return comesBefore(*a, *b); });
        for (const JsonMember* member : members)
            appendMember(out, *member);
    }
    out += '}';
}

void append(std::string& out, const Json& json)
{
    if (const auto* text = json.asString())
        appendCanonical(out, *text);
    else if (const auto* integer = json.asInteger())
        if (std::abs(static_cast<double>(*integer)) <= static_cast<double>(largestExact))
            out += std::to_string(*integer);
        else
            appendNumber(out, static_cast<double>(*integer)); // RFC 8785 knows doubles only
    else if (const auto* real = std::get_if<double>(&json.value))
        appendNumber(out, *real);
    else if (const auto* flag = json.asBool())
        out += *flag ? "true" : "false";
    else if (const auto* array = json.asArray())
        appendArray(out, *array);
    else if (const auto* object = json.asObject())
        appendObject(out, *object);
    else
        out += "null";
}

/** What is wrong, nullptr when nothing is. The path to it grows on the way out: a sound body costs nothing for it. */
const char* faultOf(const Json& json, std::string& path);

const char* faultIn(const Json::Array& array, std::string& path)
{
    for (std::size_t i = 0; i < array.size(); ++i)
        if (const char* why = faultOf(array[i], path)) {
            path.insert(0, '[' + std::to_string(i) + ']');
            return why;
        }
    return nullptr;
}

const char* faultIn(const Json::Object& object, std::string& path)
{
    for (const JsonMember& member : object) {
        if (!isUtf8(member.name))
            return "a name is not UTF-8";
        if (const char* why = faultOf(member.value, path)) {
            path.insert(0, '.' + member.name);
            return why;
        }
    }
    return nullptr;
}

const char* faultOf(const Json& json, std::string& path)
{
    if (const auto* text = json.asString())
        return isUtf8(*text) ? nullptr : "the text is not UTF-8";
    if (const auto* integer = json.asInteger())
        return -largestExact <= *integer && *integer <= largestExact ? nullptr
            : "an integer beyond 2^53 - 1 is not exact in every reader";
    if (const auto* array = json.asArray())
        return faultIn(*array, path);
    if (const auto* object = json.asObject())
        return faultIn(*object, path);
    return std::holds_alternative<double>(json.value)
        ? "a record holds integers and decimal strings, no floating point"
        : nullptr;
}

/** Length of the UTF-8 sequence at the start of `text`, 0 when it is none. */
std::size_t sequenceLength(std::string_view text)
{
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char lead = byte(0);
    if (lead < 0x80)
        return 1;
    const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
    if (lead < 0xC2 || lead > 0xF4 || text.size() < length)
        return 0;
    for (std::size_t i = 1; i < length; ++i)
        if ((byte(i) & 0xC0) != 0x80)
            return 0;
    const unsigned char second = byte(1);
    const bool overlong = (lead == 0xE0 && second < 0xA0) || (lead == 0xF0 && second < 0x90);
    const bool outside = (lead == 0xED && second > 0x9F) || (lead == 0xF4 && second > 0x8F);
    return overlong || outside ? 0 : length;
}

}

void appendCanonical(std::string& out, std::string_view text)
{
    static constexpr char hex[] = "0123456789abcdef";
    const auto isPlain = [](char c) { return static_cast<unsigned char>(c) >= 0x20 && c != '"' && c != '\\'; };
    out += '"';
    while (!text.empty()) {
        const auto plain = static_cast<std::size_t>(std::find_if_not(text.begin(), text.end(), isPlain) - text.begin());
        out += text.substr(0, plain);
        if (plain == text.size())
            break;
        const char c = text[plain];
        text.remove_prefix(plain + 1);
        switch (c) {
        case '"':
            out += "\\\"";
            break;
        case '\\':
            out += "\\\\";
            break;
        case '\b':
            out += "\\b";
            break;
        case '\t':
            out += "\\t";
            break;
        case '\n':
            out += "\\n";
            break;
        case '\f':
            out += "\\f";
            break;
        case '\r':
            out += "\\r";
            break;
        default:
            out += {'\\', 'u', '0', '0', hex[c >> 4], hex[c & 0xF]};
        }
    }
    out += '"';
}

std::string canonicalText(const Json& value)
{
    std::string out;
    append(out, value);
    return out;
}

Result<void> checkBody(const Json& body)
{
    std::string path;
    if (const char* why = faultOf(body, path))
        return fail(ErrorCode::InvalidArgument, "body" + path + ": " + why);
    return {};
}

bool isUtf8(std::string_view text)
{
    // Nearly all of a record's texts are ASCII.
    text.remove_prefix(static_cast<std::size_t>(
        std::find_if(text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0x80) != 0; })
        - text.begin()));
    while (!text.empty()) {
        const std::size_t length = sequenceLength(text);
        if (length == 0)
            return false;
        text.remove_prefix(length);
    }
    return true;
}

}
