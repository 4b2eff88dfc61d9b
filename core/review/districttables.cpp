// SPDX-License-Identifier: MIT
#include "core/review/districttables.h"

#include "core/review/districttablerow.h"

namespace cradlepost {

std::string joined(const std::vector<std::string>& parts, const char* between)
{
    std::string text;
    for (const std::string& part : parts)
        text += (text.empty() ? "" : between) + part;
    return text;
}

namespace {

DataTable findingTable(const DistrictReview& review)
{
    DataTable table{.id = "district-findings",
        .columns = {countColumn("place"), codeColumn("code"), codeColumn("part"), flagColumn("question"),
            textColumn("units"), codeColumn("items"), countColumn("x"), countColumn("n"),
            shareColumn("share"), shareColumn("low"), shareColumn("high"), countColumn("beforeX"),
            countColumn("beforeN"), countColumn("count"), numberColumn("value", 1)}};
    std::int64_t place = 0;
    for (const DistrictFinding& one : review.findings) {
        std::vector<std::string> names;
        for (const std::size_t unit : one.units)
            names.push_back(review.units[unit].name);
        Cells row{cell(++place), cell(codeName(one.code)), cell(codeName(one.part)), cell(one.isQuestion),
            cell(joined(names, ", ")), cell(joined(one.items, " "))};
        addShare(row, one.share);
        row.insert(row.end(),
            {cell(one.before.tally.x), cell(one.before.tally.n), cell(one.count), cell(one.value)});
        table.rows.push_back(std::move(row));
    }
    return table;
}

DataTable summaryTable(const DistrictReview& review)
{
    DataTable table{.id = "district-summary", .columns = figureColumns()};
    const UnitFunnel& funnel = review.funnel;
    table.rows.push_back(figureRow("no-critical-gap", funnel.whole, funnel.why));
    const DispersionChoice& choice = funnel.dispersion;
    const std::string model = std::string("dispersion-") + stats::dispersionName(choice.model);
    const auto add
        = [&](const char* figure, double value) { table.rows.push_back(figureRow(figure, value, "")); };
    if (!funnel.why) {
        add(model.c_str(), choice.p);
        add("dispersion-phi", choice.phi);
        add("dispersion-tau", choice.tau);
        add("likelihood-multiplicative", choice.likelihoodMultiplicative);
        add("likelihood-additive", choice.likelihoodAdditive);
    }
    if (review.sample) {
        const stats::LqasRule& rule = review.sample->rule;
        add("sample-size", static_cast<double>(rule.n));
        add("sample-pass", static_cast<double>(rule.d));
        add("sample-good-failed", rule.risks.goodFailed);
        add("sample-poor-passed", rule.risks.poorPassed);
    }
    return table;
}

void addUnitTable(std::vector<DataTable>& tables, const DistrictReview& review)
{
    DataTable table{.id = "units",
        .columns = {textColumn("unit"), textColumn("level"), codeColumn("band"), flagColumn("few"),
            countColumn("x"), countColumn("n"), shareColumn("share"), shareColumn("low"), shareColumn("high"),
            shareColumn("innerLow"), shareColumn("innerHigh"), shareColumn("outerLow"),
            shareColumn("outerHigh"), numberColumn("z", 2), numberColumn("p", 4),
            numberColumn("adjustedP", 4), countColumn("ready"), countColumn("itemsMet"), countColumn("items"),
            shareColumn("itemsShare")}};
    for (const UnitStanding& one : review.funnel.units) {
        const DistrictUnit& unit = review.units[one.unit];
        Cells row{cell(unit.name), cell(unit.level), cell(codeName(one.band)), cell(one.few)};
        addShare(row, one.share);
        row.insert(row.end(),
            {cell(one.inner.low), cell(one.inner.high), cell(one.outer.low), cell(one.outer.high),
                cell(one.z), cell(one.p), cell(one.pAdjusted), cell(unit.span.ready), cell(unit.span.items.x),
                cell(unit.span.items.n), shareCell(unit.span.items)});
        table.rows.push_back(std::move(row));
    }
    tables.push_back(std::move(table));
    DataTable curve{.id = "funnel-curve",
        .columns = {countColumn("n"), shareColumn("innerLow"), shareColumn("innerHigh"),
            shareColumn("outerLow"), shareColumn("outerHigh")}};
    for (const FunnelCurvePoint& at : review.funnel.curve)
        curve.rows.push_back(
            {cell(at.n), cell(at.inner.low), cell(at.inner.high), cell(at.outer.low), cell(at.outer.high)});
    tables.push_back(std::move(curve));
}

void addItemTables(std::vector<DataTable>& tables, const DistrictReview& review)
{
    DataTable months{.id = "unit-months",
        .columns = {textColumn("unit"), textColumn("month"), countColumn("noCritical"), countColumn("rounds"),
            shareColumn("noCriticalShare"), countColumn("itemsMet"), countColumn("items"),
            shareColumn("itemsShare")}};
    for (const DistrictUnit& unit : review.units) {
        for (std::size_t i = 0; i < unit.months.size(); ++i) {
            const UnitMonth& month = unit.months[i];
            const std::string name = toIso(review.months[i] / std::chrono::day(1)).substr(0, 7);
            months.rows.push_back({cell(unit.name), cell(name), cell(month.noCriticalGap.x),
                cell(month.noCriticalGap.n), shareCell(month.noCriticalGap), cell(month.items.x),
                cell(month.items.n), shareCell(month.items)});
        }
    }
    tables.push_back(std::move(months));
    DataTable items{.id = "unit-items",
        .columns = {codeColumn("item"), codeColumn("section"), codeColumn("severity"), textColumn("unit"),
            countColumn("gaps"), countColumn("n"), shareColumn("share")}};
    for (std::size_t row = 0; row < review.itemMap.items.size(); ++row) {
        for (std::size_t unit = 0; unit < review.units.size(); ++unit) {
            const stats::Tally gaps = review.itemMap.cells[row][unit];
            Cells cells;
            addItem(cells, review.items[review.itemMap.items[row].item]);
            cells.insert(
                cells.end(), {cell(review.units[unit].name), cell(gaps.x), cell(gaps.n), shareCell(gaps)});
            items.rows.push_back(std::move(cells));
        }
    }
    tables.push_back(std::move(items));
}

}

std::vector<DataTable> districtTables(const DistrictReview& review)
{
    std::vector<DataTable> tables{findingTable(review), summaryTable(review)};
    addVisitTables(tables, review);
    addStockTables(tables, review);
    addUnitTable(tables, review);
    addComparisonTables(tables, review);
    addItemTables(tables, review);
    addReportingTable(tables, review);
    return tables;
}

}
