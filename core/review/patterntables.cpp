// SPDX-License-Identifier: MIT
#include "core/review/tablerow.h"

namespace cradlepost {

namespace {

DataTable groupTable(const char* id, const ShiftPatternReview& review, bool isWeekday)
{
    DataTable table{.id = id,
        .columns = {isWeekday ? countColumn("weekday") : codeColumn("shift"), countColumn("due"),
            countColumn("done"), countColumn("noCritical"), shareColumn("noCriticalShare"),
            shareColumn("low"), shareColumn("high"), countColumn("ready"), countColumn("itemsMet"),
            countColumn("items"), shareColumn("itemsShare"), shareColumn("meanIndex")}};
    for (const PatternGroup& group : review.groups) {
        const auto& interval = group.noCriticalGap.interval;
        table.rows.push_back({isWeekday ? cell(group.weekday) : cell(group.shift), cell(group.due),
            cell(group.done), cell(group.noCriticalGap.tally.x), shareCell(group.noCriticalGap.tally),
            interval ? cell(interval->low) : Cell(), interval ? cell(interval->high) : Cell(),
            cell(group.ready.tally.x), cell(group.items.x), cell(group.items.n), shareCell(group.items),
            cell(group.meanIndex)});
    }
    return table;
}

Cells testRow(const char* pattern, const ShiftPatternReview& review)
{
    if (!review.test)
        return {cell(pattern), Cell(), Cell(), Cell(), Cell(), Cell(), Cell(), Cell(), cell(review.why)};
    const PatternTest& test = *review.test;
    const PatternGroup& worst = review.groups[test.worst];
    return {cell(pattern), cell(test.chiSquare), cell(test.df), cell(test.dispersion), cell(test.p),
        cell(worst.weekday > 0 ? std::to_string(worst.weekday) : worst.shift), cell(test.worstP),
        cell(test.differs), Cell()};
}

}

void addPatternTables(std::vector<DataTable>& tables, const MonthReview& review)
{
    tables.push_back(groupTable("by-shift", review.byShift, false));
    tables.push_back(groupTable("by-weekday", review.byWeekday, true));
    tables.push_back({.id = "pattern-tests",
        .columns = {codeColumn("pattern"), numberColumn("chiSquare", 2), countColumn("df"),
            numberColumn("dispersion", 2), numberColumn("p", 4), codeColumn("worst"),
            numberColumn("worstP", 4), flagColumn("differs"), codeColumn("cannotSay")},
        .rows = {testRow("shift", review.byShift), testRow("weekday", review.byWeekday)}});
}

}
