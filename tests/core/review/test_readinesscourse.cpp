// SPDX-License-Identifier: MIT
#include "handmade.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

/** Weeks that all begin in the span, or all before it but the last `inSpan`. */
std::vector<CourseWeek> weeksOf(const std::vector<stats::Tally>& rows, std::size_t inSpan)
{
    std::vector<CourseWeek> weeks;
    for (std::size_t i = 0; i < rows.size(); ++i)
        weeks.push_back({.monday = addDays(std::chrono::year(2026) / 1 / 5, static_cast<int>(7 * i)),
            .inSpan = i + inSpan >= rows.size(),
            .tally = rows[i]});
    return weeks;
}

/** Ten weeks about 80 of 100, then these. */
std::vector<CourseWeek> after(const std::vector<std::int64_t>& last)
{
    std::vector<stats::Tally> rows;
    for (const int x : {80, 84, 78, 82, 79, 81, 83, 77, 80, 76})
        rows.push_back({.x = x, .n = 100});
    for (const std::int64_t x : last)
        rows.push_back({.x = x, .n = 100});
    return weeksOf(rows, last.size());
}

}

TEST_CASE("the weeks before the span set the limits, the span is judged by them")
{
    const CourseChart chart = courseChart(after({79, 60, 58}), {});
    REQUIRE(chart.chart);
    CHECK_FALSE(chart.limitsFromSpan);
    CHECK(chart.chart->phases[0].baselinePoints == 10);
    CHECK(chart.chart->phases[0].centre == doctest::Approx(0.8));
    REQUIRE(chart.changes.size() == 1);
    const CourseChange& fall = chart.changes[0];
    CHECK(fall.side == -1);
    CHECK(fall.rule == stats::SignalRule::BeyondLimit);
    CHECK(fall.signalled == chart.weeks[11].monday);
    // The run below the centre began in the last week before the span: 76 of 100.
    CHECK(fall.began == chart.weeks[9].monday);
    CHECK(fall.since == stats::Tally{.x = 76 + 79 + 60 + 58, .n = 400});
    CHECK(fall.before == stats::Tally{.x = 724, .n = 900});
    CHECK(fall.goesOn);
}

TEST_CASE("weeks within the limits tell no change")
{
    CHECK(courseChart(after({78, 83, 80, 79}), {}).changes.empty());
}

TEST_CASE("too few weeks before the span: its own weeks set the limits and no change is told")
{
    std::vector<stats::Tally> rows(12, {.x = 80, .n = 100});
    for (std::size_t i = 0; i < rows.size(); ++i)
        rows[i].x += static_cast<std::int64_t>(i % 3);
    rows.back().x = 20;
    const CourseChart chart = courseChart(weeksOf(rows, 5), {});
    CHECK(chart.limitsFromSpan);
    CHECK(chart.changes.empty());
}

TEST_CASE("no data and no spread are said as such")
{
    CHECK(courseChart(weeksOf(std::vector<stats::Tally>(12), 4), {}).why == CannotSay::NoData);
    CHECK(courseChart(weeksOf(std::vector<stats::Tally>(12, {.x = 9, .n = 9}), 4), {}).why
        == CannotSay::NoSpread);
}

TEST_CASE("a published p' example goes through the course: peaches by shipment")
{
    // Pyzdek T, Keller PA, The Handbook for Quality Management, Table 9.6; centre 1544/8000 = 0.193. Limits
    // by the formula of Laney DB (2002) Quality Engineering 14:531-537.
    const std::vector<std::int64_t> x{47, 42, 55, 51, 46, 61, 39, 44, 41, 51, 88, 101, 101, 40, 48, 47, 50,
        48, 57, 45, 43, 105, 98, 100, 96};
    std::vector<stats::Tally> rows;
    for (std::size_t i = 0; i < x.size(); ++i)
        rows.push_back({.x = x[i], .n = (i >= 10 && i <= 12) || i >= 21 ? 500 : 250});
    ReviewOptions options;
    options.courseRules.width = 3;
    const CourseChart chart = courseChart(weeksOf(rows, rows.size()), options);
    REQUIRE(chart.chart);
    CHECK(chart.chart->phases[0].centre == doctest::Approx(0.193));
    CHECK(chart.chart->phases[0].dispersion == doctest::Approx(0.9994551975).epsilon(1e-9));
    CHECK(chart.chart->points[0].limits->low == doctest::Approx(0.1181606507).epsilon(1e-9));
    CHECK(chart.chart->points[10].limits->high == doctest::Approx(0.2459194114).epsilon(1e-9));
    CHECK(chart.chart->signals.empty());
}

TEST_CASE("weeks hold their rounds, and each shift has a chart of its own")
{
    HandMade made;
    made.round(october(1), 0, "mmmm"); // Thursday
    made.round(october(4), 1, "mgmm"); // Sunday of the same week
    made.round(october(5), 1, "ggmm");
    const ReadinessCourse course = readinessCourse(made.selection());
    CHECK(course.charts.size() == 9);
    const CourseChart* all = course.chart(CourseMeasure::ItemsMet);
    REQUIRE(all != nullptr);
    REQUIRE(all->weeks.size() == 31);
    CHECK(all->weeks[25].inSpan == false);
    CHECK(all->weeks[26].inSpan);
    CHECK(all->weeks[26].due == 14);
    CHECK(all->weeks[26].done == 2);
    CHECK(all->weeks[26].tally == stats::Tally{.x = 7, .n = 8});
    const CourseChart* night = course.chart(CourseMeasure::NoCriticalGap, "night");
    REQUIRE(night != nullptr);
    CHECK(night->weeks[26].tally == stats::Tally{.x = 1, .n = 1});
    CHECK(night->weeks[27].tally == stats::Tally{.x = 0, .n = 1});
}

TEST_CASE("a change idea leaves its mark, and sets the limits anew when that is asked for")
{
    HandMade made;
    for (int day = -160; day <= 31; ++day)
        made.round(october(day), 0, day % 3 == 0 ? "mmmg" : day > -60 ? "mgmm" : "mmmm");
    made.history.changes.push_back({.id = "idea", .title = "Check at handover", .from = october(-60)});
    const ReadinessCourse course = readinessCourse(made.selection());
    REQUIRE(course.marks.size() == 1);
    CHECK(course.marks[0].monday == mondayOf(october(-60)));
    CHECK(course.charts[0].chart->phases.size() == 1);
    ReviewOptions options;
    options.rebaseAtChanges = true;
    const ReadinessCourse anew = readinessCourse(made.selection({}, options));
    REQUIRE(anew.charts[0].chart->phases.size() == 2);
    CHECK(anew.charts[0].chart->phases[1].centre < anew.charts[0].chart->phases[0].centre);
}
