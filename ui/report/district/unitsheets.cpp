// SPDX-License-Identifier: MIT
#include "ui/report/district/districtsheets.h"

#include <algorithm>
#include <QCoreApplication>
#include <QSet>

namespace cradlepost {

namespace {

struct UnitSheet
{
    Q_DECLARE_TR_FUNCTIONS(UnitSheet)
public:
    static QString monthsTitle() { return tr("Each unit over the year"); }
    static QString monthsPrint()
    {
        return tr("Shifts without a critical gap, month by month, all on one scale; a break: no rounds. The "
                  "line is the district's share now.");
    }
    static QString share() { return tr("shifts without a critical gap"); }

    static QString itemsTitle(const DistrictScene& scene)
    {
        for (const DistrictFinding& finding : scene.review().findings) {
            if (finding.code == DistrictFindingCode::OftenMissing)
                return scene.text().sentence(finding);
        }
        return tr("What is missing where");
    }
    static QString itemsPrint(std::size_t most)
    {
        return tr("Rounds with a gap, of those that looked, in per cent; a crossed cell: does not apply or "
                  "nobody looked. The %n item(s) missing most by weight; all of them are in the table.",
            nullptr, static_cast<int>(most));
    }
    static QString shade() { return tr("share of rounds with a gap"); }
    static QString itemColumn() { return tr("Item"); }
    static QString unitColumn() { return tr("Unit"); }

    static MapCell cell(const DistrictScene& scene, const QString& item, std::size_t unit, stats::Tally gaps)
    {
        MapCell cell;
        if (gaps.n > 0) {
            cell.share = static_cast<double>(gaps.x) / static_cast<double>(gaps.n);
            cell.label = gaps.x > 0 ? scene.figures().number(100.0 * *cell.share) : QString();
        }
        cell.text = tr("%1, %2: missing in %3 rounds")
                        .arg(item, scene.text().unit(unit), scene.figures().share(gaps));
        return cell;
    }
};

/** First words of the units' names where they tell them apart: columns are narrow. */
std::vector<QString> shortNames(const DistrictScene& scene)
{
    std::vector<QString> names;
    QSet<QString> firsts;
    for (std::size_t unit = 0; unit < scene.review().units.size(); ++unit) {
        names.push_back(scene.text().unit(unit));
        firsts.insert(names.back().section(QLatin1Char(' '), 0, 0));
    }
    if (static_cast<std::size_t>(firsts.size()) == names.size()) {
        for (QString& name : names)
            name = name.section(QLatin1Char(' '), 0, 0);
    }
    return names;
}

constexpr std::size_t mostItems = 16;

/** Rows of the item map that lose most, by gaps times the usual weight of the severity, worst first. */
std::vector<std::size_t> rowsShown(const DistrictReview& review)
{
    const UnitItems& map = review.itemMap;
    const SeverityWeights weights;
    std::vector<std::size_t> rows(map.items.size());
    for (std::size_t i = 0; i < rows.size(); ++i)
        rows[i] = i;
    const auto loss = [&](std::size_t row) {
        const DistrictItem& item = map.items[row];
        return static_cast<double>(item.gaps.x) * weights.of(review.items[item.item].severity);
    };
    std::stable_sort(
        rows.begin(), rows.end(), [&](std::size_t a, std::size_t b) { return loss(a) > loss(b); });
    rows.resize(std::min(rows.size(), mostItems));
    return rows;
}

}

ChartContent unitMonthsSheet(const DistrictScene& scene)
{
    const DistrictReview& review = scene.review();
    SmallMultiplesFigure figure;
    for (std::size_t unit = 0; unit < review.units.size(); ++unit) {
        SmallPanel panel{.name = scene.text().unit(unit), .centre = review.funnel.whole.value()};
        for (const UnitMonth& month : review.units[unit].months) {
            const stats::Tally tally = month.noCriticalGap;
            panel.values.push_back(tally.n == 0
                    ? std::nullopt
                    : std::optional(static_cast<double>(tally.x) / static_cast<double>(tally.n)));
        }
        panel.note = scene.figures().share(review.units[unit].span.noCriticalGap());
        panel.text = QStringLiteral("%1: %2").arg(panel.name, panel.note);
        panel.finding = std::any_of(review.funnel.units.begin(), review.funnel.units.end(),
            [&](const UnitStanding& one) { return one.unit == unit && one.band == UnitBand::Lower; });
        figure.panels.push_back(std::move(panel));
    }
    figure.values = evenAxis(
        UnitSheet::share(), 0.0, 1.0, 2, [&](double value) { return scene.figures().percent(value); });
    figure.firstPeriod = scene.month(review.months.front());
    figure.lastPeriod = scene.month(review.months.back());
    return {.title = UnitSheet::monthsTitle(),
        .finding = {},
        .smallPrint = UnitSheet::monthsPrint(),
        .emptyText = {},
        .fileName = QStringLiteral("units-by-month"),
        .figure = std::move(figure),
        .table = scene.table("unit-months")};
}

ChartContent unitItemsSheet(const DistrictScene& scene)
{
    const DistrictReview& review = scene.review();
    MapFigure figure{.rowsTitle = UnitSheet::itemColumn(),
        .columnsTitle = UnitSheet::unitColumn(),
        .shadeTitle = UnitSheet::shade()};
    figure.columns = shortNames(scene);
    for (const std::size_t row : rowsShown(review)) {
        const QString name = scene.itemName(review.itemMap.items[row].item);
        figure.rows.push_back(name);
        std::vector<MapCell> cells;
        for (std::size_t unit = 0; unit < review.units.size(); ++unit)
            cells.push_back(UnitSheet::cell(scene, name, unit, review.itemMap.cells[row][unit]));
        figure.cells.push_back(std::move(cells));
    }
    return {.title = UnitSheet::itemsTitle(scene),
        .finding = {},
        .smallPrint = UnitSheet::itemsPrint(figure.rows.size()),
        .emptyText = {},
        .fileName = QStringLiteral("items-by-unit"),
        .figure = std::move(figure),
        .table = scene.table("unit-items")};
}

std::vector<DistrictSheet> districtSheets(const DistrictScene& scene)
{
    std::vector<DistrictSheet> sheets;
    sheets.push_back({.part = DistrictPart::Visits, .content = visitsSheet(scene)});
    sheets.push_back({.part = DistrictPart::Funnel, .content = funnelSheet(scene)});
    sheets.push_back({.part = DistrictPart::SideBySide, .content = sideBySideSheet(scene)});
    sheets.push_back({.part = DistrictPart::Months, .content = unitMonthsSheet(scene)});
    sheets.push_back({.part = DistrictPart::Reporting, .content = reportingSheet(scene)});
    sheets.push_back({.part = DistrictPart::Items, .content = unitItemsSheet(scene)});
    sheets.push_back({.part = DistrictPart::Changes, .content = unitChangesSheet(scene)});
    sheets.push_back({.part = DistrictPart::Stock, .content = stockSheet(scene)});
    return sheets;
}

}
