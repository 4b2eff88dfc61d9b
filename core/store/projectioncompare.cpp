// SPDX-License-Identifier: MIT
#include "core/store/failure.h"
#include "core/store/projector.h"
#include "core/store/verification.h"

#include <QByteArray>
#include <QVariant>

namespace cradlepost {

namespace {

/** Rows of one projection in the order of its key, the columns of which come first. */
class Rows
{
public:
    Rows(Database& database, const ProjectionTable& table)
        : m_table(table)
        , m_rows(database.prepare(query(table)))
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
int order(const QVariant& a, const QVariant& b)
{
    if (a.typeId() == QMetaType::LongLong && b.typeId() == QMetaType::LongLong) {
        const qlonglong x = a.toLongLong();
        const qlonglong y = b.toLongLong();
        return x < y ? -1 : x > y ? 1 : 0;
    }
    const QByteArray x = a.toString().toUtf8();
    const QByteArray y = b.toString().toUtf8();
    return x < y ? -1 : y < x ? 1 : 0;
}

int orderOfKeys(const Statement& a, const Statement& b, int keys)
{
    for (int i = 0; i < keys; ++i)
        if (const int o = order(a.value(i), b.value(i)); o != 0)
            return o;
    return 0;
}

std::string shown(const QVariant& value)
{
    if (value.isNull())
        return "nothing";
    if (value.typeId() == QMetaType::QByteArray)
        return value.toByteArray().toHex().toStdString();
    return '\'' + value.toString().toStdString() + '\'';
}

bool same(const QVariant& a, const QVariant& b)
{
    if (a.isNull() || b.isNull())
        return a.isNull() == b.isNull();
    return a.typeId() == b.typeId() && a == b;
}

std::optional<Fault> compareRow(const Rows& found, const Rows& expected)
{
    for (int i = 0; i < expected.row().columns(); ++i) {
        const QVariant is = found.row().value(i);
        const QVariant should = expected.row().value(i);
        if (!same(is, should))
            return Fault{.where = expected.name(),
                .what = "column " + expected.row().columnName(i) + " is " + shown(is) + ", should be "
                    + shown(should)};
    }
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
