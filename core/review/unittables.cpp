// SPDX-License-Identifier: MIT
#include "core/review/districttablerow.h"

namespace cradlepost {

namespace {

void addDifference(Cells& row, const std::optional<stats::Difference>& difference)
{
    row.push_back(difference ? cell(difference->estimate) : Cell());
    row.push_back(difference ? cell(difference->interval.low) : Cell());
    row.push_back(difference ? cell(difference->interval.high) : Cell());
}

DataTable levelTable(const DistrictReview& review)
{
    DataTable table{.id = "unit-levels",
        .columns = {textColumn("level"), textColumn("unit"), countColumn("x"), countColumn("n"),
            shareColumn("share"), shareColumn("low"), shareColumn("high"), countColumn("othersX"),
            countColumn("othersN"), shareColumn("othersShare"), numberColumn("difference", 3),
            numberColumn("differenceLow", 3), numberColumn("differenceHigh", 3), numberColumn("adjustedP", 4),
            codeColumn("band"), codeColumn("cannotSay")}};
    for (const UnitInLevel& one : review.levels) {
        Cells row{cell(one.level), cell(review.units[one.unit].name)};
        addShare(row, one.share);
        row.insert(
            row.end(), {cell(one.others.tally.x), cell(one.others.tally.n), shareCell(one.others.tally)});
        addDifference(row, one.difference);
        row.insert(
            row.end(), {cell(one.pAdjusted), one.why ? Cell() : cell(codeName(one.band)), cell(one.why)});
        table.rows.push_back(std::move(row));
    }
    return table;
}

DataTable mixTable(const DistrictReview& review)
{
    DataTable table{.id = "unit-shift-mix",
        .columns = {textColumn("unit"), countColumn("observed"), numberColumn("expected", 1),
            numberColumn("ratio", 2), numberColumn("ratioLow", 2), numberColumn("ratioHigh", 2)}};
    for (const UnitShiftMix& mix : review.shiftMixes) {
        Cells row{cell(review.units[mix.unit].name), cell(mix.observed)};
        if (mix.ratio)
            row.insert(row.end(),
                {cell(mix.ratio->expected), cell(mix.ratio->ratio), cell(mix.ratio->interval.low),
                    cell(mix.ratio->interval.high)});
        row.resize(table.columns.size());
        table.rows.push_back(std::move(row));
    }
    return table;
}

DataTable changeTable(const DistrictReview& review)
{
    DataTable table{.id = "unit-changes",
        .columns = {textColumn("unit"), countColumn("beforeX"), countColumn("beforeN"),
            shareColumn("beforeShare"), countColumn("afterX"), countColumn("afterN"),
            shareColumn("afterShare"), numberColumn("difference", 3), numberColumn("differenceLow", 3),
            numberColumn("differenceHigh", 3), numberColumn("dispersion", 2), numberColumn("adjustedP", 4),
            codeColumn("cannotSay")}};
    for (const UnitChange& change : review.changes) {
        const stats::Tally before = change.before.tally;
        const stats::Tally after = change.after.tally;
        Cells row{cell(review.units[change.unit].name), cell(before.x), cell(before.n), shareCell(before),
            cell(after.x), cell(after.n), shareCell(after)};
        addDifference(row, change.difference);
        row.insert(row.end(), {cell(change.dispersion), cell(change.pAdjusted), cell(change.why)});
        table.rows.push_back(std::move(row));
    }
    return table;
}

}

void addComparisonTables(std::vector<DataTable>& tables, const DistrictReview& review)
{
    tables.push_back(levelTable(review));
    tables.push_back(mixTable(review));
    tables.push_back(changeTable(review));
}

void addReportingTable(std::vector<DataTable>& tables, const DistrictReview& review)
{
    DataTable table{.id = "unit-reporting",
        .columns = {textColumn("unit"), countColumn("x"), countColumn("n"), shareColumn("share"),
            shareColumn("low"), shareColumn("high"), countColumn("late"), countColumn("timed"),
            shareColumn("lateShare"), countColumn("paper"), countColumn("amended"),
            countColumn("longestSilence"), numberColumn("silentDays", 1), timeColumn("lastRound"),
            countColumn("questions"), flagColumn("silent")}};
    for (const UnitReporting& one : review.reporting) {
        Cells row{cell(review.units[one.unit].name)};
        addShare(row, one.done);
        row.insert(row.end(),
            {cell(one.late.tally.x), cell(one.late.tally.n), shareCell(one.late.tally), cell(one.paper),
                cell(one.amended), cell(one.longestSilence), cell(one.silentDays), cell(one.lastRound),
                cell(one.questions), cell(one.isSilent)});
        table.rows.push_back(std::move(row));
    }
    tables.push_back(std::move(table));
}

}
