// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/query.h"

#include <array>

struct sqlite3_stmt;

namespace cradlepost {

class SqliteConnection;

/** A prepared statement of SQLite. */
class SqliteQuery final : public Query
{
public:
    /** Takes the statement, which it ends when dropped; that is before its connection is. */
    SqliteQuery(const SqliteConnection& connection, sqlite3_stmt* statement);
    ~SqliteQuery() override;

    void bind(int place, std::int64_t value) override;
    void bind(int place, std::string_view text) override;
    void bind(int place, std::span<const unsigned char> bytes) override;
    void bindNull(int place) override;
    void run() override;
    bool next() override;
    void reset() override;
    [[nodiscard]] int columns() const override;
    [[nodiscard]] std::string columnName(int column) const override;
    [[nodiscard]] ColumnType type(int column) const override;
    [[nodiscard]] std::int64_t integer(int column) const override;
    [[nodiscard]] std::string_view text(int column) const override;
    [[nodiscard]] std::span<const unsigned char> blob(int column) const override;

private:
    /** A copy of what is bound, good until the next run; nullptr when there is no room for it. */
    const char* keep(const char* bytes, std::size_t size);

    const SqliteConnection& m_connection;
    sqlite3_stmt* m_handle;
    // SQLite's own copies take memory for each short text: a twentieth of a save.
    std::array<char, 768> m_bound;
    std::size_t m_boundSize = 0;
};

}
