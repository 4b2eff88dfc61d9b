// SPDX-License-Identifier: MIT
#include "core/exchange/tablesjson.h"

#include "core/exchange/tablecell.h"
#include "core/ledger/canonical.h"

namespace cradlepost {

namespace {

std::string quoted(const std::string& text)
{
    std::string out;
    appendCanonical(out, text);
    return out;
}

std::string jsonOf(const Cell& cell, ColumnKind kind)
{
    if (const auto* flag = std::get_if<std::int64_t>(&cell); flag != nullptr && kind == ColumnKind::Flag)
        return *flag != 0 ? "true" : "false";
    const std::string text = cellText(cell);
    if (std::holds_alternative<std::int64_t>(cell))
        return text;
    if (std::holds_alternative<std::monostate>(cell) || std::holds_alternative<double>(cell))
        return text.empty() ? "null" : text;
    return quoted(text);
}

template <class List, class Word>
std::string joined(const List& list, const std::string& between, const Word& word)
{
    std::string out;
    for (const auto& one : list)
        out += (out.empty() ? std::string() : between) + word(one);
    return out;
}

std::string jsonOf(const TablesAbout& about)
{
    const std::string lines = joined(aboutLines(about), ",\n  ",
        [](const AboutLine& line) { return quoted(line.key) + ": " + jsonOf(line.value, ColumnKind::Text); });
    return "{\n  " + lines + ",\n  \"cautions\": [" + joined(about.cautions, ", ", quoted) + "]}";
}

std::string jsonOf(const Column& column)
{
    return "{\"id\": " + quoted(column.id) + ", \"kind\": " + quoted(kindName(column.kind))
        + ", \"unit\": " + quoted(column.unit) + ", \"decimals\": " + std::to_string(column.decimals) + '}';
}

std::string rowText(const DataTable& table, const std::vector<Cell>& row)
{
    std::string out;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const Cell cell = i < row.size() ? row[i] : Cell();
        out += (i == 0 ? "" : ", ") + jsonOf(cell, table.columns[i].kind);
    }
    return '[' + out + ']';
}

std::string jsonOf(const DataTable& table)
{
    const std::string columns
        = joined(table.columns, ",\n    ", [](const Column& column) { return jsonOf(column); });
    const std::string rows
        = joined(table.rows, ",\n    ", [&](const std::vector<Cell>& row) { return rowText(table, row); });
    return "{\"id\": " + quoted(table.id) + ",\n   \"columns\": [\n    " + columns + "],\n   \"rows\": ["
        + (rows.empty() ? "" : "\n    " + rows) + "]}";
}

}

std::string jsonOfTables(const TableBook& book)
{
    return "{\"about\": " + jsonOf(book.about) + ",\n \"tables\": [\n  "
        + joined(book.tables, ",\n  ", [](const DataTable& table) { return jsonOf(table); }) + "]}\n";
}

}
