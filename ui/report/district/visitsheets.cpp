// SPDX-License-Identifier: MIT
#include "ui/report/district/districtsheets.h"

#include <algorithm>
#include <QCoreApplication>

namespace cradlepost {

namespace {

struct VisitSheet
{
    Q_DECLARE_TR_FUNCTIONS(VisitSheet)
public:
    static QString visitsTitle(const DistrictReview& review)
    {
        return review.visits.empty() ? tr("No unit calls for a visit before the others")
                                     : tr("Whom to see first: %n unit(s) call for a visit", nullptr,
                                         static_cast<int>(review.visits.size()));
    }
    static QString noVisits() { return tr("Nothing found calls for a visit before the others."); }

    static QString visitsPrint(const DistrictScene& scene)
    {
        const VisitWeights& weights = scene.review().options.weights;
        const auto points = [&](double value) { return scene.figures().number(value); };
        const QString rule
            = tr(
                "Points (our own weights): critical gap %1, each week of the oldest %2, critical item often "
                "missing %3, below the district %4, fell %5, each silent week %6, question about the entries "
                "%7, stock item running out %8. An order of visits, no ranking.")
                  .arg(points(weights.criticalGap), points(weights.criticalWeek),
                      points(weights.oftenMissing), points(weights.below), points(weights.fell),
                      points(weights.silentWeek), points(weights.question), points(weights.runsOut));
        const auto& sample = scene.review().sample;
        return sample ? rule + QLatin1Char(' ') + scene.text().sample(*sample) : rule;
    }

    /** What the last visit decided; empty without one. */
    static QString lastVisit(const DistrictScene& scene, std::size_t unit)
    {
        const auto& visits = scene.review().units[unit].visits;
        if (visits.empty())
            return {};
        const Date day = scene.times().zone().toLocal(visits.back().at).date;
        //: after the reasons for a visit; %1 "3 Nov: 13 of 18 met, does not reach the standard"
        return QLatin1Char('.') + QLatin1Char(' ')
            + tr("Last visit %1").arg(scene.text().visit(visits.back(), scene.times().day(day)));
    }

    static BarItem visitBar(const DistrictScene& scene, const VisitNeed& need, bool first)
    {
        const QString why = scene.text().reasons(need);
        //: %1 a unit, %2 the reasons for a visit
        BarItem bar{.name = tr("%1: %2").arg(scene.text().unit(need.unit), why) + lastVisit(scene, need.unit),
            .value = need.points,
            .finding = first};
        //: %1 points of a visit's need, %2 whom it is for
        bar.text
            = tr("%1 points · %2").arg(scene.figures().number(need.points, 1), DistrictText::help(need.help));
        bar.spoken = QStringLiteral("%1; %2").arg(bar.name, bar.text);
        return bar;
    }

    static QString reportingTitle(const DistrictReview& review)
    {
        const auto silent = std::count_if(review.reporting.begin(), review.reporting.end(),
            [](const UnitReporting& one) { return one.isSilent; });
        return silent == 0 ? tr("Every unit reports")
                           : tr("%n unit(s) fell silent", nullptr, static_cast<int>(silent));
    }
    static QString reportingPrint()
    {
        return tr("Rounds done of those due, with 95% limits (Wilson). Late, from paper, amended, days of "
                  "silence and questions about the entries: in the table.");
    }
    static QString reported() { return tr("Rounds done of those due"); }

    static QString changesTitle(const DistrictReview& review)
    {
        const auto real = std::count_if(review.changes.begin(), review.changes.end(),
            [](const UnitChange& one) { return one.fell || one.rose; });
        return real == 0
            ? tr("No unit changed more than chance explains")
            : tr("%n unit(s) changed more than chance explains", nullptr, static_cast<int>(real));
    }
    static QString changesPrint()
    {
        return tr(
            "Shifts without a critical gap in the span before and now. Told as a change: pooled test, "
            "widened for rounds that are alike, p adjusted for the number of units (Benjamini-Hochberg); "
            "differences with Newcombe's limits in the table.");
    }
    static QString before() { return tr("before"); }
    static QString now() { return tr("now"); }
};

ShareRow shareRow(const DistrictScene& scene, const QString& group, const QString& name, const Share& share)
{
    ShareRow row{
        .group = group, .name = name, .value = share.value(), .text = scene.figures().of(share.tally)};
    if (share.interval) {
        row.low = share.interval->low;
        row.high = share.interval->high;
    }
    row.spoken = QStringLiteral("%1, %2: %3").arg(group, name, scene.figures().share(share));
    return row;
}

ChartAxis shares(const DistrictScene& scene)
{
    return evenAxis({}, 0.0, 1.0, 5, [&](double value) { return scene.figures().percent(value); });
}

}

ChartContent visitsSheet(const DistrictScene& scene)
{
    const DistrictReview& review = scene.review();
    BarsFigure figure;
    for (const VisitNeed& need : review.visits)
        figure.items.push_back(VisitSheet::visitBar(scene, need, figure.items.empty()));
    figure.most = review.visits.empty() ? 1.0 : review.visits.front().points;
    return {.title = VisitSheet::visitsTitle(review),
        .finding = scene.text().sentence(review.findings.front()),
        .smallPrint = VisitSheet::visitsPrint(scene),
        .emptyText = VisitSheet::noVisits(),
        .fileName = QStringLiteral("units-visits"),
        .figure = std::move(figure),
        .table = scene.table("visit-reasons")};
}

ChartContent reportingSheet(const DistrictScene& scene)
{
    ShareRowsFigure figure{.rows = {}, .shares = shares(scene)};
    for (const UnitReporting& one : scene.review().reporting) {
        figure.rows.push_back(shareRow(scene, VisitSheet::reported(), scene.text().unit(one.unit), one.done));
        figure.rows.back().finding = one.isSilent || one.isIncomplete;
    }
    return {.title = VisitSheet::reportingTitle(scene.review()),
        .finding = {},
        .smallPrint = VisitSheet::reportingPrint(),
        .emptyText = {},
        .fileName = QStringLiteral("units-reporting"),
        .figure = std::move(figure),
        .table = scene.table("unit-reporting")};
}

ChartContent unitChangesSheet(const DistrictScene& scene)
{
    ShareRowsFigure figure{.rows = {}, .shares = shares(scene)};
    for (const UnitChange& one : scene.review().changes) {
        const QString unit = scene.text().unit(one.unit);
        figure.rows.push_back(shareRow(scene, unit, VisitSheet::before(), one.before));
        figure.rows.push_back(shareRow(scene, unit, VisitSheet::now(), one.after));
        figure.rows.back().finding = one.fell || one.rose;
    }
    return {.title = VisitSheet::changesTitle(scene.review()),
        .finding = {},
        .smallPrint = VisitSheet::changesPrint(),
        .emptyText = {},
        .fileName = QStringLiteral("units-changes"),
        .figure = std::move(figure),
        .table = scene.table("unit-changes")};
}

}
