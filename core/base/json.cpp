// SPDX-License-Identifier: MIT
#include "core/base/json.h"

#include <algorithm>
#include <cstring>
#include <iterator>
#include <limits>
#include <rapidjson/error/en.h>
#include <rapidjson/reader.h>

namespace cradlepost {

namespace {

constexpr std::size_t maxDepth = 64;

/** The text as the reader wants it. Lines are counted when somebody asks, from where they were last asked for. */
class LineStream
{
public:
    using Ch = char;
    explicit LineStream(std::string_view text)
        : m_begin(text.data())
        , m_at(text.data())
        , m_end(text.data() + text.size())
        , m_counted(m_at)
        , m_lineStart(m_at)
    {
    }
    [[nodiscard]] Ch Peek() const { return m_at < m_end ? *m_at : '\0'; }
    Ch Take() { return m_at < m_end ? *m_at++ : '\0'; }
    [[nodiscard]] std::size_t Tell() const { return static_cast<std::size_t>(m_at - m_begin); }
    /** From 1 on. */
    int line()
    {
        for (const char* found = nextBreak(); found != nullptr; found = nextBreak()) {
            ++m_line;
            m_counted = m_lineStart = found + 1;
        }
        m_counted = m_at;
        return m_line;
    }
    std::size_t column()
    {
        line();
        return static_cast<std::size_t>(m_at - m_lineStart) + 1;
    }
    [[nodiscard]] bool atEnd() const { return m_at >= m_end; }
    // Never called when reading, but the concept wants them.
    Ch* PutBegin() { return nullptr; }
    void Put(Ch) { }
    std::size_t PutEnd(Ch*) { return 0; }

private:
    [[nodiscard]] const char* nextBreak() const
    {
        return m_counted < m_at
            ? static_cast<const char*>(std::memchr(m_counted, '\n', static_cast<std::size_t>(m_at - m_counted)))
            : nullptr;
    }

    const char* m_begin;
    const char* m_at;
    const char* m_end;
    const char* m_counted; ///< lines before it are counted
    const char* m_lineStart;
    int m_line = 1;
};

/**
 * Values wait in one row until what holds them ends and says how many they are: then each array and each object is
 * made in one piece.
 */
class TreeBuilder
{
public:
    explicit TreeBuilder(LineStream& stream)
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
    bool Key(const char* text, rapidjson::SizeType size, bool)
    {
        const std::string_view name(text, size);
        for (auto member = m_members.begin() + static_cast<std::ptrdiff_t>(m_open.back().members);
             member != m_members.end(); ++member) {
            if (member->name == name) {
                m_fault = "the name '" + std::string(name) + "' stands twice in one object";
                return false;
            }
        }
        m_members.push_back({std::string(name), Json()});
        return true;
    }
    bool StartObject() { return open(true); }
    bool EndObject(rapidjson::SizeType)
    {
        const Open open = close();
        const auto from = m_members.begin() + static_cast<std::ptrdiff_t>(open.members);
        Json object(Json::Object(std::make_move_iterator(from), std::make_move_iterator(m_members.end())));
        m_members.erase(from, m_members.end());
        return place(std::move(object), open.line);
    }
    bool StartArray() { return open(false); }
    bool EndArray(rapidjson::SizeType)
    {
        const Open open = close();
        const auto from = m_values.begin() + static_cast<std::ptrdiff_t>(open.values);
        Json array(Json::Array(std::make_move_iterator(from), std::make_move_iterator(m_values.end())));
        m_values.erase(from, m_values.end());
        return place(std::move(array), open.line);
    }

    [[nodiscard]] const std::string& fault() const { return m_fault; }
    Json takeRoot() { return std::move(m_values.front()); }

private:
    /** A container that has begun, and where in the rows it did. */
    struct Open
    {
        std::size_t values = 0;
        std::size_t members = 0;
        int line = 0;
        bool isObject = false;
    };

    bool open(bool isObject)
    {
        if (m_open.size() >= maxDepth) {
            m_fault = "nested deeper than " + std::to_string(maxDepth) + " levels";
            return false;
        }
        m_open.push_back({m_values.size(), m_members.size(), m_stream.line(), isObject});
        return true;
    }
    Open close()
    {
        const Open done = m_open.back();
        m_open.pop_back();
        return done;
    }
    bool add(Json scalar) { return place(std::move(scalar), m_stream.line()); }
    bool place(Json done, int line)
    {
        done.line = line;
        if (!m_open.empty() && m_open.back().isObject)
            m_members.back().value = std::move(done);
        else
            m_values.push_back(std::move(done));
        return true;
    }

    LineStream& m_stream;
    std::vector<Open> m_open;
    std::vector<Json> m_values; ///< of the open arrays, and the root
    std::vector<JsonMember> m_members; ///< of the open objects
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
    // The reader calls itself for what is nested: the builder stops it at a depth that any stack bears.
    constexpr unsigned flags = rapidjson::kParseFullPrecisionFlag | rapidjson::kParseValidateEncodingFlag;
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
