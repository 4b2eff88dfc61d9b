// SPDX-License-Identifier: MIT
#include "core/review/readinesscourse.h"

#include <algorithm>

namespace cradlepost {

namespace {

stats::Tally tallyOf(const ChosenRound& round, CourseMeasure measure)
{
    switch (measure) {
    case CourseMeasure::ItemsMet:
        return round.items;
    case CourseMeasure::NoCriticalGap:
        return {.x = round.state != Readiness::NotReady ? 1 : 0, .n = 1};
    case CourseMeasure::Ready:
        break;
    }
    return {.x = round.state == Readiness::Ready ? 1 : 0, .n = 1};
}

std::vector<CourseWeek> weeksOf(const Selection& selection, CourseMeasure measure, const std::string& shift)
{
    std::vector<CourseWeek> weeks;
    const Date first = lookBack(selection.span);
    for (Date monday = first; monday < selection.span.to; monday = addDays(monday, 7))
        weeks.push_back({.monday = monday, .inSpan = addDays(monday, 7) > selection.span.from});
    const auto weekOf = [&](Date day) -> CourseWeek& {
        return weeks[static_cast<std::size_t>(daysBetween(first, day) / 7)];
    };
    for (const Shift* due : selection.due) {
        if (shift.empty() || due->code == shift)
            ++weekOf(due->date).due;
    }
    for (const ChosenRound& round : selection.all) {
        if (!shift.empty() && round.shift->code != shift)
            continue;
        CourseWeek& week = weekOf(round.day());
        ++week.done;
        week.tally += tallyOf(round, measure);
    }
    return weeks;
}

/** Rows of the weeks in which a phase starts, each once, never the first row. */
std::vector<std::size_t> phaseRows(const std::vector<CourseWeek>& weeks, std::span<const Date> starts)
{
    std::vector<std::size_t> rows;
    for (std::size_t row = 1; row < weeks.size(); ++row) {
        const Date monday = weeks[row].monday;
        if (std::any_of(starts.begin(), starts.end(), [&](Date day) { return mondayOf(day) == monday; }))
            rows.push_back(row);
    }
    return rows;
}

/** Whether the weeks before the span can set the limits of every phase. */
bool canLookBack(const std::vector<CourseWeek>& weeks, const std::vector<std::size_t>& phases,
    const ReviewOptions& options)
{
    std::size_t begin = 0;
    for (std::size_t phase = 0; phase <= phases.size(); ++phase) {
        const std::size_t end = phase < phases.size() ? phases[phase] : weeks.size();
        const auto usable = std::count_if(weeks.begin() + static_cast<std::ptrdiff_t>(begin),
            weeks.begin() + static_cast<std::ptrdiff_t>(end),
            [](const CourseWeek& week) { return !week.inSpan && week.tally.n > 0; });
        if (usable < options.fewestWeeks)
            return false;
        begin = end;
    }
    return true;
}

std::optional<CannotSay> whyNoLimits(const stats::ControlChart& chart)
{
    const bool any = std::any_of(chart.phases.begin(), chart.phases.end(),
        [](const stats::ChartPhase& phase) { return phase.state == stats::LimitsState::Set; });
    if (any)
        return std::nullopt;
    const bool few = std::any_of(chart.phases.begin(), chart.phases.end(),
        [](const stats::ChartPhase& phase) { return phase.state == stats::LimitsState::TooFewPoints; });
    return few ? CannotSay::TooFew : CannotSay::NoSpread;
}

int sideOf(const stats::ChartPoint& point)
{
    return point.value > point.centre ? 1 : point.value < point.centre ? -1 : 0;
}

/** The change that holds one signal: the unbroken run on its side of the centre. */
CourseChange changeFrom(const CourseChart& course, const stats::Signal& signal)
{
    const auto& points = course.chart->points;
    const auto on = [&](std::size_t i, std::size_t phase) {
        return points[i].phase == phase && sideOf(points[i]) == signal.side;
    };
    const auto at = std::find_if(
        points.begin(), points.end(), [&](const stats::ChartPoint& point) { return point.row == signal.at; });
    std::size_t first = static_cast<std::size_t>(at - points.begin());
    const std::size_t phase = at->phase;
    std::size_t last = first;
    while (first > 0 && on(first - 1, phase))
        --first;
    while (last + 1 < points.size() && on(last + 1, phase))
        ++last;
    CourseChange change{.side = signal.side,
        .rule = signal.rule,
        .signalled = course.weeks[signal.at].monday,
        .began = course.weeks[points[first].row].monday,
        .before = {},
        .since = {},
        .goesOn = last + 1 == points.size()};
    for (std::size_t i = first; i <= last; ++i)
        change.since += course.weeks[points[i].row].tally;
    for (std::size_t row = course.chart->phases[phase].begin; row < points[first].row; ++row) {
        if (!course.weeks[row].inSpan)
            change.before += course.weeks[row].tally;
    }
    return change;
}

void findChanges(CourseChart& course)
{
    for (const int side : {-1, 1}) {
        const auto& signals = course.chart->signals;
        const auto first = std::find_if(signals.begin(), signals.end(), [&](const stats::Signal& signal) {
            return signal.side == side && course.weeks[signal.at].inSpan;
        });
        if (first != signals.end())
            course.changes.push_back(changeFrom(course, *first));
    }
}

std::vector<Date> startsOf(const Selection& selection)
{
    std::vector<Date> starts;
    if (selection.options.rebaseAtChanges) {
        for (const ChangeIdea& idea : selection.history->changes)
            starts.push_back(idea.from);
    }
    return starts;
}

void addCharts(ReadinessCourse& course, const Selection& selection, CourseMeasure measure)
{
    const auto starts = startsOf(selection);
    std::vector<std::string> shifts{{}};
    if (selection.shifts.size() > 1)
        shifts.insert(shifts.end(), selection.shifts.begin(), selection.shifts.end());
    for (const std::string& shift : shifts) {
        CourseChart chart = courseChart(weeksOf(selection, measure, shift), selection.options, starts);
        chart.measure = measure;
        chart.shift = shift;
        course.charts.push_back(std::move(chart));
    }
}

}

const char* codeName(CourseMeasure measure)
{
    switch (measure) {
    case CourseMeasure::ItemsMet:
        return "items-met";
    case CourseMeasure::NoCriticalGap:
        return "no-critical-gap";
    case CourseMeasure::Ready:
        break;
    }
    return "ready";
}

const CourseChart* ReadinessCourse::chart(CourseMeasure measure, std::string_view shift) const
{
    const auto at = std::find_if(charts.begin(), charts.end(),
        [&](const CourseChart& chart) { return chart.measure == measure && chart.shift == shift; });
    return at == charts.end() ? nullptr : &*at;
}

CourseChart courseChart(
    std::vector<CourseWeek> weeks, const ReviewOptions& options, std::span<const Date> phaseStarts)
{
    CourseChart course{.weeks = std::move(weeks)};
    stats::ChartOptions chartOptions{.phaseStarts = phaseRows(course.weeks, phaseStarts),
        .baselineRows = 0,
        .excluded = {},
        .fixedCentre = {},
        .rules = options.courseRules};
    course.limitsFromSpan = !canLookBack(course.weeks, chartOptions.phaseStarts, options);
    std::vector<stats::Tally> rows;
    for (std::size_t row = 0; row < course.weeks.size(); ++row) {
        rows.push_back(course.weeks[row].tally);
        if (course.weeks[row].inSpan && !course.limitsFromSpan)
            chartOptions.excluded.push_back(row);
    }
    auto chart = stats::pPrimeChart(rows, chartOptions);
    if (!chart) {
        course.why = CannotSay::NoData;
        return course;
    }
    course.chart = std::move(*chart);
    course.why = whyNoLimits(*course.chart);
    if (!course.limitsFromSpan)
        findChanges(course);
    return course;
}

ReadinessCourse readinessCourse(const Selection& selection)
{
    ReadinessCourse course;
    for (const CourseMeasure measure :
        {CourseMeasure::ItemsMet, CourseMeasure::NoCriticalGap, CourseMeasure::Ready})
        addCharts(course, selection, measure);
    const Date first = lookBack(selection.span);
    const auto& changes = selection.history->changes;
    for (std::size_t i = 0; i < changes.size(); ++i) {
        if (first <= changes[i].from && changes[i].from < selection.span.to)
            course.marks.push_back({.change = i, .monday = mondayOf(changes[i].from)});
    }
    return course;
}

}
