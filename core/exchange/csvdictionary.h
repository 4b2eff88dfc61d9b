// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <string>
#include <vector>

namespace cradlepost {

/** One column of one table of the plain CSV export. */
struct CsvColumn
{
    std::string table;
    std::string column;
    std::string type; ///< id, text, code, integer, decimal, date, time (UTC, ISO 8601), flag (0, 1), marks
    std::string unit; ///< of a number: itself, or the column of the same row that names it; empty: none
    std::string meaning; ///< in English
    std::vector<std::string> codes; ///< of a code: what may stand there
};

/** The data dictionary, as it comes with the program: the columns of all tables in their order. */
const std::vector<CsvColumn>& csvDictionary();
/** Names of the tables, in the order of the dictionary. */
std::vector<std::string> csvTableNames();
/** The dictionary as a table of its own: table, column, type, unit, meaning, codes. */
std::string csvDictionaryText();

}
