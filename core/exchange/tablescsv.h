// SPDX-License-Identifier: MIT
#pragma once

#include "core/exchange/tables.h"

namespace cradlepost {

/**
 * All tables in one (RFC 4180 knows only one a file), ready for a pivot: table, row, column, value, unit; one
 * line a cell that is known, rows counted from 1. First comes the table "about", one row, then "cautions"
 * with a column "text". Ids stand as they are; flags are 0 or 1.
 *
 * A text that a spreadsheet would take for a formula (begins with = + - @, tab or carriage return) is
 * preceded by an apostrophe; numbers never are.
 */
std::string csvOfTables(const TableBook& book);

}
