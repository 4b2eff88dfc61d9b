// SPDX-License-Identifier: MIT
#include "ui/report/month/monthsheets.h"

#include <algorithm>
#include <QCoreApplication>

namespace cradlepost {

namespace {

constexpr std::size_t mostBars = 10; ///< more are in the table behind

struct ItemSheet
{
    Q_DECLARE_TR_FUNCTIONS(ItemSheet)
public:
    static QString lostTitle(const LostReadiness& lost, const FigureText& figures)
    {
        if (lost.why)
            return *lost.why == CannotSay::NoSpread ? tr("Nothing was lost: not one gap")
                                                    : FigureText::cannotSay(*lost.why);
        const double carried = lost.items[lost.vitalFew - 1].cumulated;
        return tr(
            "Where readiness is lost: %n item(s) carry %1 of it", nullptr, static_cast<int>(lost.vitalFew))
            .arg(figures.percent(carried));
    }

    static QString lostPrint(const SeverityWeights& weights, const FigureText& figures)
    {
        return tr("Rounds with a gap, of those in which the item was looked at, with 95% limits (Wilson). "
                  "Order: gaps times "
                  "weight, critical %1, major %2, minor %3 (our own weights).")
            .arg(figures.number(weights.critical), figures.number(weights.major),
                figures.number(weights.minor));
    }

    static BarItem lostBar(const MonthScene& scene, const LostItem& lost, bool finding)
    {
        const FigureText& figures = scene.figures();
        BarItem bar{.name = scene.itemName(lost.item), .value = lost.gaps.value().value_or(0.0)};
        if (lost.gaps.interval) {
            bar.low = lost.gaps.interval->low;
            bar.high = lost.gaps.interval->high;
        }
        bar.text = QStringLiteral("%1 · %2").arg(figures.percent(bar.value), figures.of(lost.gaps.tally));
        //: %1 a percentage of what was lost, this item and those above it
        bar.cumulated = tr("%1 so far").arg(figures.percent(lost.cumulated));
        bar.finding = finding;
        bar.spoken = tr("%1: missing in %2 rounds, %3 of what was lost")
                         .arg(bar.name, figures.share(lost.gaps), figures.percent(lost.share));
        return bar;
    }

    static MapCell weekCell(const MonthScene& scene, const QString& item, Date week, stats::Tally tally)
    {
        MapCell cell;
        if (tally.n > 0) {
            cell.share = static_cast<double>(tally.x) / static_cast<double>(tally.n);
            cell.label = tally.x > 0 ? scene.figures().count(tally.x) : QString();
        }
        cell.text
            = tr("%1, week of %2: %3 rounds with a gap")
                  .arg(item, scene.times().day(week), tally.n > 0 ? scene.figures().of(tally) : tr("no"));
        return cell;
    }

    static QString weeksTitle() { return tr("Which items, in which weeks"); }
    static QString weeksPrint()
    {
        return tr(
            "Rounds with a gap each week; a crossed cell: not looked at. Items without a gap are left out.");
    }
    static QString shade() { return tr("share of rounds with a gap"); }
    static QString itemsTitle() { return tr("Item"); }
    static QString columnsTitle() { return tr("Week from"); }
};

}

ChartContent lostSheet(const MonthScene& scene)
{
    const LostReadiness& lost = scene.review().lost;
    BarsFigure figure;
    double most = 0.0;
    for (std::size_t i = 0; i < std::min(lost.items.size(), mostBars); ++i) {
        figure.items.push_back(
            ItemSheet::lostBar(scene, lost.items[i], i < std::min<std::size_t>(lost.vitalFew, 3)));
        most = std::max(most, figure.items.back().value);
    }
    figure.most = most > 0.0 ? most : 1.0;
    return {.title = ItemSheet::lostTitle(lost, scene.figures()),
        .finding = scene.said(MonthPart::Lost),
        .smallPrint = ItemSheet::lostPrint(scene.review().options.weights, scene.figures()),
        .fileName = QStringLiteral("lost-readiness"),
        .figure = std::move(figure),
        .table = scene.table("lost-readiness")};
}

ChartContent itemWeeksSheet(const MonthScene& scene)
{
    const ItemWeeks& map = scene.review().itemWeeks;
    MapFigure figure{.rowsTitle = ItemSheet::itemsTitle(),
        .columnsTitle = ItemSheet::columnsTitle(),
        .shadeTitle = ItemSheet::shade()};
    for (const Date week : map.weeks)
        figure.columns.push_back(scene.times().day(week));
    for (std::size_t row = 0; row < map.items.size(); ++row) {
        const auto& tallies = map.cells[row];
        if (std::none_of(tallies.begin(), tallies.end(), [](stats::Tally tally) { return tally.x > 0; }))
            continue;
        const QString name = scene.itemName(map.items[row]);
        figure.rows.push_back(name);
        std::vector<MapCell> cells;
        for (std::size_t week = 0; week < tallies.size(); ++week)
            cells.push_back(ItemSheet::weekCell(scene, name, map.weeks[week], tallies[week]));
        figure.cells.push_back(std::move(cells));
    }
    return {.title = ItemSheet::weeksTitle(),
        .smallPrint = ItemSheet::weeksPrint(),
        .fileName = QStringLiteral("items-by-week"),
        .figure = std::move(figure),
        .table = scene.table("item-weeks")};
}

}
