// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/clock.h"

#include <array>
#include <memory>
#include <optional>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <span>
#include <string>
#include <string_view>

namespace cradlepost {

class Database;

/** A query that is kept prepared; one Statement uses it at a time. */
struct PreparedQuery
{
    explicit PreparedQuery(const QSqlDatabase& connection)
        : query(connection)
    {
        query.setForwardOnly(true);
    }
    QSqlQuery query;
    bool inUse = false;
};

/**
 * One use of a prepared query: bind the placeholders from left to right, then run() or next(). Ends the query
 * when dropped. Faults are thrown as Failure.
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

    /** Runs it to its end, for statements without rows. */
    void run();
    /** Runs it the first time; whether there is a (next) row. */
    bool next();

    [[nodiscard]] int columns() const;
    [[nodiscard]] std::string columnName(int column) const;
    [[nodiscard]] QVariant value(int column) const { return m_prepared->query.value(column); }
    [[nodiscard]] bool isNull(int column) const { return m_prepared->query.isNull(column); }
    [[nodiscard]] std::int64_t integer(int column) const;
    [[nodiscard]] int number(int column) const { return static_cast<int>(integer(column)); }
    [[nodiscard]] Instant time(int column) const { return fromMs(integer(column)); }
    [[nodiscard]] std::string text(int column) const;
    /** As many bytes as fit; what is missing stays zero. */
    template <std::size_t N> [[nodiscard]] std::array<unsigned char, N> bytes(int column) const
    {
        std::array<unsigned char, N> out{};
        copyBytes(column, out);
        return out;
    }

private:
    void execute();
    void copyBytes(int column, std::span<unsigned char> out) const;

    Database* m_database;
    std::unique_ptr<PreparedQuery> m_own;
    PreparedQuery* m_prepared;
    int m_bound = 0;
    bool m_running = false;
};

}
