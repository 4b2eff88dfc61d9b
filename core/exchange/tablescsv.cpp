// SPDX-License-Identifier: MIT
#include "core/exchange/tablescsv.h"

#include "core/base/csv.h"
#include "core/exchange/tablecell.h"

namespace cradlepost {

namespace {
std::string harmless(const Cell& cell)
{
    const std::string text = cellText(cell);
    constexpr std::string_view formulaSigns = "=+-@\t\r";
    const bool isText = std::holds_alternative<std::string>(cell);
    return isText && !text.empty() && formulaSigns.find(text.front()) != std::string_view::npos ? '\'' + text
                                                                                                : text;
}

void append(
    std::string& out, const std::string& table, std::size_t row, const Column& column, const Cell& cell)
{
    const std::string value = harmless(cell);
    if (!value.empty())
        appendCsvLine(out, {table, std::to_string(row), column.id, value, column.unit});
}
}

std::string csvOfTables(const TableBook& book)
{
    std::string out;
    appendCsvLine(out, {"table", "row", "column", "value", "unit"});
    for (const AboutLine& line : aboutLines(book.about))
        append(out, "about", 1, {.id = line.key}, line.value);
    for (std::size_t i = 0; i < book.about.cautions.size(); ++i)
        append(out, "cautions", i + 1, {.id = "text"}, book.about.cautions[i]);
    for (const DataTable& table : book.tables) {
        for (std::size_t row = 0; row < table.rows.size(); ++row) {
            for (std::size_t i = 0; i < table.columns.size() && i < table.rows[row].size(); ++i)
                append(out, table.id, row + 1, table.columns[i], table.rows[row][i]);
        }
    }
    return out;
}

}
