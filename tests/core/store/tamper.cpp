// SPDX-License-Identifier: MIT
#include "tamper.h"

#include "core/store/database.h"
#include "core/store/projector.h"

#include <fstream>
#include <stdexcept>

namespace cradlepost::test {

namespace {

/** SQLite's own variable-length integer (file format, section 1.6). */
std::int64_t varint(const std::string& bytes, std::size_t& at)
{
    std::int64_t value = 0;
    for (int i = 0; i < 9; ++i) {
        const auto byte = static_cast<unsigned char>(bytes.at(at++));
        if (i == 8)
            return value << 8 | byte;
        value = value << 7 | (byte & 0x7F);
        if (byte < 0x80)
            break;
    }
    return value;
}

int twoBytes(const std::string& bytes, std::size_t at)
{
    return static_cast<unsigned char>(bytes.at(at)) << 8 | static_cast<unsigned char>(bytes.at(at + 1));
}

std::string wholeFile(const std::string& path)
{
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

/** Cells of one leaf page (file format, section 1.6): 0x0D of a table, 0x0A of an index or WITHOUT ROWID
 * table. */
void addCells(std::vector<Cell>& cells, const std::string& file, const std::string& table, std::size_t page,
    std::size_t pageSize)
{
    const std::size_t start = page * pageSize;
    const int kind = static_cast<unsigned char>(file.at(start));
    if (kind != 0x0D && kind != 0x0A)
        return;
    const int count = twoBytes(file, start + 3);
    for (int i = 0; i < count; ++i) {
        const auto from
            = start + static_cast<std::size_t>(twoBytes(file, start + 8 + 2 * static_cast<std::size_t>(i)));
        std::size_t at = from;
        const std::int64_t payload = varint(file, at);
        if (kind == 0x0D)
            varint(file, at);
        // Only what certainly lies on this page.
        const auto largest = static_cast<std::int64_t>((pageSize - 12) * 64 / 255 - 23);
        if (payload <= largest)
            cells.push_back({.table = table,
                .from = static_cast<std::int64_t>(from),
                .size = static_cast<std::int64_t>(at - from) + payload});
    }
}

}

std::vector<std::string> columnsOf(const std::string& path, const std::string& table)
{
    Database database(path, Database::Access::ReadOnly);
    std::vector<std::string> columns;
    Statement rows = database.prepare("SELECT name FROM pragma_table_info(?)");
    rows.bind(table);
    while (rows.next())
        columns.push_back(rows.text(0));
    return columns;
}

void withoutTriggers(const std::string& path, const std::string& sql)
{
    Database database(path, Database::Access::ReadWrite);
    std::vector<std::string> drops;
    std::string restore;
    {
        Statement rows = database.prepare("SELECT name, sql FROM sqlite_schema WHERE type = 'trigger'");
        while (rows.next()) {
            drops.push_back("DROP TRIGGER " + rows.text(0));
            restore += rows.text(1) + ";\n";
        }
    }
    database.run("PRAGMA synchronous = OFF");
    database.run("PRAGMA ignore_check_constraints = ON");
    database.run("PRAGMA foreign_keys = OFF");
    database.run("BEGIN");
    for (const std::string& drop : drops)
        database.run(drop);
    database.runScript(sql);
    database.runScript(restore);
    database.run("COMMIT");
    database.run("PRAGMA wal_checkpoint(TRUNCATE)");
}

namespace {
/** Columns that name a row: WITHOUT ROWID tables have nothing else. */
std::string keysOf(const std::string& path, const std::string& table)
{
    if (table == "record" || table == "clock_back")
        return "station, seq";
    for (const ProjectionTable& known : projectionTables()) {
        if (table != known.name)
            continue;
        std::string list;
        const auto columns = columnsOf(path, table);
        for (int i = 0; i < known.keys; ++i)
            list += (i == 0 ? "" : ", ") + columns[static_cast<std::size_t>(i)];
        return list;
    }
    return "station";
}
}

std::string changeValue(
    const std::string& path, const std::string& table, const std::string& column, std::mt19937& random)
{
    const std::string keys = keysOf(path, table);
    std::string before;
    std::string after;
    std::int64_t row = 0;
    {
        Database database(path, Database::Access::ReadOnly);
        const std::int64_t rows = database.integerOf("SELECT count(*) FROM " + table);
        if (rows == 0)
            throw std::runtime_error("no row in " + table);
        row = static_cast<std::int64_t>(random() % static_cast<unsigned>(rows));
        Statement value
            = database.prepare("SELECT quote(" + column + ") FROM " + table + " ORDER BY " + keys + " LIMIT 1 OFFSET ?");
        value.bind(row);
        if (!value.next())
            throw std::runtime_error("no such row in " + table);
        before = value.text(0);
    }
    if (before == "NULL") {
        after = column.ends_with("station") ? "'x'" : "1";
    } else if (before.starts_with("X'")) {
        after = before;
        const std::size_t digit = 2 + random() % (before.size() - 3);
        after[digit] = after[digit] == '0' ? '1' : '0';
    } else if (before == "''") {
        after = "'x'";
    } else if (before.starts_with('\'')) {
        after = before;
        char& letter = after[1 + random() % (before.size() - 2)];
        letter = letter == 'x' ? 'y' : 'x';
    } else {
        // Far enough not to be the key of another row.
        const bool inKey = column == "seq" || column == "nth" || column == "slot" || column == "version";
        after = std::to_string(std::stoll(before) + (inKey ? 1000 : 1));
    }
    withoutTriggers(path,
        "UPDATE " + table + " SET " + column + " = " + after + " WHERE (" + keys + ") = (SELECT " + keys
            + " FROM " + table + " ORDER BY " + keys + " LIMIT 1 OFFSET " + std::to_string(row) + ")");
    return before + " -> " + after;
}

std::vector<Cell> cellsOf(const std::string& path)
{
    std::vector<Cell> cells;
    const std::string file = wholeFile(path);
    Database database(path, Database::Access::ReadOnly);
    const auto pageSize = static_cast<std::size_t>(database.integerOf("PRAGMA page_size"));
    std::vector<std::string> tables{"record", "station"};
    for (const ProjectionTable& table : projectionTables())
        tables.emplace_back(table.name);
    for (const std::string& table : tables) {
        Statement pages = database.prepare("SELECT pageno FROM dbstat WHERE name = ? AND pagetype = 'leaf'");
        pages.bind(table);
        while (pages.next())
            addCells(cells, file, table, static_cast<std::size_t>(pages.integer(0)) - 1, pageSize);
    }
    return cells;
}

void turnBit(const std::string& path, std::int64_t at, int bit)
{
    std::fstream file(path, std::ios::binary | std::ios::in | std::ios::out);
    file.seekg(at);
    const int byte = file.get();
    file.seekp(at);
    file.put(static_cast<char>(byte ^ 1 << bit));
}

}
