// SPDX-License-Identifier: MIT
#pragma once

#include "ui/report/reportdocument.h"
#include "ui/report/strip.h"

namespace cradlepost {

class Paper;

/// A chart with its title and small print; a list longer than a page goes on in a further strip.
/// Paper and content must outlive the strips.
void appendChart(std::vector<Strip>& strips, const Paper& paper, const ChartContent& content);

/// Whether two charts can stand side by side on this paper.
bool fitBeside(const Paper& paper, const ChartContent& one, const ChartContent& other);

/// The first leading.
void appendChartsBeside(
    std::vector<Strip>& strips, const Paper& paper, const ChartContent& one, const ChartContent& other);

}
