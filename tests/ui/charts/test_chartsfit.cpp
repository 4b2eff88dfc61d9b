// SPDX-License-Identifier: MIT
#include "tests/support/qstringprint.h"
#include "tests/ui/charts/samplecharts.h"
#include "tests/ui/charts/textrecorder.h"
#include "ui/charts/drawing.h"
#include "ui/theme/theme.h"

#include <doctest/doctest.h>
#include <QPainter>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {
QString faultsOf(const ChartFigure& figure, int width, const Theme& theme, Qt::LayoutDirection direction)
{
    const QSize size(width, chartHeight(figure, width, theme, direction));
    TextRecorder sheet(size);
    QPainter painter(&sheet);
    paintChart(painter, QRectF({}, size), figure, theme, direction);
    painter.end();
    return sheet.faults().join(u'\n');
}
}

TEST_CASE("no word of a chart is cut or lies on another one, at any size, width, wording and direction")
{
    for (const double scale : {1.0, 2.0}) {
        const Theme theme = makeTheme(Scheme::Light, scale);
        for (const Wording wording : {Wording::English, Wording::Hindi}) {
            for (const ChartContent& content : sampleCharts(wording)) {
                for (const auto direction : {Qt::LeftToRight, Qt::RightToLeft}) {
                    const int least = chartLeastWidth(content.figure, theme, direction);
                    for (const int width : {least, least + theme.px(150), least + theme.px(500)}) {
                        CAPTURE(content.title);
                        CAPTURE(width);
                        CAPTURE(scale);
                        CAPTURE(static_cast<int>(direction));
                        CHECK(faultsOf(content.figure, width, theme, direction) == QString());
                    }
                }
            }
        }
    }
}

TEST_CASE("every chart fits a ward PC at twice the text size")
{
    const Theme theme = makeTheme(Scheme::Light, 2.0);
    for (const ChartContent& content : sampleCharts(Wording::Hindi)) {
        CAPTURE(content.title);
        CHECK(chartLeastWidth(content.figure, theme) < 1366 - 260);
    }
}

TEST_CASE("items lie inside the drawing, one a thing that can be read")
{
    const Theme theme = makeTheme(Scheme::Light);
    const InkCache texts;
    const std::vector<int> counts{26, 52, 27, 12, 8, 6, 6, 31, 54, 8};
    const auto charts = sampleCharts();
    REQUIRE(charts.size() == counts.size());
    for (std::size_t i = 0; i < charts.size(); ++i) {
        CAPTURE(charts[i].title);
        const Stage stage{{700, chartHeight(charts[i].figure, 700, theme)}, theme, Qt::LeftToRight, texts};
        const auto drawing = makeDrawing(charts[i].figure);
        CHECK(drawing->itemCount() == counts[i]);
        const auto boxes = drawing->itemBoxes(stage);
        REQUIRE(static_cast<int>(boxes.size()) == counts[i]);
        for (int item = 0; item < counts[i]; ++item) {
            CHECK(QRect({}, stage.size).contains(boxes[static_cast<std::size_t>(item)].center()));
            CHECK_FALSE(drawing->itemText(item).isEmpty());
        }
    }
}

TEST_CASE("a chart is drawn with lines and letters, never with a picture")
{
    const Theme theme = makeTheme(Scheme::Light);
    for (const ChartContent& content : sampleCharts()) {
        CAPTURE(content.title);
        TextRecorder sheet({700, 400});
        QPainter painter(&sheet);
        paintChart(painter, QRectF(0, 0, 700, 400), content.figure, theme);
        painter.end();
        CHECK(sheet.pictures() == 0);
        CHECK(sheet.texts().size() > 5);
        CHECK(sheet.strokes() > 5);
    }
}

TEST_CASE("a figure without data says so in words")
{
    const Theme theme = makeTheme(Scheme::Light);
    const std::vector<ChartFigure> figures{ControlFigure{}, SurvivalFigure{}, HistogramFigure{},
        FunnelFigure{}, BarsFigure{}, ShareRowsFigure{}, CalendarFigure{}, MapFigure{},
        SmallMultiplesFigure{}, ControlFigure{.series = {{.points = {{.label = QStringLiteral("1 Oct")}}}}}};
    for (const ChartFigure& figure : figures) {
        CAPTURE(figure.index());
        CHECK(isEmpty(figure));
        TextRecorder sheet({400, 100});
        QPainter painter(&sheet);
        paintChart(painter, QRectF(0, 0, 400, 100), figure, theme);
        painter.end();
        REQUIRE_FALSE(sheet.texts().empty());
        CHECK(sheet.texts().front().text.startsWith(QStringLiteral("There is nothing")));
    }
    for (const ChartContent& content : sampleCharts())
        CHECK_FALSE(isEmpty(content.figure));
}
