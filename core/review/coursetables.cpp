// SPDX-License-Identifier: MIT
#include "core/review/tablerow.h"

namespace cradlepost {

namespace {

const stats::ChartPoint* pointOf(const CourseChart& chart, std::size_t row)
{
    if (chart.chart) {
        for (const stats::ChartPoint& point : chart.chart->points) {
            if (point.row == row)
                return &point;
        }
    }
    return nullptr;
}

void addWeeks(DataTable& table, const CourseChart& chart)
{
    for (std::size_t row = 0; row < chart.weeks.size(); ++row) {
        const CourseWeek& week = chart.weeks[row];
        Cells cells{cell(codeName(chart.measure)), cell(chart.shift), cell(week.monday), cell(week.inSpan),
            cell(week.due), cell(week.done), cell(week.tally.x), cell(week.tally.n), shareCell(week.tally)};
        const stats::ChartPoint* point = pointOf(chart, row);
        cells.push_back(point != nullptr ? cell(point->centre) : Cell());
        const bool hasLimits = point != nullptr && point->limits;
        cells.push_back(hasLimits ? cell(point->limits->low) : Cell());
        cells.push_back(hasLimits ? cell(point->limits->high) : Cell());
        cells.push_back(point != nullptr ? cell(point->z) : Cell());
        table.rows.push_back(std::move(cells));
    }
}

void addPhases(DataTable& table, const CourseChart& chart)
{
    if (!chart.chart) {
        table.rows.push_back({cell(codeName(chart.measure)), cell(chart.shift), Cell(), Cell(), Cell(),
            Cell(), Cell(), cell(codeName(*chart.why)), cell(chart.limitsFromSpan)});
        return;
    }
    for (const stats::ChartPhase& phase : chart.chart->phases) {
        const bool hasData = phase.state != stats::LimitsState::NoData;
        table.rows.push_back(
            {cell(codeName(chart.measure)), cell(chart.shift), cell(chart.weeks[phase.begin].monday),
                cell(chart.weeks[phase.end - 1].monday), hasData ? cell(phase.centre) : Cell(),
                hasData ? cell(phase.dispersion) : Cell(), cell(phase.baselinePoints),
                cell(stats::limitsStateName(phase.state)), cell(chart.limitsFromSpan)});
    }
}

void addSignals(DataTable& table, const CourseChart& chart)
{
    if (!chart.chart)
        return;
    for (const stats::Signal& signal : chart.chart->signals) {
        table.rows.push_back({cell(codeName(chart.measure)), cell(chart.shift),
            cell(stats::ruleName(signal.rule)), cell(signal.side), cell(chart.weeks[signal.from].monday),
            cell(chart.weeks[signal.at].monday)});
    }
}

void addChanges(DataTable& table, const CourseChart& chart)
{
    for (const CourseChange& change : chart.changes) {
        table.rows.push_back(
            {cell(codeName(chart.measure)), cell(chart.shift), cell(change.side), cell(change.began),
                cell(change.signalled), cell(stats::ruleName(change.rule)), cell(change.before.x),
                cell(change.before.n), cell(change.since.x), cell(change.since.n), cell(change.goesOn)});
    }
}

}

void addCourseTables(std::vector<DataTable>& tables, const MonthReview& review)
{
    DataTable weeks{.id = "course",
        .columns = {codeColumn("measure"), codeColumn("shift"), dayColumn("week"), flagColumn("inSpan"),
            countColumn("due"), countColumn("done"), countColumn("x"), countColumn("n"), shareColumn("share"),
            shareColumn("centre"), shareColumn("low"), shareColumn("high"), numberColumn("z", 2)}};
    DataTable limits{.id = "course-limits",
        .columns = {codeColumn("measure"), codeColumn("shift"), dayColumn("phaseFrom"), dayColumn("phaseTo"),
            shareColumn("centre"), numberColumn("dispersion", 2), countColumn("baselineWeeks"),
            codeColumn("state"), flagColumn("limitsFromSpan")}};
    DataTable found{.id = "course-signals",
        .columns = {codeColumn("measure"), codeColumn("shift"), codeColumn("rule"), countColumn("side"),
            dayColumn("from"), dayColumn("at")}};
    DataTable changes{.id = "course-changes",
        .columns = {codeColumn("measure"), codeColumn("shift"), countColumn("side"), dayColumn("began"),
            dayColumn("signalled"), codeColumn("rule"), countColumn("beforeX"), countColumn("beforeN"),
            countColumn("sinceX"), countColumn("sinceN"), flagColumn("goesOn")}};
    for (const CourseChart& chart : review.course.charts) {
        addWeeks(weeks, chart);
        addPhases(limits, chart);
        addSignals(found, chart);
        addChanges(changes, chart);
    }
    tables.insert(tables.end(), {weeks, limits, found, changes});
}

}
