// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/store.h"
#include "ui/report/district/districtscene.h"
#include "ui/report/writereport.h"

namespace cradlepost {

/** The report of a comparison of units, in words and charts. */
ReportDocument districtDocument(const DistrictScene& scene, const ReportSeal& seal);

/** Its figures with the reader's words; `scene` must outlive it. */
ReportTables districtReportTables(const DistrictScene& scene, const ReportSeal& seal);

/** Writes both by the ending of `path`: see writeReport. */
Result<void> writeDistrictReport(const Store& store, const DistrictScene& scene, const QString& path);

}
