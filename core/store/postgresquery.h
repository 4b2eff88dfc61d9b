// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/postgresconnection.h"

namespace cradlepost {

/** Values go in and out as bytes, by libpq's own calls; rows lie whole in memory or come in portions. */
class PostgresQuery final : public Query
{
public:
    enum class Rows { AtOnce, InPortions };

    /** `sql` with '?' for placeholders. */
    PostgresQuery(PostgresConnection& connection, const std::string& sql, Rows rows);

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
    void put(int place, std::string bytes, bool isNull, int format);
    void fetch();
    [[nodiscard]] std::string_view raw(int column) const;

    PostgresConnection& m_connection;
    std::string m_sql;
    Rows m_kind;
    PostgresValues m_values;
    std::string m_cursor; ///< once it is open
    PostgresResult m_rows;
    int m_row = -1;
    mutable std::map<int, std::string> m_numbers; ///< of this row, as text
};

}
