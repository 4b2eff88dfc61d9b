// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/exchange/tables.h"

namespace cradlepost {

/**
 * A work book: the sheet "about" with a line a key, then one sheet a table with real types (numbers, shares
 * as percent, days and moments as dates, flags as TRUE and FALSE), a fixed heading and a filter. Numbers keep
 * 16 digits, one less than CSV and JSON: more the library does not write. No merged
 * cells, no formulas: a text that begins with = stays a text. A text longer than the 32767 characters that a
 * cell takes is cut and ends in "...".
 *
 * The file is replaced whole or not at all. Errors: as WholeFile; DiskFull also when the folder for temporary
 * files is full; InvalidArgument for a table of more than 1048575 rows or 16384 columns.
 */
Result<void> writeXlsx(const TableBook& book, const TableWords& words, const std::string& path);

}
