// SPDX-License-Identifier: MIT
#include "core/store/statement.h"

#include "core/store/database.h"

#include <sqlite3.h>
#include <utility>

namespace cradlepost {

Statement::Statement(Database& database, PreparedQuery& kept)
    : m_database(&database)
    , m_prepared(&kept)
{
    m_prepared->inUse = true;
}

Statement::Statement(Database& database, std::unique_ptr<PreparedQuery> own)
    : m_database(&database)
    , m_own(std::move(own))
    , m_prepared(m_own.get())
{
}

Statement::Statement(Statement&& other) noexcept
    : m_database(other.m_database)
    , m_own(std::move(other.m_own))
    , m_prepared(std::exchange(other.m_prepared, nullptr))
    , m_bound(other.m_bound)
{
}

Statement::~Statement()
{
    if (m_prepared == nullptr)
        return;
    sqlite3_reset(m_prepared->handle);
    m_prepared->inUse = false;
}

Statement& Statement::bind(std::int64_t value)
{
    sqlite3_bind_int64(m_prepared->handle, ++m_bound, value);
    return *this;
}

Statement& Statement::bind(std::string_view text)
{
    // A null pointer would be stored as NULL.
    sqlite3_bind_text64(m_prepared->handle, ++m_bound, text.empty() ? "" : text.data(), text.size(),
        SQLITE_TRANSIENT, SQLITE_UTF8);
    return *this;
}

Statement& Statement::bind(std::span<const unsigned char> bytes)
{
    sqlite3_bind_blob64(m_prepared->handle, ++m_bound, bytes.data(), bytes.size(), SQLITE_TRANSIENT);
    return *this;
}

Statement& Statement::bindNull()
{
    sqlite3_bind_null(m_prepared->handle, ++m_bound);
    return *this;
}

void Statement::run()
{
    while (next()) {
        // rows of no interest
    }
    sqlite3_reset(m_prepared->handle);
    m_bound = 0;
}

bool Statement::next()
{
    const int step = sqlite3_step(m_prepared->handle);
    if (step != SQLITE_ROW && step != SQLITE_DONE)
        throw m_database->lastFailure();
    return step == SQLITE_ROW;
}

int Statement::columns() const { return sqlite3_column_count(m_prepared->handle); }

std::string Statement::columnName(int column) const
{
    return sqlite3_column_name(m_prepared->handle, column);
}

ColumnType Statement::type(int column) const
{
    switch (sqlite3_column_type(m_prepared->handle, column)) {
    case SQLITE_NULL:
        return ColumnType::Null;
    case SQLITE_INTEGER:
        return ColumnType::Integer;
    case SQLITE_BLOB:
        return ColumnType::Bytes;
    default:
        return ColumnType::Text;
    }
}

std::int64_t Statement::integer(int column) const { return sqlite3_column_int64(m_prepared->handle, column); }

std::string_view Statement::textView(int column) const
{
    const auto* text = reinterpret_cast<const char*>(sqlite3_column_text(m_prepared->handle, column));
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(m_prepared->handle, column));
    return text == nullptr ? std::string_view() : std::string_view(text, size);
}

std::span<const unsigned char> Statement::blob(int column) const
{
    const auto* bytes = static_cast<const unsigned char*>(sqlite3_column_blob(m_prepared->handle, column));
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(m_prepared->handle, column));
    return bytes == nullptr ? std::span<const unsigned char>() : std::span(bytes, size);
}

}
