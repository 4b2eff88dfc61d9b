// SPDX-License-Identifier: MIT
#include "ui/charts/chartsheet.h"
#include "ui/charts/pencil.h"

#include <algorithm>
#include <QPainter>

namespace cradlepost {

namespace {
struct Parts
{
    int title = 0;
    int chart = 0;
    int print = 0;
    int gap = 0;

    int height() const { return title + gap + chart + (print > 0 ? gap + print : 0); }
};

Parts partsOf(const ChartContent& content, const Stage& stage)
{
    const int width = stage.size.width();
    return {.title = stage.ink(content.title, TextRole::Body, TextWeight::SemiBold).height(width),
        .chart = chartHeight(content.figure, width, stage.theme, stage.direction),
        .print = stage.heightOf(content.smallPrint, width),
        .gap = stage.theme.space(Space::Near)};
}
}

int chartSheetHeight(
    const ChartContent& content, int width, const Theme& theme, Qt::LayoutDirection direction)
{
    const InkCache texts;
    return partsOf(content, {{width, 0}, theme, direction, texts}).height();
}

void paintChartSheet(QPainter& painter, const QRect& rect, const ChartContent& content, const Theme& theme,
    Qt::LayoutDirection direction)
{
    const InkCache texts;
    const Stage stage{rect.size(), theme, direction, texts};
    const Parts parts = partsOf(content, stage);
    painter.save();
    painter.translate(rect.topLeft());
    const int width = rect.width();
    painter.setPen(theme.roles.ink);
    stage.ink(content.title, TextRole::Body, TextWeight::SemiBold).draw(painter, {0, 0, width, parts.title});
    const int top = parts.title + parts.gap;
    paintChart(painter, QRectF(0, top, width, parts.chart), content.figure, theme, direction);
    painter.setPen(theme.roles.inkHint);
    stage.ink(content.smallPrint).draw(painter, {0, top + parts.chart + parts.gap, width, parts.print});
    painter.restore();
}

}
