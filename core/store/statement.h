// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/clock.h"
#include "core/store/query.h"

#include <algorithm>
#include <array>
#include <memory>
#include <optional>

namespace cradlepost {

/**
 * One use of a prepared query: bind the placeholders from left to right, then run() or next(). Ends the query
 * when dropped. Faults are thrown as Failure.
 */
class Statement
{
public:
    explicit Statement(Query& kept);
    /** With a query of its own, for when the kept one is in use. */
    explicit Statement(std::unique_ptr<Query> own);
    Statement(Statement&& other) noexcept;
    Statement(const Statement&) = delete;
    Statement& operator=(const Statement&) = delete;
    Statement& operator=(Statement&&) = delete;
    ~Statement();

    Statement& bind(std::int64_t value)
    {
        m_query->bind(++m_bound, value);
        return *this;
    }
    Statement& bind(int value) { return bind(std::int64_t{value}); }
    Statement& bind(std::string_view text)
    {
        m_query->bind(++m_bound, text);
        return *this;
    }
    Statement& bind(const std::string& text) { return bind(std::string_view(text)); }
    Statement& bind(const char* text) { return bind(std::string_view(text)); }
    Statement& bind(Instant time) { return bind(toMs(time)); }
    Statement& bind(std::span<const unsigned char> bytes)
    {
        m_query->bind(++m_bound, bytes);
        return *this;
    }
    template <class T> Statement& bind(const std::optional<T>& value)
    {
        return value ? bind(*value) : bindNull();
    }
    Statement& bindNull()
    {
        m_query->bindNull(++m_bound);
        return *this;
    }

    /** Runs it to its end; the statement can be bound again. */
    void run();
    /** Whether there is a first or a further row. */
    bool next() { return m_query->next(); }

    [[nodiscard]] int columns() const { return m_query->columns(); }
    [[nodiscard]] std::string columnName(int column) const { return m_query->columnName(column); }
    [[nodiscard]] ColumnType type(int column) const { return m_query->type(column); }
    [[nodiscard]] bool isNull(int column) const { return type(column) == ColumnType::Null; }
    [[nodiscard]] std::int64_t integer(int column) const { return m_query->integer(column); }
    [[nodiscard]] int number(int column) const { return static_cast<int>(integer(column)); }
    [[nodiscard]] Instant time(int column) const { return fromMs(integer(column)); }
    [[nodiscard]] std::string text(int column) const { return std::string(textView(column)); }
    /** Good until the next row. */
    [[nodiscard]] std::string_view textView(int column) const { return m_query->text(column); }
    [[nodiscard]] std::span<const unsigned char> blob(int column) const { return m_query->blob(column); }
    /** As many bytes as fit; what is missing stays zero. */
    template <std::size_t N> [[nodiscard]] std::array<unsigned char, N> bytes(int column) const
    {
        std::array<unsigned char, N> out{};
        const auto found = blob(column);
        std::copy_n(found.begin(), std::min(N, found.size()), out.begin());
        return out;
    }

private:
    std::unique_ptr<Query> m_own;
    Query* m_query;
    int m_bound = 0;
};

}
