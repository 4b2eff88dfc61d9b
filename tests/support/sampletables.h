// SPDX-License-Identifier: MIT
#pragma once

#include "core/exchange/tables.h"

namespace cradlepost::test {

/** Two invented tables with every kind of column: a cell known, one not, one hostile. */
TableBook aTableBook();

/** A text that would break out of HTML, CSV, JSON, a formula or a line. */
std::string hostileText();

/** `rows` numbered rows: "row 17", 17, 17 / 200. */
DataTable aLongTable(int rows);

}
