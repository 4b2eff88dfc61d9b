// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "ui/charts/chartfigure.h"
#include "ui/charts/charttable.h"

#include <QSize>

namespace cradlepost {

/// All that one chart on a page shows.
struct ChartContent
{
    QString title; ///< what was found, as a sentence
    QString finding; ///< more of it, for screen readers; may be empty
    QString smallPrint; ///< n, and the rule of the limits
    QString emptyText; ///< why there is nothing; a plain sentence of its own when empty
    QString fileName; ///< offered for saving, without folder and ending
    ChartFigure figure;
    ChartTable table;
};

/// Writes PNG (twice the size), SVG or CSV by the ending of `path`: .png, .svg, .csv in any case of letters.
/// The picture holds title, chart and small print on the theme's sheet, `width` wide in the theme's pixels.
/// The file is replaced whole or not at all. Errors: InvalidArgument for another ending; ReadOnly, DiskFull,
/// Io.
Result<void> saveChart(const ChartContent& content, const QString& path, int width, const Theme& theme,
    Qt::LayoutDirection direction = Qt::LeftToRight);

}
