// SPDX-License-Identifier: MIT
#pragma once

#include "core/exchange/tables.h"

namespace cradlepost {

/**
 * {"about": {unit, place, firstDay, lastDay, madeAt, zone, station, ledgerHead, program, cautions: [...]},
 *  "tables": [{id, columns: [{id, kind, unit, decimals}], rows: [[...]]}]}
 *
 * Members stand in this order, one row a line. Numbers in full precision; shares from 0 to 1; flags true or
 * false; days "2026-10-12"; moments UTC, "2026-10-12T02:30:00Z"; null where a figure cannot be said.
 */
std::string jsonOfTables(const TableBook& book);

}
