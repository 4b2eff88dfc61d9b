// SPDX-License-Identifier: MIT
#pragma once

#include "core/exchange/wholefile.h"

#include <fstream>
#include <vector>

namespace cradlepost {

/** One table of the plain CSV export on its way to disk, row by row: it may be larger than memory. */
class CsvTableFile
{
public:
    /** A draft of FOLDER/TABLE.csv, with the columns of the dictionary as its first line. */
    static Result<CsvTableFile> begin(const std::string& folder, const std::string& table);

    /**
     * One row: a cell a column, in the order of the dictionary, empty where nothing is known. A text that a
     * spreadsheet would run gets an apostrophe in front.
     */
    Result<void> add(std::vector<std::string> cells);
    /** Gives the file its name. */
    Result<void> publish();
    [[nodiscard]] std::int64_t rows() const { return m_rows; }

private:
    CsvTableFile(std::string table, WholeFile file);
    Result<void> flush();

    std::string m_table;
    WholeFile m_file;
    std::ofstream m_out;
    std::vector<bool> m_isText; ///< a column
    std::string m_waiting;
    std::int64_t m_rows = 0;
};

}
