// SPDX-License-Identifier: MIT
#include "core/exchange/packfields.h"

#include "core/exchange/packformat.h"
#include "core/ledger/canonical.h"

namespace cradlepost {

Result<Json> readCanonical(std::string_view line)
{
    auto json = parseJson(line);
    if (!json)
        return json;
    if (canonicalText(*json) != line)
        return fail(ErrorCode::BadDocument, "the line is not in canonical form");
    return json;
}

const Json* Fields::member(const char* name)
{
    ++m_asked;
    const Json* found = m_json.find(name);
    if (found == nullptr)
        miss(name);
    return found;
}

void Fields::miss(const char* name)
{
    if (m_missed.empty())
        m_missed = name;
}

void Fields::text(const char* name, std::string& out)
{
    const Json* found = member(name);
    const auto* value = found != nullptr ? found->asString() : nullptr;
    if (value != nullptr)
        out = *value;
    else
        miss(name);
}

void Fields::integer(const char* name, std::int64_t& out)
{
    const Json* found = member(name);
    const auto* value = found != nullptr ? found->asInteger() : nullptr;
    if (value != nullptr)
        out = *value;
    else
        miss(name);
}

void Fields::time(const char* name, Instant& out)
{
    constexpr std::int64_t end = 253'402'300'800'000; // year 10000
    std::int64_t ms = -1;
    integer(name, ms);
    if (ms >= 0 && ms < end)
        out = fromMs(ms);
    else
        miss(name);
}

void Fields::hex(const char* name, std::span<unsigned char> out)
{
    const Json* found = member(name);
    const auto* value = found != nullptr ? found->asString() : nullptr;
    if (value == nullptr || !fromHex(*value, out))
        miss(name);
}

void Fields::array(const char* name, const Json::Array*& out)
{
    const Json* found = member(name);
    out = found != nullptr ? found->asArray() : nullptr;
    if (out == nullptr)
        miss(name);
}

void Fields::any(const char* name, const Json*& out) { out = member(name); }

Result<void> Fields::end(const char* what) const
{
    if (!m_missed.empty())
        return fail(ErrorCode::BadDocument,
            std::string(what) + ": '" + m_missed + "' is missing or not what it should be");
    const auto* object = m_json.asObject();
    if (object == nullptr || object->size() != m_asked)
        return fail(ErrorCode::BadDocument, std::string(what) + ": it has members that are not known");
    return {};
}

}
