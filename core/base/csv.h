// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace cradlepost {

/** One field and where it stood, both counted from 1; the column counts characters, not bytes. */
struct CsvCell
{
    std::string text;
    int line = 0;
    int column = 0;
};

struct CsvTable
{
    std::vector<CsvCell> header; ///< names: not empty, none twice
    std::vector<std::vector<CsvCell>> rows; ///< each with as many cells as the header

    /** Position of the column of that name, or -1. */
    [[nodiscard]] int find(std::string_view name) const;
};

/**
 * Reads a table with a header line (RFC 4180): fields parted by `separator`, lines by CR LF or LF, a field in
 * double quotes may hold separators, line ends and doubled quotes. UTF-8, a byte order mark is passed over.
 * Blanks around an unquoted field are dropped; wholly empty lines are passed over.
 *
 * The error (BadDocument) says line and column: a quote inside an unquoted field, text behind a closing
 * quote, a quote that never closes, a lone CR, a control character, broken UTF-8, too many or too few fields,
 * a header name that is empty or comes twice, no header at all.
 */
Result<CsvTable> readCsv(std::string_view text, char separator = ',');

/** The same fields line by line, without a word on header and width, for who tells all their faults at once. */
Result<std::vector<std::vector<CsvCell>>> readCsvLines(std::string_view text, char separator = ',');

/** The field as it is written, quoted where it needs to be. */
std::string csvField(std::string_view text, char separator = ',');

/** Appends one line, ended by CR LF. */
void appendCsvLine(std::string& out, const std::vector<std::string>& fields, char separator = ',');

}
