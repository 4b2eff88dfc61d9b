// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/charttable.h"
#include "ui/report/strip.h"

namespace cradlepost {

class Paper;

/// Title, heading and rows, each row a strip; the heading is repeated on each page. A table too wide for the
/// page goes on below, with its first column again; a row too high for a page goes on in the next row.
/// Nothing is cut. The paper must outlive the strips.
void appendTable(
    std::vector<Strip>& strips, const Paper& paper, const QString& title, const ChartTable& table);

}
