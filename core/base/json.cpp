// SPDX-License-Identifier: MIT
#include "core/base/json.h"

#include <algorithm>
#include <limits>
#include <rapidjson/error/en.h>
#include <rapidjson/reader.h>

namespace cradlepost {

namespace {

constexpr std::size_t maxDepth = 64;

/** Counts lines as the reader goes, so that every value knows where it stood. */
class LineStream
{
public:
    using Ch = char;
    explicit LineStream(std::string_view text)
        : m_text(text)
    {
    }
    [[nodiscard]] Ch Peek() const { return m_at < m_text.size() ? m_text[m_at] : '\0'; }
    Ch Take()
    {
        if (m_at >= m_text.size())
            return '\0';
        if (m_text[m_at] == '\n') {
            ++m_line;
            m_lineStart = m_at + 1;
        }
        return m_text[m_at++];
    }
    [[nodiscard]] std::size_t Tell() const { return m_at; }
    [[nodiscard]] int line() const { return m_line; }
    [[nodiscard]] std::size_t column() const { return m_at - m_lineStart + 1; }
    [[nodiscard]] bool atEnd() const { return m_at >= m_text.size(); }
    // Never called when reading, but the concept wants them.
    Ch* PutBegin() { return nullptr; }
    void Put(Ch) { }
    std::size_t PutEnd(Ch*) { return 0; }

private:
    std::string_view m_text;
    std::size_t m_at = 0;
    std::size_t m_lineStart = 0;
    int m_line = 1;
};

class TreeBuilder
{
public:
    explicit TreeBuilder(const LineStream& stream)
        : m_stream(stream)
    {
    }

    bool Null() { return add(Json()); }
    bool Bool(bool v) { return add(Json(v)); }
    bool Int(int v) { return add(Json(v)); }
    bool Uint(unsigned v) { return add(Json(std::int64_t {v})); }
    bool Int64(std::int64_t v) { return add(Json(v)); }
    bool Uint64(std::uint64_t v)
    {
        return v <= static_cast<std::uint64_t>(std::numeric_limits<std::int64_t>::max())
            ? add(Json(static_cast<std::int64_t>(v)))
            : add(Json(static_cast<double>(v)));
    }
    bool Double(double v) { return add(Json(v)); }
    bool RawNumber(const char*, rapidjson::SizeType, bool) { return false; }
    bool String(const char* text, rapidjson::SizeType size, bool) { return add(Json(std::string(text, size))); }
    bool StartObject() { return open(Json(Json::Object())); }
    bool Key(const char* text, rapidjson::SizeType size, bool)
    {
        std::string name(text, size);
        const auto& members = *m_open.back().asObject();
        if (std::any_of(members.begin(), members.end(), [&](const JsonMember& m) { return m.name == name; })) {
            m_fault = "the name '" + name + "' stands twice in one object";
            return false;
        }
        std::get<Json::Object>(m_open.back().value).push_back({std::move(name), Json()});
        return true;
    }
    bool EndObject(rapidjson::SizeType) { return close(); }
    bool StartArray() { return open(Json(Json::Array())); }
    bool EndArray(rapidjson::SizeType) { return close(); }

    [[nodiscard]] const std::string& fault() const { return m_fault; }
    Json takeRoot() { return std::move(m_root); }

private:
    bool open(Json container)
    {
        if (m_open.size() >= maxDepth) {
            m_fault = "nested deeper than " + std::to_string(maxDepth) + " levels";
            return false;
        }
        container.line = m_stream.line();
        m_open.push_back(std::move(container));
        return true;
    }
    bool close()
    {
        Json done = std::move(m_open.back());
        m_open.pop_back();
        return place(std::move(done));
    }
    bool add(Json scalar)
    {
        scalar.line = m_stream.line();
        return place(std::move(scalar));
    }
    bool place(Json done)
    {
        if (m_open.empty()) {
            m_root = std::move(done);
        } else if (auto* array = std::get_if<Json::Array>(&m_open.back().value)) {
            array->push_back(std::move(done));
        } else {
            std::get<Json::Object>(m_open.back().value).back().value = std::move(done);
        }
        return true;
    }

    const LineStream& m_stream;
    std::vector<Json> m_open;
    Json m_root;
    std::string m_fault;
};

}

Json::Json(bool v)
    : value(v)
{
}

Json::Json(int v)
    : value(std::int64_t {v})
{
}

Json::Json(std::int64_t v)
    : value(v)
{
}

Json::Json(double v)
    : value(v)
{
}

Json::Json(const char* v)
    : value(std::string(v))
{
}

Json::Json(std::string_view v)
    : value(std::string(v))
{
}

Json::Json(std::string v)
    : value(std::move(v))
{
}

Json::Json(Array v)
    : value(std::move(v))
{
}

Json::Json(Object v)
    : value(std::move(v))
{
}

const Json* Json::find(std::string_view name) const
{
    const auto* object = asObject();
    if (object == nullptr)
        return nullptr;
    const auto at = std::find_if(object->begin(), object->end(), [&](const JsonMember& m) { return m.name == name; });
    return at == object->end() ? nullptr : &at->value;
}

const std::string* Json::findString(std::string_view name) const
{
    const Json* member = find(name);
    return member == nullptr ? nullptr : member->asString();
}

const std::int64_t* Json::findInteger(std::string_view name) const
{
    const Json* member = find(name);
    return member == nullptr ? nullptr : member->asInteger();
}

Result<Json> parseJson(std::string_view text)
{
    constexpr unsigned flags = rapidjson::kParseIterativeFlag | rapidjson::kParseFullPrecisionFlag
        | rapidjson::kParseValidateEncodingFlag;
    LineStream stream(text);
    TreeBuilder builder(stream);
    rapidjson::Reader reader;
    const rapidjson::ParseResult done = reader.Parse<flags>(stream, builder);
    const auto bad = [&](const std::string& what) {
        return fail(ErrorCode::BadDocument,
            "line " + std::to_string(stream.line()) + ", column " + std::to_string(stream.column()) + ": " + what);
    };
    if (done.IsError())
        return bad(builder.fault().empty() ? rapidjson::GetParseError_En(done.Code()) : builder.fault());
    if (!stream.atEnd()) // a zero byte in the text looks like its end to the reader
        return bad("a zero byte stands after the value");
    return builder.takeRoot();
}

}
