// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/span.h"
#include "core/store/store.h"

namespace cradlepost {

struct CsvExportRequest
{
    std::string folder; ///< made when it is not there
    std::vector<std::string> units; ///< ids; empty: all
    std::optional<ReviewSpan> span; ///< shifts that began in it, gaps open in it; none: everything
};

struct CsvExported
{
    std::string table;
    std::int64_t rows = 0;
};

/**
 * Rounds, answers, readings, gaps and stock as plain tables (RFC 4180, UTF-8, CR LF), one file a table, and
 * beside them dictionary.csv, which says what each column holds (csvDictionary). Moments are UTC, days are
 * the unit's. What counts now: amended rounds by their last amendment. No person is named and no remark is
 * written. Nothing appears before everything is written; refuses a folder that holds files of these names.
 */
Result<std::vector<CsvExported>> exportCsv(const Store& store, const CsvExportRequest& request);

}
