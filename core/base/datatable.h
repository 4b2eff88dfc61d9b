// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/calendar.h"

#include <string>
#include <variant>
#include <vector>

namespace cradlepost {

/** What the cells of a column are; monostate in a cell always means "not known" or "cannot be said". */
enum class ColumnKind {
    Text, ///< std::string as it stands: a name, a remark
    Code, ///< std::string: a stable code or id that the reader's language has a word for
    Count, ///< std::int64_t
    Number, ///< double
    Share, ///< double, 0 to 1
    Day, ///< Date
    Time, ///< Instant
    Flag, ///< std::int64_t, 0 or 1
};

struct Column
{
    std::string id; ///< camelCase, stable
    ColumnKind kind = ColumnKind::Text;
    std::string unit; ///< "h", "°C"; empty: none
    int decimals = 0; ///< to show; the cell keeps full precision
};

using Cell = std::variant<std::monostate, std::int64_t, double, std::string, Date, Instant>;

/** Figures with their columns: what pages, reports and exports print, so that all of them show the same. */
struct DataTable
{
    std::string id; ///< kebab-case, stable
    std::vector<Column> columns;
    std::vector<std::vector<Cell>> rows; ///< one cell a column
};

}
