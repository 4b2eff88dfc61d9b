// SPDX-License-Identifier: MIT
#include "tests/core/review/handmade.h"
#include "tests/support/builders.h"
#include "tests/support/qstringprint.h"
#include "ui/report/month/monthsheets.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

struct Drawn
{
    SurvivalFigure figure;
    QString smallPrint;
};

Drawn restoreOf(const HandMade& made)
{
    const MonthReview review = made.review();
    const Language language(QStringLiteral("en"));
    const TimeText times(language, must(TimeZone::named("UTC")));
    const MonthScene scene(made.history, review, language, times);
    const ChartContent content = restoreSheet(scene);
    return {std::get<SurvivalFigure>(content.figure), content.smallPrint};
}

/// A gap for each number of hours.
void gaps(HandMade& made, Severity severity, const std::string& item, const std::vector<double>& hours)
{
    double opened = 0.0;
    for (const double lasted : hours) {
        made.gap(item, severity, opened, opened + lasted);
        opened += lasted + 1.0;
    }
}

}

TEST_CASE("one gap that lasted for weeks does not press the others into a corner, and is told below")
{
    HandMade made;
    gaps(made, Severity::Critical, "clean", {2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12});
    gaps(made, Severity::Major, "device", {10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 300});
    const Drawn drawn = restoreOf(made);
    REQUIRE(drawn.figure.curves.size() == 2);
    CHECK(drawn.figure.times.to >= 30.0);
    CHECK(drawn.figure.times.to < 60.0);
    for (const SurvivalCurve& curve : drawn.figure.curves) {
        CHECK(curve.end <= drawn.figure.times.to);
        for (const SurvivalStep& step : curve.steps)
            CHECK(step.time <= drawn.figure.times.to);
    }
    CHECK(drawn.smallPrint.contains(QStringLiteral("1 lasted longer than is shown here, up to 13 days.")));
    CHECK(drawn.figure.curves.front().medianLabel.startsWith(QStringLiteral("critical: half mended by 7 h")));
}

TEST_CASE("gaps that last about as long are all shown")
{
    HandMade made;
    gaps(made, Severity::Critical, "clean", {2, 4, 6, 8, 10});
    gaps(made, Severity::Major, "device", {8, 9, 10, 11, 12});
    const Drawn drawn = restoreOf(made);
    CHECK(drawn.figure.times.to >= 12.0);
    CHECK_FALSE(drawn.smallPrint.contains(QStringLiteral("lasted longer")));
    REQUIRE(drawn.figure.curves.size() == 2);
    CHECK(drawn.figure.curves.back().steps.size() == 5);
}
