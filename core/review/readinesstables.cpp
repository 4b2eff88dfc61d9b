// SPDX-License-Identifier: MIT
#include "core/review/tablerow.h"

namespace cradlepost {

std::vector<Column> shareColumns(const char* x, const char* n, const char* share)
{
    return {countColumn(x), countColumn(n), shareColumn(share), shareColumn("low"), shareColumn("high")};
}

std::vector<Column> figureColumns()
{
    std::vector<Column> columns{codeColumn("figure")};
    for (Column& column : shareColumns("x", "n", "share"))
        columns.push_back(std::move(column));
    columns.push_back(numberColumn("value", 3));
    columns.push_back(codeColumn("unit"));
    columns.push_back(codeColumn("cannotSay"));
    return columns;
}

Cells figureRow(const char* figure, const Share& share, std::optional<CannotSay> why)
{
    Cells row{cell(figure)};
    addShare(row, share);
    row.insert(row.end(), {Cell(), cell(""), cell(why)});
    return row;
}

Cells figureRow(
    const char* figure, std::optional<double> value, const char* unit, std::optional<CannotSay> why)
{
    return {cell(figure), Cell(), Cell(), Cell(), Cell(), Cell(), cell(value), cell(unit), cell(why)};
}

void addItem(Cells& row, const ReviewItem& item)
{
    row.insert(row.end(), {cell(item.id), cell(item.section), cell(codeName(item.severity))});
}

namespace {

DataTable summaryTable(const MonthReview& review)
{
    const ReadinessReview& readiness = review.readiness;
    DataTable table{.id = "summary", .columns = figureColumns()};
    const Share items{.tally = readiness.items, .interval = {}}; // items of a round are not independent
    table.rows = {figureRow("done", review.calendar.done), figureRow("ready", readiness.ready, readiness.why),
        figureRow("ready-with-gaps", readiness.readyWithGaps, readiness.why),
        figureRow("no-critical-gap", readiness.noCriticalGap, readiness.why),
        figureRow("items-met", items, readiness.why),
        figureRow("mean-index", readiness.meanIndex, "share", readiness.why),
        figureRow("lowest-index", readiness.lowestIndex, "share", readiness.why),
        figureRow("not-ready", static_cast<double>(readiness.notReady), "rounds")};
    return table;
}

DataTable doneTable(const MonthReview& review)
{
    DataTable table{.id = "done",
        .columns = {dayColumn("date"), codeColumn("shift"), timeColumn("begins"), timeColumn("ends"),
            codeColumn("state"), codeColumn("readiness"), countColumn("amended")}};
    for (const DoneCell& one : review.calendar.cells) {
        table.rows.push_back({cell(one.shift.date), cell(one.shift.code), cell(one.shift.begins),
            cell(one.shift.ends), cell(codeName(one.state)),
            one.readiness ? cell(codeName(*one.readiness)) : Cell(), cell(one.amended)});
    }
    return table;
}

DataTable lostTable(const MonthReview& review)
{
    DataTable table{.id = "lost-readiness",
        .columns = {codeColumn("item"), codeColumn("section"), codeColumn("severity"), countColumn("gaps"),
            countColumn("n"), shareColumn("share"), shareColumn("low"), shareColumn("high"),
            countColumn("notChecked"), numberColumn("weight", 1), numberColumn("loss", 1),
            shareColumn("lossShare"), shareColumn("cumulated")}};
    for (const LostItem& one : review.lost.items) {
        Cells row;
        addItem(row, review.items[one.item]);
        addShare(row, one.gaps);
        row.insert(row.end(),
            {cell(one.notChecked), cell(one.weight), cell(one.loss), cell(one.share), cell(one.cumulated)});
        table.rows.push_back(std::move(row));
    }
    return table;
}

DataTable weekTable(const MonthReview& review)
{
    DataTable table{.id = "item-weeks",
        .columns = {codeColumn("item"), codeColumn("section"), codeColumn("severity"), dayColumn("week"),
            countColumn("gaps"), countColumn("n"), shareColumn("share")}};
    const ItemWeeks& map = review.itemWeeks;
    for (std::size_t i = 0; i < map.items.size(); ++i) {
        for (std::size_t week = 0; week < map.weeks.size(); ++week) {
            const stats::Tally& tally = map.cells[i][week];
            Cells row;
            addItem(row, review.items[map.items[i]]);
            row.insert(row.end(), {cell(map.weeks[week]), cell(tally.x), cell(tally.n), shareCell(tally)});
            table.rows.push_back(std::move(row));
        }
    }
    return table;
}

}

void addReadinessTables(std::vector<DataTable>& tables, const MonthReview& review)
{
    tables.push_back(summaryTable(review));
    tables.push_back(doneTable(review));
    tables.push_back(lostTable(review));
    tables.push_back(weekTable(review));
}

}
