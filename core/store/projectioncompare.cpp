// SPDX-License-Identifier: MIT
#include "core/store/failure.h"
#include "core/store/projector.h"
#include "core/store/verification.h"

#include <algorithm>

namespace cradlepost {

namespace {

/** Rows of one projection in the order of its key, the columns of which come first. */
class Rows
{
public:
    Rows(Database& database, const ProjectionTable& table)
        : m_table(table)
        , m_rows(database.scan(query(table)))
    {
        advance();
    }

    void advance() { m_there = m_rows.next(); }
    [[nodiscard]] bool there() const { return m_there; }
    [[nodiscard]] const Statement& row() const { return m_rows; }

    /** "round sorrel-hill 2026-11-24/1 hq3k/17" */
    [[nodiscard]] std::string name() const
    {
        std::string name = m_table.name;
        for (char& c : name)
            if (c == '_')
                c = '-';
        for (int i = 0; i < m_table.keys; ++i)
            name += ' ' + (m_rows.columnName(i) == "slot" ? shiftName(m_rows.integer(i)) : m_rows.text(i));
        return name;
    }

private:
    static std::string query(const ProjectionTable& table)
    {
        std::string text = std::string("SELECT * FROM ") + table.name + " ORDER BY 1";
        for (int i = 2; i <= table.keys; ++i)
            text += ", " + std::to_string(i);
        return text;
    }
    static std::string shiftName(Slot slot)
    {
        const Date date = dateOfSlot(slot);
        return (date.ok() ? toIso(date) : std::to_string(slot)) + '/' + std::to_string(shiftOfSlot(slot));
    }

    ProjectionTable m_table;
    Statement m_rows;
    bool m_there = false;
};

/** Below zero, zero, above zero; texts by their bytes, as the database orders them. */
int order(const Statement& a, const Statement& b, int column)
{
    if (a.type(column) == ColumnType::Integer && b.type(column) == ColumnType::Integer) {
        const std::int64_t x = a.integer(column);
        const std::int64_t y = b.integer(column);
        return x < y ? -1 : x > y ? 1 : 0;
    }
    return a.textView(column).compare(b.textView(column));
}

int orderOfKeys(const Statement& a, const Statement& b, int keys)
{
    for (int i = 0; i < keys; ++i)
        if (const int o = order(a, b, i); o != 0)
            return o;
    return 0;
}

std::string shown(const Statement& row, int column)
{
    static constexpr char digits[] = "0123456789abcdef";
    if (row.isNull(column))
        return "nothing";
    if (row.type(column) != ColumnType::Bytes)
        return '\'' + row.text(column) + '\'';
    std::string hex;
    for (const unsigned char byte : row.blob(column)) {
        hex += digits[byte >> 4];
        hex += digits[byte & 0xF];
    }
    return hex;
}

bool same(const Statement& a, const Statement& b, int column)
{
    if (a.type(column) != b.type(column))
        return false;
    if (a.type(column) == ColumnType::Integer)
        return a.integer(column) == b.integer(column);
    return std::ranges::equal(a.blob(column), b.blob(column));
}

std::optional<Fault> compareRow(const Rows& found, const Rows& expected)
{
    for (int i = 0; i < expected.row().columns(); ++i)
        if (!same(found.row(), expected.row(), i))
            return Fault{.where = expected.name(),
                .what = "column " + expected.row().columnName(i) + " is " + shown(found.row(), i)
                    + ", should be " + shown(expected.row(), i)};
    return std::nullopt;
}

std::optional<Fault> compareTable(Database& database, Database& replayed, const ProjectionTable& table)
{
    Rows found(database, table);
    Rows expected(replayed, table);
    if (found.there() && expected.there() && found.row().columns() != expected.row().columns())
        return Fault{.where = table.name, .what = "it has other columns than this program made"};
    while (found.there() || expected.there()) {
        const int o = !found.there() ? 1
            : !expected.there()      ? -1
                                     : orderOfKeys(found.row(), expected.row(), table.keys);
        if (o < 0)
            return Fault{.where = found.name(), .what = "no record says this"};
        if (o > 0)
            return Fault{.where = expected.name(), .what = "the row is missing"};
        if (auto fault = compareRow(found, expected))
            return fault;
        found.advance();
        expected.advance();
    }
    return std::nullopt;
}

}

std::optional<Fault> compareProjections(Database& database, Database& replayed)
{
    for (const ProjectionTable& table : projectionTables())
        if (auto fault = compareTable(database, replayed, table))
            return fault;
    return std::nullopt;
}

}
