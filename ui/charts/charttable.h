// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QStringList>
#include <vector>

namespace cradlepost {

/// The numbers behind a chart, worded: what the table twin shows and the CSV holds.
struct ChartTable
{
    QStringList headers;
    std::vector<QStringList> rows; ///< as many cells as there are headers
    std::vector<bool> numbers; ///< columns to set flush at the trailing edge; none when empty
};

/// RFC 4180: CRLF, quotes doubled, one header line, UTF-8. Cells that a spreadsheet would take for a
/// formula are preceded by an apostrophe; a plain negative number is not.
QByteArray csvOf(const ChartTable& table);

}
