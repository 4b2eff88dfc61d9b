// SPDX-License-Identifier: MIT
#include "ui/charts/curveplot.h"

#include <doctest/doctest.h>
#include <fstream>
#include <QAreaSeries>
#include <QChart>
#include <QCoreApplication>
#include <QGraphicsScene>
#include <QImage>
#include <QLineSeries>
#include <QPainter>

using namespace cradlepost;

namespace {
long residentKilobytes()
{
    std::ifstream file("/proc/self/statm");
    long whole = 0;
    long resident = 0;
    file >> whole >> resident;
    return resident * 4;
}

Curve curveOf(int seed, int points)
{
    Curve curve{.colour = Qt::black, .width = 2.0};
    for (int i = 0; i < points; ++i)
        curve.points << QPointF(i, (i * 7 + seed) % 11);
    return curve;
}

CurveBand bandOf(int seed)
{
    const Curve curve = curveOf(seed, 20);
    CurveBand band{.high = curve.points, .fill = QColor(0, 100, 100, 40)};
    for (const QPointF& point : curve.points)
        band.low << QPointF(point.x(), 0.0);
    return band;
}

void paint(CurvePlot& plot, QImage& image, bool mirrored = false)
{
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setBrush(Qt::red);
    plot.paint(painter, QRectF(20, 20, 360, 160), 8.0, mirrored);
}

int darkColumns(const QImage& image, int from, int to)
{
    int count = 0;
    for (int x = from; x < to; ++x) {
        for (int y = 0; y < image.height(); ++y) {
            if (qGray(image.pixel(x, y)) < 100) {
                ++count;
                break;
            }
        }
    }
    return count;
}
}

TEST_CASE("500 exchanges of data leave as many series as before and no memory behind")
{
    CurvePlot plot(3);
    QImage image(400, 200, QImage::Format_RGB32);
    const auto exchange = [&](int times) {
        for (int i = 0; i < times; ++i) {
            std::vector<Curve> curves;
            for (int c = 0; c < 1 + i % 6; ++c)
                curves.push_back(curveOf(i + c, 20 + i % 5));
            plot.setCurves({0, 25, 0, 12}, {bandOf(i)}, curves);
            paint(plot, image);
            QCoreApplication::processEvents();
        }
    };
    exchange(20);
    const auto series = plot.chart().series().size();
    const auto items = plot.chart().scene()->items().size();
    const long before = residentKilobytes();
    exchange(500);
    CHECK(series == 3 + 6);
    CHECK(plot.chart().series().size() == series);
    CHECK(plot.chart().scene()->items().size() == items);
    CHECK(residentKilobytes() - before < 8 * 1024);
}

TEST_CASE("points are replaced, and curves that are not needed any more are hidden")
{
    CurvePlot plot(0);
    plot.setCurves({0, 25, 0, 12}, {}, {curveOf(1, 26), curveOf(2, 10)});
    plot.setCurves({0, 25, 0, 12}, {}, {curveOf(1, 5)});
    REQUIRE(plot.chart().series().size() == 2);
    CHECK(qobject_cast<QLineSeries*>(plot.chart().series().at(0))->count() == 5);
    CHECK(qobject_cast<QLineSeries*>(plot.chart().series().at(1))->count() == 0);
    CHECK_FALSE(plot.chart().series().at(1)->isVisible());
}

TEST_CASE("a dashed curve is not filled with the brush that the painter came with")
{
    CurvePlot plot(0);
    Curve curve{
        .points = {{0, 0}, {5, 10}, {10, 0}}, .colour = Qt::black, .width = 2.0, .style = Qt::DashLine};
    plot.setCurves({0, 10, 0, 10}, {}, {curve});
    QImage image(400, 200, QImage::Format_RGB32);
    paint(plot, image);
    CHECK(image.pixelColor(200, 140) == QColor(Qt::white)); // below the peak
}

TEST_CASE("a mirrored plot is the mirror image")
{
    CurvePlot plot(0);
    Curve curve{.points = {{0, 5}, {3, 5}}, .colour = Qt::black, .width = 3.0};
    plot.setCurves({0, 10, 0, 10}, {}, {curve});
    QImage image(400, 200, QImage::Format_RGB32);
    paint(plot, image);
    CHECK(darkColumns(image, 20, 130) > 100);
    CHECK(darkColumns(image, 140, 400) == 0);
    paint(plot, image, true);
    CHECK(darkColumns(image, 270, 380) > 100);
    CHECK(darkColumns(image, 0, 260) == 0);
}
