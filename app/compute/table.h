// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/csv.h"
#include "core/stats/tally.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace cradlepost::compute {

/** What a column holds; checked cell by cell, so that a fault has its line and column. */
enum class ColumnKind {
    Text, ///< not empty
    Number,
    NotNegative,
    Positive,
    Chance, ///< 0..1
    Inside, ///< strictly between 0 and 1
    Whole,
    Count, ///< whole, 0..2^53
    Flag, ///< 1, 0, yes, no
};

struct ColumnSpec
{
    std::string name;
    ColumnKind kind = ColumnKind::Number;
    std::string meaning;
    bool optional = false; ///< the column may be missing
    bool gaps = false; ///< its cells may be empty
};

/**
 * A user's table read against the columns of a method. All faults are BadDocument and begin with "line L,
 * column C". Getters take the name of a column that the method has declared.
 */
class Table
{
public:
    /** Refuses unknown and missing columns, faulty cells, and more than a million rows; `open` allows more
     * columns. */
    static Result<Table> read(
        std::string_view text, const std::vector<ColumnSpec>& columns, bool open = false);

    [[nodiscard]] std::size_t size() const { return m_csv.rows.size(); }
    [[nodiscard]] bool has(const std::string& column) const { return m_csv.find(column) >= 0; }
    [[nodiscard]] int line(std::size_t row) const { return m_csv.rows[row].front().line; }
    [[nodiscard]] const CsvTable& csv() const { return m_csv; }

    /** Cells as numbers; an empty one (where gaps are allowed) as nothing. A column that is missing is empty.
     */
    [[nodiscard]] std::vector<std::optional<double>> gapped(const std::string& column) const;
    [[nodiscard]] std::vector<double> numbers(const std::string& column) const;
    [[nodiscard]] std::vector<std::int64_t> counts(const std::string& column) const;
    [[nodiscard]] std::vector<std::string> texts(const std::string& column) const;
    [[nodiscard]] std::vector<bool> flags(const std::string& column) const;
    /** Pairs of two count columns; fails with the place of the first x above its n. */
    [[nodiscard]] Result<std::vector<stats::Tally>> tallies(
        const std::string& x = "x", const std::string& n = "n") const;
    /** A fault in a cell of this table. */
    [[nodiscard]] tl::unexpected<Error> fault(
        std::size_t row, const std::string& column, const std::string& what) const;

private:
    explicit Table(CsvTable csv)
        : m_csv(std::move(csv))
    {
    }
    [[nodiscard]] const CsvCell& cell(std::size_t row, const std::string& column) const;
    CsvTable m_csv;
};

}
