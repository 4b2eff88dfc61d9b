// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/store.h"
#include "ui/report/month/monthscene.h"
#include "ui/report/writereport.h"

namespace cradlepost {

/** The report of one unit's month, in words and charts. */
ReportDocument monthDocument(const MonthScene& scene, const Unit& unit, const ReportSeal& seal);

/** Its figures with the reader's words; `scene` must outlive it. */
ReportTables monthReportTables(const MonthScene& scene, const Unit& unit, const ReportSeal& seal);

/** Writes both by the ending of `path`: see writeReport. */
Result<void> writeMonthReport(const Store& store, const MonthScene& scene, const QString& path);

}
