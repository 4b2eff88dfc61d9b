// SPDX-License-Identifier: MIT
#include "core/store/postgresquery.h"

#include "core/store/libpq.h"

namespace cradlepost {

namespace {

constexpr int portion = 1000;

// Type numbers of the server's catalogue (pg_type), fixed for ever.
constexpr Oid boolType = 16;
constexpr Oid bytesType = 17;
constexpr Oid int8Type = 20;
constexpr Oid int2Type = 21;
constexpr Oid int4Type = 23;

/** '?' becomes $1, $2 …; one inside quotes stays. */
std::string numbered(const std::string& sql)
{
    std::string out;
    int count = 0;
    bool quoted = false;
    for (const char c : sql) {
        quoted = quoted != (c == '\'');
        if (c == '?' && !quoted)
            out += '$' + std::to_string(++count);
        else
            out += c;
    }
    return out;
}

}

PostgresQuery::PostgresQuery(PostgresConnection& connection, const std::string& sql, Rows rows)
    : m_connection(connection)
    , m_sql(numbered(sql))
    , m_kind(rows)
{
}

void PostgresQuery::put(int place, std::string bytes, bool isNull, int format)
{
    const auto at = static_cast<std::size_t>(place - 1);
    if (m_values.bytes.size() <= at) {
        m_values.bytes.resize(at + 1);
        m_values.isNull.resize(at + 1);
        m_values.formats.resize(at + 1);
    }
    m_values.bytes[at] = std::move(bytes);
    m_values.isNull[at] = isNull;
    m_values.formats[at] = format;
}

// As text a number fits whatever width the server expects.
void PostgresQuery::bind(int place, std::int64_t value) { put(place, std::to_string(value), false, 0); }

void PostgresQuery::bind(int place, std::string_view text) { put(place, std::string(text), false, 1); }

void PostgresQuery::bind(int place, std::span<const unsigned char> bytes)
{
    put(place, std::string(reinterpret_cast<const char*>(bytes.data()), bytes.size()), false, 1);
}

void PostgresQuery::bindNull(int place) { put(place, {}, true, 0); }

void PostgresQuery::run() { m_connection.send(m_sql, m_values); }

void PostgresQuery::fetch()
{
    m_row = -1;
    if (m_kind == Rows::AtOnce) {
        m_rows = m_connection.ask(m_sql, m_values);
        return;
    }
    if (m_cursor.empty()) {
        m_cursor = m_connection.freshCursor();
        m_connection.askOnce("DECLARE " + m_cursor + " NO SCROLL CURSOR FOR " + m_sql, m_values);
    }
    m_rows = m_connection.askOnce("FETCH FORWARD " + std::to_string(portion) + " FROM " + m_cursor, {});
}

bool PostgresQuery::next()
{
    if (!m_rows)
        fetch();
    if (++m_row < libpq().PQntuples(m_rows.get()))
        return true;
    if (m_cursor.empty() || libpq().PQntuples(m_rows.get()) < portion)
        return false;
    fetch();
    return ++m_row < libpq().PQntuples(m_rows.get());
}

void PostgresQuery::reset()
{
    m_rows.reset();
    m_row = -1;
    m_cursor.clear(); // the server closes it with the transaction
}

int PostgresQuery::columns() const { return libpq().PQnfields(m_rows.get()); }

std::string PostgresQuery::columnName(int column) const { return libpq().PQfname(m_rows.get(), column); }

ColumnType PostgresQuery::type(int column) const
{
    if (libpq().PQgetisnull(m_rows.get(), m_row, column) == 1)
        return ColumnType::Null;
    switch (libpq().PQftype(m_rows.get(), column)) {
    case boolType:
    case int2Type:
    case int4Type:
    case int8Type:
        return ColumnType::Integer;
    case bytesType:
        return ColumnType::Bytes;
    default:
        return ColumnType::Text;
    }
}

std::int64_t PostgresQuery::integer(int column) const
{
    const auto bytes = blob(column);
    if (bytes.empty())
        return 0;
    auto value = static_cast<std::uint64_t>((bytes.front() & 0x80U) != 0 ? -1 : 0);
    for (const unsigned char byte : bytes)
        value = value << 8U | byte;
    return static_cast<std::int64_t>(value);
}

std::string_view PostgresQuery::raw(int column) const
{
    const auto size = static_cast<std::size_t>(libpq().PQgetlength(m_rows.get(), m_row, column));
    return {libpq().PQgetvalue(m_rows.get(), m_row, column), size};
}

std::string_view PostgresQuery::text(int column) const
{
    if (type(column) != ColumnType::Integer)
        return raw(column);
    return m_numbers[column] = std::to_string(integer(column));
}

std::span<const unsigned char> PostgresQuery::blob(int column) const
{
    const std::string_view bytes = raw(column);
    return {reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size()};
}

}
