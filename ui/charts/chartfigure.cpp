// SPDX-License-Identifier: MIT
#include "ui/charts/chartfigure.h"
#include "ui/charts/drawing.h"

#include <algorithm>
#include <QPainter>

namespace cradlepost {

namespace {
struct Emptiness
{
    bool operator()(const ControlFigure& figure) const
    {
        return std::none_of(figure.series.begin(), figure.series.end(), [](const ControlSeries& series) {
            return std::any_of(series.points.begin(), series.points.end(),
                [](const ControlPoint& point) { return point.value.has_value(); });
        });
    }
    bool operator()(const SurvivalFigure& figure) const
    {
        return std::none_of(figure.curves.begin(), figure.curves.end(),
            [](const SurvivalCurve& curve) { return !curve.steps.empty() || curve.end > 0.0; });
    }
    bool operator()(const HistogramFigure& figure) const { return figure.bars.empty(); }
    bool operator()(const FunnelFigure& figure) const { return figure.points.empty(); }
    bool operator()(const BarsFigure& figure) const { return figure.items.empty(); }
    bool operator()(const ShareRowsFigure& figure) const { return figure.rows.empty(); }
    bool operator()(const CalendarFigure& figure) const { return figure.days.empty(); }
    bool operator()(const MapFigure& figure) const { return figure.rows.empty() || figure.columns.empty(); }
    bool operator()(const SmallMultiplesFigure& figure) const { return figure.panels.empty(); }
};
}

bool isEmpty(const ChartFigure& figure) { return std::visit(Emptiness(), figure); }

int chartHeight(const ChartFigure& figure, int width, const Theme& theme, Qt::LayoutDirection direction)
{
    const InkCache texts;
    const Stage stage{{width, 0}, theme, direction, texts};
    if (isEmpty(figure))
        return stage.heightOf(nothingToDraw(), width, TextRole::Body);
    return makeDrawing(figure)->heightFor(width, stage);
}

int chartLeastWidth(const ChartFigure& figure, const Theme& theme, Qt::LayoutDirection direction)
{
    const InkCache texts;
    const Stage stage{{}, theme, direction, texts};
    if (isEmpty(figure))
        return stage.ink(nothingToDraw(), TextRole::Body).widestWord();
    return makeDrawing(figure)->leastWidth(stage);
}

void paintChart(QPainter& painter, const QRectF& rect, const ChartFigure& figure, const Theme& theme,
    Qt::LayoutDirection direction)
{
    const InkCache texts;
    const Stage stage{rect.size().toSize(), theme, direction, texts};
    painter.save();
    painter.translate(rect.topLeft());
    painter.setRenderHint(QPainter::Antialiasing);
    if (isEmpty(figure)) {
        painter.setPen(theme.roles.inkSoft);
        stage.ink(nothingToDraw(), TextRole::Body).draw(painter, QRect({}, stage.size));
    } else {
        makeDrawing(figure)->paint(painter, stage);
    }
    painter.restore();
}

}
