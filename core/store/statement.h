// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/clock.h"

#include <algorithm>
#include <array>
#include <memory>
#include <optional>
#include <QSqlQuery>
#include <span>
#include <string>
#include <string_view>

struct sqlite3_stmt;

namespace cradlepost {

class Database;

/** A query that is kept prepared; one Statement uses it at a time. */
struct PreparedQuery
{
    QSqlQuery query;
    sqlite3_stmt* handle = nullptr; ///< of the query
    bool inUse = false;
};

/** What a column holds. */
enum class ColumnType { Null, Integer, Text, Bytes };

/**
 * One use of a prepared query: bind the placeholders from left to right, then run() or next(). Ends the query
 * when dropped. Values go in and out by SQLite's own calls on the handle of Qt's query: through QVariant and
 * QString they cost more than the statement itself (measured). Faults are thrown as Failure.
 */
class Statement
{
public:
    Statement(Database& database, PreparedQuery& kept);
    /** With a query of its own, for when the kept one is in use. */
    Statement(Database& database, std::unique_ptr<PreparedQuery> own);
    Statement(Statement&& other) noexcept;
    Statement(const Statement&) = delete;
    Statement& operator=(const Statement&) = delete;
    Statement& operator=(Statement&&) = delete;
    ~Statement();

    Statement& bind(std::int64_t value);
    Statement& bind(int value) { return bind(std::int64_t{value}); }
    Statement& bind(std::string_view text);
    Statement& bind(const std::string& text) { return bind(std::string_view(text)); }
    Statement& bind(const char* text) { return bind(std::string_view(text)); }
    Statement& bind(Instant time) { return bind(toMs(time)); }
    Statement& bind(std::span<const unsigned char> bytes);
    template <class T> Statement& bind(const std::optional<T>& value)
    {
        return value ? bind(*value) : bindNull();
    }
    Statement& bindNull();

    /** Runs it to its end; the statement can be bound again. */
    void run();
    /** Whether there is a first or a further row. */
    bool next();

    [[nodiscard]] int columns() const;
    [[nodiscard]] std::string columnName(int column) const;
    [[nodiscard]] ColumnType type(int column) const;
    [[nodiscard]] bool isNull(int column) const { return type(column) == ColumnType::Null; }
    [[nodiscard]] std::int64_t integer(int column) const;
    [[nodiscard]] int number(int column) const { return static_cast<int>(integer(column)); }
    [[nodiscard]] Instant time(int column) const { return fromMs(integer(column)); }
    [[nodiscard]] std::string text(int column) const { return std::string(textView(column)); }
    /** Good until the next row. */
    [[nodiscard]] std::string_view textView(int column) const;
    [[nodiscard]] std::span<const unsigned char> blob(int column) const;
    /** As many bytes as fit; what is missing stays zero. */
    template <std::size_t N> [[nodiscard]] std::array<unsigned char, N> bytes(int column) const
    {
        std::array<unsigned char, N> out{};
        const auto found = blob(column);
        std::copy_n(found.begin(), std::min(N, found.size()), out.begin());
        return out;
    }

private:
    Database* m_database;
    std::unique_ptr<PreparedQuery> m_own;
    PreparedQuery* m_prepared;
    int m_bound = 0;
};

}
