// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/datatable.h"
#include "core/review/month.h"

namespace cradlepost {

// How the tables of a review are written: columns by kind, rows cell by cell.

inline Column codeColumn(const char* id) { return {.id = id, .kind = ColumnKind::Code}; }
inline Column textColumn(const char* id) { return {.id = id, .kind = ColumnKind::Text}; }
inline Column countColumn(const char* id) { return {.id = id, .kind = ColumnKind::Count}; }
inline Column dayColumn(const char* id) { return {.id = id, .kind = ColumnKind::Day}; }
inline Column timeColumn(const char* id) { return {.id = id, .kind = ColumnKind::Time}; }
inline Column flagColumn(const char* id) { return {.id = id, .kind = ColumnKind::Flag}; }
inline Column shareColumn(const char* id) { return {.id = id, .kind = ColumnKind::Share, .decimals = 3}; }
inline Column numberColumn(const char* id, int decimals, const char* unit = "")
{
    return {.id = id, .kind = ColumnKind::Number, .unit = unit, .decimals = decimals};
}

using Cells = std::vector<Cell>;

inline Cell cell(std::string text) { return Cell(std::move(text)); }
inline Cell cell(const char* text) { return Cell(std::string(text)); }
inline Cell cell(std::int64_t count) { return Cell(count); }
inline Cell cell(int count) { return Cell(std::int64_t{count}); }
inline Cell cell(std::size_t count) { return Cell(static_cast<std::int64_t>(count)); }
inline Cell cell(double number) { return Cell(number); }
inline Cell cell(bool flag) { return Cell(std::int64_t{flag ? 1 : 0}); }
inline Cell cell(Date day) { return Cell(day); }
inline Cell cell(Instant time) { return Cell(time); }
template <class T> Cell cell(const std::optional<T>& value) { return value ? cell(*value) : Cell(); }
inline Cell cell(const std::optional<CannotSay>& why) { return why ? cell(codeName(*why)) : Cell(); }
inline Cell cell(const std::optional<Decimal>& value) { return value ? cell(value->toDouble()) : Cell(); }

/** x / n; nothing when n = 0. */
inline Cell shareCell(stats::Tally tally)
{
    return tally.n == 0 ? Cell() : cell(static_cast<double>(tally.x) / static_cast<double>(tally.n));
}

/** x, n, share, low, high. */
inline void addShare(Cells& row, const Share& share)
{
    row.insert(row.end(), {cell(share.tally.x), cell(share.tally.n), shareCell(share.tally)});
    row.push_back(share.interval ? cell(share.interval->low) : Cell());
    row.push_back(share.interval ? cell(share.interval->high) : Cell());
}

std::vector<Column> shareColumns(const char* x, const char* n, const char* share);
/** The columns of `summary` and `trust`: one row a figure. */
std::vector<Column> figureColumns();
Cells figureRow(const char* figure, const Share& share, std::optional<CannotSay> why = {});
Cells figureRow(
    const char* figure, std::optional<double> value, const char* unit, std::optional<CannotSay> why = {});

/** Code, section and severity of an item. */
void addItem(Cells& row, const ReviewItem& item);

// The tables of each part, see monthTables.
void addReadinessTables(std::vector<DataTable>& tables, const MonthReview& review);
void addCourseTables(std::vector<DataTable>& tables, const MonthReview& review);
void addPatternTables(std::vector<DataTable>& tables, const MonthReview& review);
void addReadingTables(std::vector<DataTable>& tables, const MonthReview& review);
void addGapTables(std::vector<DataTable>& tables, const MonthReview& review);
void addTrustTables(std::vector<DataTable>& tables, const MonthReview& review);

}
