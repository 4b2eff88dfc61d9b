// SPDX-License-Identifier: MIT
#include "ui/report/month/monthsheets.h"

#include <algorithm>
#include <QCoreApplication>

namespace cradlepost {

namespace {

double toDouble(Decimal value) { return static_cast<double>(value.thousandths) / 1000.0; }

struct ReadingSheet
{
    Q_DECLARE_TR_FUNCTIONS(ReadingSheet)
public:
    ReadingSheet(const MonthScene& theScene, const ReadingReview& theReading)
        : scene(theScene)
        , reading(theReading)
        , name(theScene.itemName(theReading.item))
    {
    }

    const MonthScene& scene;
    const ReadingReview& reading;
    QString name;

    [[nodiscard]] QString value(double v) const { return scene.figures().number(v, reading.decimals); }

    [[nodiscard]] QString limits() const
    {
        const QString unit = qs(reading.unit);
        if (reading.low && reading.high)
            //: limits of a reading: %1 and %2 numbers, %3 a unit
            return tr("%1 to %2 %3").arg(value(toDouble(*reading.low)), value(toDouble(*reading.high)), unit);
        if (reading.low)
            return tr("at least %1 %2").arg(value(toDouble(*reading.low)), unit);
        return reading.high ? tr("at most %1 %2").arg(value(toDouble(*reading.high)), unit) : QString();
    }

    [[nodiscard]] QString title() const
    {
        return tr("%1: outside its limits in %2 readings")
            .arg(name, scene.figures().of(reading.outside.tally));
    }

    [[nodiscard]] QString smallPrint() const
    {
        QString text = tr("Limits %1. n = %2").arg(limits(), scene.figures().count(reading.outside.tally.n));
        if (reading.median)
            text = tr("%1, median %2 %3").arg(text, value(*reading.median), qs(reading.unit));
        if (reading.chart)
            return tr("%1. Dashed: mean ± 2.66 mean moving ranges (XmR chart); neighbouring readings share "
                      "their weather, so "
                      "these limits are narrow.")
                .arg(text);
        return text + QLatin1Char('.');
    }

    [[nodiscard]] ControlSeries series() const
    {
        ControlSeries out{.name = name, .points = {}};
        for (const ReadingPoint& point : reading.points)
            out.points.push_back({.label = scene.times().day(point.shift->date),
                .value = toDouble(point.value),
                .signal = point.beyond,
                //: %1 a shift, %2 a number, %3 its unit
                .text = tr("%1: %2 %3")
                            .arg(scene.times().shift(*point.shift), value(toDouble(point.value)),
                                qs(reading.unit))});
        if (!reading.chart)
            return out;
        for (const stats::ChartPoint& judged : reading.chart->values.points) {
            out.points[judged.row].limits = ControlLimits{.centre = judged.centre};
            if (judged.limits) {
                out.points[judged.row].limits->low = judged.limits->low;
                out.points[judged.row].limits->high = judged.limits->high;
            }
        }
        return out;
    }

    /** Everything that has to be seen: readings, limits in force, limits of the chart. */
    [[nodiscard]] ChartAxis axis(const ControlSeries& series) const
    {
        double least = series.points.empty() ? 0.0 : *series.points.front().value;
        double most = least;
        const auto reach = [&](double v) {
            least = std::min(least, v);
            most = std::max(most, v);
        };
        for (const ControlPoint& point : series.points) {
            reach(*point.value);
            if (point.limits && point.limits->low)
                reach(*point.limits->low);
            if (point.limits && point.limits->high)
                reach(*point.limits->high);
        }
        if (reading.low)
            reach(toDouble(*reading.low));
        if (reading.high)
            reach(toDouble(*reading.high));
        return evenAxis(qs(reading.unit), least, most, 5, [this](double v) { return value(v); });
    }

    [[nodiscard]] std::vector<HistogramGuide> guides() const
    {
        std::vector<HistogramGuide> out;
        if (reading.low)
            out.push_back({.at = toDouble(*reading.low),
                .kind = HistogramGuide::Kind::Limit,
                .label = value(toDouble(*reading.low))});
        if (reading.high)
            out.push_back({.at = toDouble(*reading.high),
                .kind = HistogramGuide::Kind::Limit,
                .label = value(toDouble(*reading.high))});
        return out;
    }

    [[nodiscard]] bool liesOutside(const ReadingBin& bin) const
    {
        return (reading.low && bin.high <= toDouble(*reading.low) + 1e-9)
            || (reading.high && bin.low > toDouble(*reading.high) + 1e-9);
    }

    [[nodiscard]] QString binText(const ReadingBin& bin) const
    {
        return tr("%1 to below %2 %3: %n reading(s)", nullptr, static_cast<int>(bin.count))
            .arg(value(bin.low), value(bin.high), qs(reading.unit));
    }

    [[nodiscard]] QString histogramTitle() const { return tr("%1: how often each value was read").arg(name); }
    static QString howOften() { return tr("readings"); }
    [[nodiscard]] QString binPrint() const
    {
        return tr("Bars as wide as the instrument shows, or a whole number of its steps. Limits %1.")
            .arg(limits());
    }
};

}

ChartContent readingSheet(const MonthScene& scene, const ReadingReview& reading)
{
    const ReadingSheet sheet(scene, reading);
    const std::string& id = scene.review().items[reading.item].id;
    ControlFigure figure;
    figure.series.push_back(sheet.series());
    figure.values = sheet.axis(figure.series.front());
    return {.title = sheet.title(),
        .finding = {},
        .smallPrint = sheet.smallPrint(),
        .fileName = QStringLiteral("readings-") + qs(id),
        .figure = std::move(figure),
        .table = scene.table("readings", "item", id)};
}

ChartContent histogramSheet(const MonthScene& scene, const ReadingReview& reading)
{
    const ReadingSheet sheet(scene, reading);
    const std::string& id = scene.review().items[reading.item].id;
    HistogramFigure figure;
    double most = 1.0;
    for (const ReadingBin& bin : reading.bins) {
        figure.bars.push_back({.from = bin.low,
            .to = bin.high,
            .count = static_cast<double>(bin.count),
            .outside = sheet.liesOutside(bin),
            .text = sheet.binText(bin)});
        most = std::max(most, static_cast<double>(bin.count));
    }
    figure.guides = sheet.guides();
    double least = reading.bins.empty() ? 0.0 : reading.bins.front().low;
    double last = reading.bins.empty() ? 1.0 : reading.bins.back().high;
    for (const HistogramGuide& guide : figure.guides) {
        least = std::min(least, guide.at);
        last = std::max(last, guide.at);
    }
    figure.values = evenAxis(qs(reading.unit), least, last, 6, [&](double v) { return sheet.value(v); });
    figure.counts = evenAxis(
        ReadingSheet::howOften(), 0.0, most, 4, [&](double v) { return scene.figures().number(v); });
    return {.title = sheet.histogramTitle(),
        .finding = {},
        .smallPrint = sheet.binPrint(),
        .fileName = QStringLiteral("values-") + qs(id),
        .figure = std::move(figure),
        .table = scene.table("reading-histogram", "item", id)};
}

}
