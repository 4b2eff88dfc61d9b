// SPDX-License-Identifier: MIT
#include "core/review/monthtables.h"

#include "core/review/tablerow.h"

namespace cradlepost {

namespace {

std::string joined(const std::vector<std::string>& items)
{
    std::string text;
    for (const std::string& item : items)
        text += (text.empty() ? "" : " ") + item;
    return text;
}

DataTable findingTable(const MonthReview& review)
{
    DataTable table{.id = "findings",
        .columns = {countColumn("place"), codeColumn("code"), codeColumn("part"), flagColumn("question"),
            codeColumn("group"), countColumn("weekday"), codeColumn("items"), dayColumn("day"),
            countColumn("doneX"), countColumn("doneN"), countColumn("beforeX"), countColumn("beforeN"),
            countColumn("afterX"), countColumn("afterN"), countColumn("x"), countColumn("n"),
            shareColumn("share"), shareColumn("low"), shareColumn("high"), numberColumn("value", 3),
            numberColumn("valueLow", 3), numberColumn("valueHigh", 3), numberColumn("hours", 1, "h"),
            countColumn("count")}};
    std::int64_t place = 0;
    for (const MonthFinding& one : review.findings) {
        Cells row{cell(++place), cell(codeName(one.code)), cell(codeName(one.part)), cell(one.isQuestion),
            cell(one.group), one.weekday > 0 ? cell(one.weekday) : Cell(), cell(joined(one.items)),
            cell(one.day), cell(one.done.tally.x), cell(one.done.tally.n), cell(one.before.x),
            cell(one.before.n), cell(one.after.x), cell(one.after.n)};
        addShare(row, one.code == MonthFindingCode::HowReady ? one.ready : one.share);
        row.push_back(one.code == MonthFindingCode::HowReady ? cell(one.index) : cell(one.value));
        row.push_back(one.interval ? cell(one.interval->low) : Cell());
        row.push_back(one.interval ? cell(one.interval->high) : Cell());
        row.push_back(cell(one.hours));
        row.push_back(cell(one.count));
        table.rows.push_back(std::move(row));
    }
    return table;
}

DataTable changeTable(const MonthReview& review)
{
    DataTable table{.id = "changes",
        .columns = {textColumn("title"), dayColumn("from"), dayColumn("until"), codeColumn("items"),
            dayColumn("beforeFrom"), dayColumn("afterTo"), countColumn("roundsBefore"),
            countColumn("roundsAfter"), countColumn("beforeX"), countColumn("beforeN"), countColumn("afterX"),
            countColumn("afterN"), numberColumn("difference", 3), numberColumn("low", 3),
            numberColumn("high", 3), numberColumn("dispersion", 2), codeColumn("cannotSay")}};
    for (const ChangeEffect& effect : review.changeEffects) {
        const ChangeIdea& idea = review.changes[effect.change];
        Cells row{cell(idea.title), cell(idea.from), cell(idea.until), cell(joined(idea.items)),
            cell(effect.before), cell(addDays(effect.to, -1)), cell(effect.roundsBefore),
            cell(effect.roundsAfter), cell(effect.metBefore.x), cell(effect.metBefore.n),
            cell(effect.metAfter.x), cell(effect.metAfter.n)};
        const auto& difference = effect.difference;
        row.push_back(difference ? cell(difference->estimate) : Cell());
        row.push_back(difference ? cell(difference->interval.low) : Cell());
        row.push_back(difference ? cell(difference->interval.high) : Cell());
        row.push_back(difference ? cell(effect.dispersion) : Cell());
        row.push_back(cell(effect.why));
        table.rows.push_back(std::move(row));
    }
    return table;
}

Cells comparedRow(const char* figure, const Share& first, const Share& second,
    const std::optional<stats::Difference>& difference)
{
    return {cell(figure), cell(first.tally.x), cell(first.tally.n), shareCell(first.tally),
        cell(second.tally.x), cell(second.tally.n), shareCell(second.tally),
        difference ? cell(difference->estimate) : Cell(),
        difference ? cell(difference->interval.low) : Cell(),
        difference ? cell(difference->interval.high) : Cell()};
}

}

std::vector<DataTable> monthTables(const MonthReview& review)
{
    std::vector<DataTable> tables;
    tables.push_back(findingTable(review));
    addReadinessTables(tables, review);
    addCourseTables(tables, review);
    addPatternTables(tables, review);
    addReadingTables(tables, review);
    addGapTables(tables, review);
    addTrustTables(tables, review);
    tables.push_back(changeTable(review));
    return tables;
}

std::vector<DataTable> comparisonTables(const SpanComparison& comparison)
{
    const ReadinessReview& first = comparison.first.readiness;
    const ReadinessReview& second = comparison.second.readiness;
    DataTable figures{.id = "compared",
        .columns
        = {codeColumn("figure"), countColumn("firstX"), countColumn("firstN"), shareColumn("firstShare"),
            countColumn("secondX"), countColumn("secondN"), shareColumn("secondShare"),
            numberColumn("difference", 3), numberColumn("low", 3), numberColumn("high", 3)}};
    figures.rows = {comparedRow("done", comparison.first.done, comparison.second.done, {}),
        comparedRow("ready", first.ready, second.ready, comparison.ready),
        comparedRow("no-critical-gap", first.noCriticalGap, second.noCriticalGap, comparison.noCriticalGap)};
    figures.rows.push_back({cell("mean-index"), Cell(), cell(first.indexed), cell(first.meanIndex), Cell(),
        cell(second.indexed), cell(second.meanIndex), cell(comparison.index), Cell(), Cell()});
    DataTable items{.id = "compared-items",
        .columns = {codeColumn("item"), codeColumn("section"), codeColumn("severity"),
            countColumn("firstGaps"), countColumn("firstN"), countColumn("secondGaps"),
            countColumn("secondN"), numberColumn("difference", 3), numberColumn("low", 3),
            numberColumn("high", 3), numberColumn("adjustedP", 4)}};
    for (const ComparedItem& one : comparison.items) {
        Cells row;
        addItem(row, one.item);
        row.insert(row.end(), {cell(one.first.x), cell(one.first.n), cell(one.second.x), cell(one.second.n)});
        row.push_back(one.difference ? cell(one.difference->estimate) : Cell());
        row.push_back(one.difference ? cell(one.difference->interval.low) : Cell());
        row.push_back(one.difference ? cell(one.difference->interval.high) : Cell());
        row.push_back(cell(one.adjustedP));
        items.rows.push_back(std::move(row));
    }
    return {figures, items};
}

}
