// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/district.h"
#include "core/review/tablerow.h"

namespace cradlepost {

std::string joined(const std::vector<std::string>& parts, const char* between);

// The tables of each part, see districtTables.
void addVisitTables(std::vector<DataTable>& tables, const DistrictReview& review);
void addStockTables(std::vector<DataTable>& tables, const DistrictReview& review);
void addComparisonTables(std::vector<DataTable>& tables, const DistrictReview& review);
void addReportingTable(std::vector<DataTable>& tables, const DistrictReview& review);

}
