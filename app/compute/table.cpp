// SPDX-License-Identifier: MIT
#include "app/compute/table.h"

#include "app/compute/options.h"

#include <algorithm>

namespace cradlepost::compute {

namespace {

constexpr std::size_t mostRows = 1'000'000;
constexpr std::int64_t largestCount = std::int64_t{1} << 53;

tl::unexpected<Error> faultAt(const CsvCell& cell, const std::string& what)
{
    return fail(ErrorCode::BadDocument,
        "line " + std::to_string(cell.line) + ", column " + std::to_string(cell.column) + ": " + what);
}

bool isFlag(const std::string& text) { return text == "1" || text == "0" || text == "yes" || text == "no"; }

/** What is wrong with a cell, or nothing. */
std::string faultOf(const ColumnSpec& spec, const std::string& text)
{
    if (text.empty())
        return spec.gaps ? "" : "the cell is empty";
    const auto number = readNumber(text);
    const auto whole = readWhole(text);
    switch (spec.kind) {
    case ColumnKind::Text:
        return "";
    case ColumnKind::Flag:
        return isFlag(text) ? "" : "'" + text + "' is none of 1, 0, yes, no";
    case ColumnKind::Whole:
        return whole ? "" : "'" + text + "' is not a whole number";
    case ColumnKind::Count:
        return whole && *whole >= 0 && *whole <= largestCount
            ? ""
            : "'" + text + "' is not a count (0, 1, 2, ...)";
    case ColumnKind::Number:
        return number ? "" : "'" + text + "' is not a number";
    case ColumnKind::NotNegative:
        return number && *number >= 0 ? "" : "'" + text + "' is not a number of at least 0";
    case ColumnKind::Positive:
        return number && *number > 0 ? "" : "'" + text + "' is not a number above 0";
    case ColumnKind::Chance:
        return number && *number >= 0 && *number <= 1 ? "" : "'" + text + "' is not a number from 0 to 1";
    case ColumnKind::Inside:
        return number && *number > 0 && *number < 1 ? "" : "'" + text + "' is not strictly between 0 and 1";
    }
    return "";
}

std::string namesOf(const std::vector<ColumnSpec>& columns)
{
    std::string names;
    for (const auto& column : columns)
        names += (names.empty() ? "" : ", ") + column.name + (column.optional ? " (optional)" : "");
    return names;
}

Result<void> checkHeader(const CsvTable& csv, const std::vector<ColumnSpec>& columns, bool open)
{
    for (const auto& column : columns) {
        if (csv.find(column.name) < 0 && !column.optional)
            return faultAt(csv.header.front(),
                "the column '" + column.name + "' is missing; the columns are " + namesOf(columns));
    }
    for (const auto& cell : csv.header) {
        const bool known = std::any_of(
            columns.begin(), columns.end(), [&](const ColumnSpec& c) { return c.name == cell.text; });
        if (!known && !open)
            return faultAt(
                cell, "'" + cell.text + "' is no column of this method; the columns are " + namesOf(columns));
    }
    return {};
}

}

Result<Table> Table::read(std::string_view text, const std::vector<ColumnSpec>& columns, bool open)
{
    auto csv = readCsv(text);
    if (!csv)
        return tl::unexpected(csv.error());
    if (auto sound = checkHeader(*csv, columns, open); !sound)
        return tl::unexpected(sound.error());
    if (csv->rows.empty())
        return fail(ErrorCode::BadDocument, "line 1, column 1: there is no row below the header");
    if (csv->rows.size() > mostRows)
        return faultAt(csv->rows[mostRows].front(), "a table has at most 1000000 rows");
    for (const auto& column : columns) {
        const int at = csv->find(column.name);
        if (at < 0)
            continue;
        for (const auto& row : csv->rows) {
            const auto& cell = row[static_cast<std::size_t>(at)];
            if (const auto what = faultOf(column, cell.text); !what.empty())
                return faultAt(cell, "(" + column.name + ") " + what);
        }
    }
    return Table(std::move(*csv));
}

const CsvCell& Table::cell(std::size_t row, const std::string& column) const
{
    return m_csv.rows[row][static_cast<std::size_t>(m_csv.find(column))];
}

tl::unexpected<Error> Table::fault(std::size_t row, const std::string& column, const std::string& what) const
{
    return faultAt(cell(row, column), "(" + column + ") " + what);
}

std::vector<std::optional<double>> Table::gapped(const std::string& column) const
{
    std::vector<std::optional<double>> values;
    const int at = m_csv.find(column);
    if (at < 0)
        return values;
    values.reserve(size());
    for (const auto& row : m_csv.rows)
        values.push_back(readNumber(row[static_cast<std::size_t>(at)].text));
    return values;
}

std::vector<double> Table::numbers(const std::string& column) const
{
    std::vector<double> values;
    for (const auto& value : gapped(column))
        values.push_back(value.value_or(0));
    return values;
}

std::vector<std::int64_t> Table::counts(const std::string& column) const
{
    std::vector<std::int64_t> values;
    for (const auto& text : texts(column))
        values.push_back(readWhole(text).value_or(0));
    return values;
}

std::vector<std::string> Table::texts(const std::string& column) const
{
    std::vector<std::string> values;
    const int at = m_csv.find(column);
    if (at < 0)
        return values;
    values.reserve(size());
    for (const auto& row : m_csv.rows)
        values.push_back(row[static_cast<std::size_t>(at)].text);
    return values;
}

std::vector<bool> Table::flags(const std::string& column) const
{
    std::vector<bool> values;
    for (const auto& text : texts(column))
        values.push_back(text == "1" || text == "yes");
    return values;
}

Result<std::vector<stats::Tally>> Table::tallies(const std::string& x, const std::string& n) const
{
    const auto events = counts(x);
    const auto sizes = counts(n);
    std::vector<stats::Tally> rows;
    rows.reserve(size());
    for (std::size_t i = 0; i < size(); ++i) {
        if (events[i] > sizes[i])
            return fault(i, x, std::to_string(events[i]) + " of " + std::to_string(sizes[i]) + " cannot be");
        rows.push_back({events[i], sizes[i]});
    }
    return rows;
}

}
