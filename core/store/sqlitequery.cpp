// SPDX-License-Identifier: MIT
#include "core/store/sqlitequery.h"

#include "core/store/sqliteconnection.h"

#include <algorithm>
#include <sqlite3.h>

namespace cradlepost {

SqliteQuery::SqliteQuery(const SqliteConnection& connection, sqlite3_stmt* statement)
    : m_connection(connection)
    , m_handle(statement)
{
}

SqliteQuery::~SqliteQuery() { sqlite3_finalize(m_handle); }

void SqliteQuery::bind(int place, std::int64_t value) { sqlite3_bind_int64(m_handle, place, value); }

void SqliteQuery::bind(int place, std::string_view text)
{
    // A null pointer would be stored as NULL.
    const char* bytes = text.empty() ? "" : text.data();
    const char* kept = keep(bytes, text.size());
    sqlite3_bind_text64(m_handle, place, kept != nullptr ? kept : bytes, text.size(),
        kept != nullptr ? SQLITE_STATIC : SQLITE_TRANSIENT, SQLITE_UTF8);
}

void SqliteQuery::bind(int place, std::span<const unsigned char> bytes)
{
    sqlite3_bind_blob64(m_handle, place, bytes.data(), bytes.size(), SQLITE_TRANSIENT);
}

const char* SqliteQuery::keep(const char* bytes, std::size_t size)
{
    if (size > m_bound.size() - m_boundSize)
        return nullptr;
    char* const at = m_bound.data() + m_boundSize;
    std::copy_n(bytes, size, at);
    m_boundSize += size;
    return at;
}

void SqliteQuery::bindNull(int place) { sqlite3_bind_null(m_handle, place); }

void SqliteQuery::run()
{
    while (SqliteQuery::next()) {
        // rows of no interest
    }
    SqliteQuery::reset();
}

bool SqliteQuery::next()
{
    const int step = sqlite3_step(m_handle);
    if (step != SQLITE_ROW && step != SQLITE_DONE)
        throw m_connection.lastFailure();
    return step == SQLITE_ROW;
}

void SqliteQuery::reset()
{
    sqlite3_reset(m_handle);
    m_boundSize = 0;
}

int SqliteQuery::columns() const { return sqlite3_column_count(m_handle); }

std::string SqliteQuery::columnName(int column) const { return sqlite3_column_name(m_handle, column); }

ColumnType SqliteQuery::type(int column) const
{
    switch (sqlite3_column_type(m_handle, column)) {
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

std::int64_t SqliteQuery::integer(int column) const { return sqlite3_column_int64(m_handle, column); }

std::string_view SqliteQuery::text(int column) const
{
    const auto* text = reinterpret_cast<const char*>(sqlite3_column_text(m_handle, column));
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(m_handle, column));
    return text == nullptr ? std::string_view() : std::string_view(text, size);
}

std::span<const unsigned char> SqliteQuery::blob(int column) const
{
    const auto* bytes = static_cast<const unsigned char*>(sqlite3_column_blob(m_handle, column));
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(m_handle, column));
    return bytes == nullptr ? std::span<const unsigned char>() : std::span(bytes, size);
}

}
