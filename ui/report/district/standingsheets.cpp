// SPDX-License-Identifier: MIT
#include "ui/report/district/districtsheets.h"

#include <algorithm>
#include <QCoreApplication>

namespace cradlepost {

namespace {

struct StandingSheet
{
    Q_DECLARE_TR_FUNCTIONS(StandingSheet)
public:
    static QString funnelTitle(const DistrictScene& scene)
    {
        const UnitFunnel& funnel = scene.review().funnel;
        if (funnel.why)
            return FigureText::cannotSay(*funnel.why);
        const auto apart = std::count_if(funnel.units.begin(), funnel.units.end(),
            [](const UnitStanding& one) { return one.band != UnitBand::NotToldApart; });
        return apart == 0 ? tr("No unit stands out from the district")
                          : tr("%n unit(s) stand out from the district", nullptr, static_cast<int>(apart));
    }

    static QString spoken(const DistrictScene& scene, const UnitStanding& one)
    {
        return QStringLiteral("%1: %2, %3")
            .arg(scene.text().unit(one.unit), scene.figures().share(one.share), DistrictText::band(one.band));
    }

    static FunnelFigure funnel(const DistrictScene& scene)
    {
        const UnitFunnel& funnel = scene.review().funnel;
        FunnelFigure figure;
        double least = 1.0;
        double most = 1.0;
        for (const UnitStanding& one : funnel.units) {
            const auto n = static_cast<double>(one.share.tally.n);
            least = std::min(least, *one.share.value());
            most = std::max(most, n);
            figure.points.push_back({.n = n,
                .value = *one.share.value(),
                .name = scene.text().unit(one.unit),
                .outside = one.band != UnitBand::NotToldApart,
                .few = one.few,
                .text = spoken(scene, one)});
        }
        FunnelLimit inner{.label = tr("95%", "limits of a funnel")};
        FunnelLimit outer{.label = tr("99.8%", "limits of a funnel"), .outer = true};
        const double floor = std::max(0.0, std::min(least, funnel.whole.value().value_or(1.0)) - 0.25);
        for (const FunnelCurvePoint& at : funnel.curve) {
            const auto n = static_cast<double>(at.n);
            most = std::max(most, n);
            inner.low.emplace_back(n, std::max(floor, at.inner.low));
            inner.high.emplace_back(n, at.inner.high);
            outer.low.emplace_back(n, std::max(floor, at.outer.low));
            outer.high.emplace_back(n, at.outer.high);
        }
        if (!funnel.curve.empty())
            figure.limits = {inner, outer};
        figure.centre = funnel.whole.value();
        if (figure.centre)
            figure.centreLabel = scene.figures().percent(*figure.centre);
        figure.numbers = evenAxis(
            tr("rounds"), 0.0, most, 6, [&](double value) { return scene.figures().number(value); });
        figure.values = evenAxis(tr("shifts without a critical gap"), floor, 1.0, 5,
            [&](double value) { return scene.figures().percent(value); });
        return figure;
    }

    static QString sideTitle() { return tr("Units side by side"); }
    static QString sidePrint()
    {
        return tr(
            "Shifts without a critical gap, of rounds done, with 95% limits (Wilson). Within a band the "
            "order is the alphabet's: it ranks nobody.");
    }
    static QString wholeLabel(const DistrictScene& scene, double whole)
    {
        return tr("district %1").arg(scene.figures().percent(whole));
    }
};

}

ChartContent funnelSheet(const DistrictScene& scene)
{
    return {.title = StandingSheet::funnelTitle(scene),
        .finding = {},
        .smallPrint = scene.text().limits(),
        .emptyText = {},
        .fileName = QStringLiteral("units-funnel"),
        .figure = StandingSheet::funnel(scene),
        .table = scene.table("units")};
}

ChartContent sideBySideSheet(const DistrictScene& scene)
{
    const UnitFunnel& funnel = scene.review().funnel;
    ShareRowsFigure figure;
    for (const UnitStanding& one : funnel.units) {
        ShareRow row{.group = DistrictText::band(one.band),
            .name = scene.text().unit(one.unit),
            .value = one.share.value(),
            .text = scene.figures().of(one.share.tally),
            .finding = one.band != UnitBand::NotToldApart,
            .spoken = StandingSheet::spoken(scene, one)};
        if (one.share.interval) {
            row.low = one.share.interval->low;
            row.high = one.share.interval->high;
        }
        figure.rows.push_back(std::move(row));
    }
    figure.shares = evenAxis({}, 0.0, 1.0, 5, [&](double value) { return scene.figures().percent(value); });
    figure.whole = funnel.whole.value();
    if (figure.whole)
        figure.wholeLabel = StandingSheet::wholeLabel(scene, *figure.whole);
    return {.title = StandingSheet::sideTitle(),
        .finding = {},
        .smallPrint = StandingSheet::sidePrint(),
        .emptyText = {},
        .fileName = QStringLiteral("units-side-by-side"),
        .figure = std::move(figure),
        .table = scene.table("unit-levels")};
}

}
