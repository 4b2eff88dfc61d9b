// SPDX-License-Identifier: MIT
#include "ui/report/month/monthsheets.h"

#include <algorithm>
#include <QCoreApplication>

namespace cradlepost {

namespace {

struct CourseSheet
{
    Q_DECLARE_TR_FUNCTIONS(CourseSheet)
public:
    CourseSheet(const MonthScene& theScene, CourseMeasure theMeasure)
        : scene(theScene)
        , measure(theMeasure)
    {
    }

    const MonthScene& scene;
    CourseMeasure measure;

    [[nodiscard]] QString measured() const
    {
        switch (measure) {
        case CourseMeasure::ItemsMet:
            return tr("Items met each week");
        case CourseMeasure::NoCriticalGap:
            return tr("Shifts without a critical gap, each week");
        case CourseMeasure::Ready:
            break;
        }
        return tr("Shifts with nothing missing, each week");
    }

    /** The charts to draw: by shift where one of them tells a change of its own, else the one of all shifts.
     */
    [[nodiscard]] std::vector<const CourseChart*> charts() const
    {
        const ReadinessCourse& course = scene.review().course;
        const CourseChart* whole = course.chart(measure);
        std::vector<const CourseChart*> byShift;
        bool told = false;
        for (const CourseChart& chart : course.charts) {
            if (chart.measure == measure && !chart.shift.empty()) {
                byShift.push_back(&chart);
                told = told || !chart.changes.empty();
            }
        }
        const bool wholeTells = whole != nullptr && !whole->changes.empty();
        if (told && !wholeTells && byShift.size() > 1)
            return byShift;
        return whole == nullptr ? std::vector<const CourseChart*>{} : std::vector{whole};
    }

    [[nodiscard]] QString title(const std::vector<const CourseChart*>& drawn) const
    {
        if (drawn.empty())
            return measured();
        for (const CourseChart* chart : drawn) {
            for (const CourseChange& change : chart->changes) {
                const QString day = scene.times().day(change.began);
                const QString who = MonthText::shifts(chart->shift);
                return change.side < 0
                    //: title of a chart: %1 what it measures, %2 "Nights" or "All shifts", %3 a day
                    ? tr("%1: %2 fell from the week of %3").arg(measured(), who, day)
                    : tr("%1: %2 rose from the week of %3").arg(measured(), who, day);
            }
        }
        const CourseChart& first = *drawn.front();
        if (first.why || !first.chart || first.limitsFromSpan)
            return tr("%1: too few weeks before to tell a change").arg(measured());
        return tr("%1: no more change than chance explains").arg(measured());
    }

    [[nodiscard]] QString smallPrint(const std::vector<const CourseChart*>& drawn) const
    {
        std::int64_t least = 0;
        std::int64_t most = 0;
        for (const CourseChart* chart : drawn) {
            for (const CourseWeek& week : chart->weeks) {
                if (week.tally.n == 0)
                    continue;
                least = least == 0 ? week.tally.n : std::min(least, week.tally.n);
                most = std::max(most, week.tally.n);
            }
        }
        //: %1 and %2 counts, %3 a number
        return tr("p′ chart, n %1 to %2 a week; limits at %3 sigma from the weeks before the span; a diamond "
                  "is more than "
                  "chance explains. A week without a round has no point.")
            .arg(scene.figures().count(least), scene.figures().count(most),
                scene.figures().number(scene.review().options.courseRules.width, 0));
    }

    [[nodiscard]] QString pointText(const CourseWeek& week, const QString& who) const
    {
        //: %1 "Nights", %2 a day, %3 "81% (408 of 504)"
        return tr("%1, week of %2: %3")
            .arg(who, scene.times().day(week.monday), scene.figures().share(week.tally));
    }

    [[nodiscard]] ControlSeries series(const CourseChart& chart) const
    {
        ControlSeries out{.name = MonthText::shifts(chart.shift), .points = {}};
        for (const CourseWeek& week : chart.weeks) {
            ControlPoint point{.label = scene.times().day(week.monday),
                .inSpan = week.inSpan,
                .text = pointText(week, out.name)};
            if (week.tally.n > 0)
                point.value = static_cast<double>(week.tally.x) / static_cast<double>(week.tally.n);
            out.points.push_back(std::move(point));
        }
        if (!chart.chart)
            return out;
        for (const stats::ChartPoint& judged : chart.chart->points) {
            ControlPoint& point = out.points[judged.row];
            point.phase = static_cast<int>(judged.phase);
            point.limits = ControlLimits{.centre = judged.centre};
            if (judged.limits) {
                point.limits->low = judged.limits->low;
                point.limits->high = judged.limits->high;
            }
        }
        for (const stats::Signal& signal : chart.chart->signals)
            out.points[signal.at].signal = out.points[signal.at].inSpan;
        return out;
    }

    [[nodiscard]] std::vector<ControlMark> marks(const CourseChart& chart) const
    {
        std::vector<ControlMark> out;
        for (const CourseMark& mark : scene.review().course.marks) {
            const auto at = std::find_if(chart.weeks.begin(), chart.weeks.end(),
                [&](const CourseWeek& week) { return week.monday >= mark.monday; });
            if (at != chart.weeks.end())
                out.push_back({.before = static_cast<int>(at - chart.weeks.begin()),
                    .label = qs(scene.review().changes[mark.change].title)});
        }
        return out;
    }

    [[nodiscard]] ControlFigure figure(const std::vector<const CourseChart*>& drawn) const
    {
        ControlFigure figure;
        double least = 1.0;
        double most = 0.0;
        const auto reach = [&](double value) {
            least = std::min(least, value);
            most = std::max(most, value);
        };
        for (const CourseChart* chart : drawn) {
            figure.series.push_back(series(*chart));
            for (const ControlPoint& point : figure.series.back().points) {
                if (point.value)
                    reach(*point.value);
                if (point.limits && point.limits->low)
                    reach(*point.limits->low);
                if (point.limits && point.limits->high)
                    reach(*point.limits->high);
            }
        }
        if (!drawn.empty())
            figure.marks = marks(*drawn.front());
        if (drawn.size() > 1)
            figure.arrangement = ControlFigure::Arrangement::Apart;
        constexpr double air = 0.01;
        figure.values = evenAxis({}, std::max(0.0, least - air), std::min(1.0, std::max(most, least) + air),
            5, [this](double value) { return scene.figures().percent(value); });
        return figure;
    }
};

}

ChartContent courseSheet(const MonthScene& scene, CourseMeasure measure)
{
    const CourseSheet sheet{scene, measure};
    const auto drawn = sheet.charts();
    return {.title = sheet.title(drawn),
        .finding = scene.said(MonthPart::Course),
        .smallPrint = sheet.smallPrint(drawn),
        .fileName = QStringLiteral("week-by-week-") + QLatin1String(codeName(measure)),
        .figure = sheet.figure(drawn),
        .table = scene.table("course", "measure", codeName(measure))};
}

}
