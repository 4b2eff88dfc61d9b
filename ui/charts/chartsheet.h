// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/chartsaving.h"
#include "ui/theme/theme.h"

#include <QRect>

namespace cradlepost {

/// Title, chart and small print below one another, as a saved picture and a report show them.
int chartSheetHeight(
    const ChartContent& content, int width, const Theme& theme, Qt::LayoutDirection direction);

/// From the top of `rect`, no background; see paintChart about the painter's units.
void paintChartSheet(QPainter& painter, const QRect& rect, const ChartContent& content, const Theme& theme,
    Qt::LayoutDirection direction);

}
