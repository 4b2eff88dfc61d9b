// SPDX-License-Identifier: MIT
#include "ui/report/month/monthsheets.h"

#include "ui/text/wardtext.h"

#include <algorithm>
#include <QCoreApplication>

namespace cradlepost {

namespace {

constexpr std::size_t mostRows = 12;

struct GapSheet
{
    Q_DECLARE_TR_FUNCTIONS(GapSheet)
public:
    static QString restoreTitle(const RestoreReview& restore, const FigureText& figures)
    {
        if (!restore.all.curve)
            return tr("No gap opened in this time");
        if (!restore.all.curve->median)
            return tr("Fewer than half of the gaps were mended in this time");
        return tr("Half of the gaps are mended within %1").arg(figures.hours(*restore.all.curve->median));
    }

    static QString restorePrint(const RestoreReview& restore, double shownHours, const FigureText& figures)
    {
        QString text = tr("n = %1 gaps that opened, %2 mended; those still open count as long as they are "
                          "known (Kaplan-Meier, "
                          "95% log-log limits).")
                           .arg(figures.count(static_cast<std::int64_t>(restore.all.durations.size())),
                               figures.count(restore.all.mended));
        const auto& durations = restore.all.durations;
        const auto longer = std::count_if(durations.begin(), durations.end(),
            [&](const stats::Duration& duration) { return duration.time > shownHours; });
        if (longer > 0)
            text += QLatin1Char(' ')
                + tr("%n lasted longer than is shown here, up to %1.", nullptr, static_cast<int>(longer))
                      .arg(figures.hours(restore.all.curve->lastTime));
        if (restore.carriedIn > 0)
            text += QLatin1Char(' ')
                + tr("%n gap(s) open before the span are left out.", nullptr,
                    static_cast<int>(restore.carriedIn));
        if (restore.test)
            text += QLatin1Char(' ')
                + tr("Severities compared: log-rank p %1.").arg(figures.chance(restore.test->p));
        return text;
    }

    static QString stepText(const QString& who, const stats::SurvivalStep& step, const FigureText& figures)
    {
        //: %1 "critical", %2 a share, %3 "13 h"
        return tr("%1: %2 still open after %3")
            .arg(who, figures.percent(step.survival), figures.hours(step.time));
    }

    static QString medianLabel(const stats::SurvivalCurve& curve, const QString& name, const FigureText& figures)
    {
        if (!curve.median)
            return {};
        const QString at = figures.hours(*curve.median);
        if (curve.medianLow && curve.medianHigh)
            //: %1 critical, major, minor or all gaps; times
            return tr("%1: half mended by %2 (%3 to %4)")
                .arg(name, at, figures.hours(*curve.medianLow), figures.hours(*curve.medianHigh));
        return tr("%1: half mended by %2").arg(name, at);
    }

    static QString atRiskTitle() { return tr("still open"); }
    static QString hoursTitle() { return tr("hours since the gap was found"); }
    static QString allGaps() { return tr("all gaps"); }

    static QString openTitle(const OpenGaps& open)
    {
        if (open.gaps.empty())
            return tr("No gap is open at the end of this time");
        const int week = static_cast<int>(open.underMonth + open.older);
        QString text = tr("%n gap(s) still open", nullptr, static_cast<int>(open.gaps.size()));
        if (week > 0)
            //: appended to "9 gaps still open"
            text += tr(", %n for more than a week", nullptr, week);
        return text;
    }

    static QString openPrint(const OpenGaps& open)
    {
        return tr("Under a day %1, a week %2, a month %3, older %4.")
                   .arg(open.underDay)
                   .arg(open.underWeek)
                   .arg(open.underMonth)
                   .arg(open.older)
            + (open.withoutOwner > 0 ? QLatin1Char(' ')
                        + tr("%n without an owner.", nullptr, static_cast<int>(open.withoutOwner))
                                     : QString());
    }

    static BarItem openBar(const MonthScene& scene, const OpenGap& gap)
    {
        BarItem bar{.name = scene.names().item(gap.item),
            .value = gap.hours,
            .finding = gap.severity == Severity::Critical};
        const QString who = gap.owner.empty() ? tr("nobody yet") : qs(gap.owner);
        bar.text = QStringLiteral("%1 · %2").arg(scene.figures().hours(gap.hours), who);
        bar.cumulated = gap.overdue ? tr("overdue") : QString();
        bar.spoken
            = tr("%1, %2: open for %3, %4")
                  .arg(bar.name, WardText::severity(gap.severity), scene.figures().hours(gap.hours), who);
        return bar;
    }

    static QString availabilityTitle(const MonthScene& scene)
    {
        const auto& all = scene.review().availability;
        if (all.empty() || all.front().downHours <= 0.0)
            return tr("No equipment was out of use");
        return tr("%1 was out of use for %2")
            .arg(scene.itemName(all.front().item), scene.figures().hours(all.front().downHours));
    }

    static QString availabilityPrint()
    {
        return tr("Share of the time without an open gap, as far as rounds and checks saw; devices that "
                  "never failed stand in "
                  "the table.");
    }

    static ShareRow availableRow(const MonthScene& scene, const Availability& one)
    {
        const FigureText& figures = scene.figures();
        ShareRow row{.name = scene.itemName(one.item), .value = one.share, .finding = one.downAtEnd};
        row.text = tr("%1 · %n time(s), %2", nullptr, one.failures)
                       .arg(figures.percent(one.share, 1), figures.hours(one.downHours));
        row.spoken = tr("%1: available %2 of the time").arg(row.name, figures.percent(one.share, 1));
        return row;
    }
};

SurvivalCurve curveOf(
    const MonthScene& scene, const RestoreGroup& group, const QString& name, const ChartAxis& times)
{
    const stats::SurvivalCurve& curve = *group.curve;
    SurvivalCurve out{.name = name,
        .end = std::min(curve.lastTime, times.to),
        .median = curve.median,
        .medianLabel = GapSheet::medianLabel(curve, name, scene.figures())};
    for (const stats::SurvivalStep& step : curve.steps) {
        if (step.time > times.to)
            break; // in the table
        SurvivalStep drawn{.time = step.time,
            .share = step.survival,
            .text = GapSheet::stepText(name, step, scene.figures())};
        if (step.interval) {
            drawn.low = step.interval->low;
            drawn.high = step.interval->high;
        }
        out.steps.push_back(std::move(drawn));
    }
    for (const stats::Duration& duration : group.durations) {
        if (!duration.ended && duration.time <= times.to)
            out.censored.push_back(duration.time);
    }
    for (const AxisTick& tick : times.ticks) {
        const auto still = std::count_if(group.durations.begin(), group.durations.end(),
            [&](const stats::Duration& duration) { return duration.time >= tick.at; });
        out.atRisk.push_back(scene.figures().count(still));
    }
    return out;
}

/** Groups worth a curve of their own; all gaps in one when there is only one. */
std::vector<std::pair<const RestoreGroup*, QString>> groupsOf(const RestoreReview& restore)
{
    std::vector<std::pair<const RestoreGroup*, QString>> groups;
    for (const RestoreGroup& group : restore.bySeverity) {
        if (group.curve && group.severity)
            groups.emplace_back(&group, WardText::severity(*group.severity));
    }
    if (groups.size() < 2 && restore.all.curve)
        groups = {{&restore.all, GapSheet::allGaps()}};
    return groups;
}

/**
 * Hours that the axis reaches: until a tenth is left of each group and what is known of its median is seen. One gap
 * that lasts ten times longer would press all others into a corner.
 */
double shownHours(const std::vector<std::pair<const RestoreGroup*, QString>>& groups)
{
    double shown = 1.0;
    double last = 1.0;
    for (const auto& [group, name] : groups) {
        const stats::SurvivalCurve& curve = *group->curve;
        const auto few = std::find_if(curve.steps.begin(), curve.steps.end(),
            [](const stats::SurvivalStep& step) { return step.survival <= 0.1; });
        shown = std::max({shown, few != curve.steps.end() ? few->time : curve.lastTime,
            curve.medianHigh.value_or(curve.median.value_or(0.0))});
        last = std::max(last, curve.lastTime);
    }
    return last > 1.5 * shown ? 1.1 * shown : last;
}

}

ChartContent restoreSheet(const MonthScene& scene)
{
    const RestoreReview& restore = scene.review().restore;
    SurvivalFigure figure;
    if (restore.all.curve) {
        const auto groups = groupsOf(restore);
        figure.times = evenAxis(GapSheet::hoursTitle(), 0.0, shownHours(groups), 7,
            [&](double v) { return scene.figures().number(v); });
        figure.shares = evenAxis({}, 0.0, 1.0, 4, [&](double v) { return scene.figures().percent(v); });
        for (const auto& [group, name] : groups)
            figure.curves.push_back(curveOf(scene, *group, name, figure.times));
        figure.atRiskTitle = GapSheet::atRiskTitle();
    }
    const double shown = figure.times.to;
    return {.title = GapSheet::restoreTitle(restore, scene.figures()),
        .finding = scene.said(MonthPart::Restore),
        .smallPrint = GapSheet::restorePrint(restore, shown, scene.figures()),
        .fileName = QStringLiteral("time-to-mend"),
        .figure = std::move(figure),
        .table = scene.table("restore")};
}

ChartContent openGapsSheet(const MonthScene& scene)
{
    const OpenGaps& open = scene.review().openGaps;
    BarsFigure figure;
    figure.most = 1.0;
    for (std::size_t i = 0; i < std::min(open.gaps.size(), mostRows); ++i) {
        figure.items.push_back(GapSheet::openBar(scene, open.gaps[i]));
        figure.most = std::max(figure.most, open.gaps[i].hours);
    }
    return {.title = GapSheet::openTitle(open),
        .finding = scene.said(MonthPart::OpenGaps),
        .smallPrint = GapSheet::openPrint(open),
        .fileName = QStringLiteral("open-gaps"),
        .figure = std::move(figure),
        .table = scene.table("open-gaps")};
}

ChartContent availabilitySheet(const MonthScene& scene)
{
    ShareRowsFigure figure;
    double least = 1.0;
    for (const Availability& one : scene.review().availability) {
        if (one.failures == 0 && one.downHours <= 0.0)
            continue;
        figure.rows.push_back(GapSheet::availableRow(scene, one));
        least = std::min(least, one.share);
        if (figure.rows.size() == mostRows)
            break;
    }
    figure.shares = evenAxis(
        {}, std::min(least, 0.9), 1.0, 4, [&](double value) { return scene.figures().percent(value); });
    return {.title = GapSheet::availabilityTitle(scene),
        .finding = scene.said(MonthPart::Availability),
        .smallPrint = GapSheet::availabilityPrint(),
        .fileName = QStringLiteral("equipment"),
        .figure = std::move(figure),
        .table = scene.table("availability")};
}

}
