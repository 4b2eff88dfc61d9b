// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/store.h"
#include "ui/charts/charttable.h"
#include "ui/report/writereport.h"
#include "ui/text/tabletext.h"

namespace cradlepost {

// What every report says of itself, and how its tables are worded.

/** The cautions that stand under every report. */
std::vector<QString> reportCautions();

/**
 * What the report can be checked by: the head of the chain that wrote last, by the time of its last record;
 * of those that wrote for `unit`, of all when it is empty. Without records only when it was made.
 */
Result<ReportSeal> reportSeal(
    const Store& store, const TimeText& times, Instant now, const std::string& unit = {});

/** Cautions, seal, language and direction. */
void signDocument(ReportDocument& document, const ReportSeal& seal, const Language& language);

/** Tables with the reader's words; what `tableText` is made from must outlive them. */
ReportTables reportTables(TablesAbout about, std::vector<DataTable> tables, const ReportSeal& seal,
    const TableText& tableText, const Language& language);

/** A table in words; with `where` only the rows whose column of that id says `is`. */
ChartTable wordedTable(
    const TableText& text, const DataTable& table, std::string_view where = {}, std::string_view is = {});
/** The same of the one of that id; empty when there is none. */
ChartTable wordedTable(const TableText& text, const std::vector<DataTable>& tables, std::string_view id,
    std::string_view where = {}, std::string_view is = {});

}
