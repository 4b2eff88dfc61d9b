// SPDX-License-Identifier: MIT
#include "core/review/tablerow.h"

namespace cradlepost {

namespace {

const char* nameOf(const RestoreGroup& group) { return group.severity ? codeName(*group.severity) : "all"; }

void addCurve(DataTable& table, const RestoreGroup& group)
{
    if (!group.curve)
        return;
    for (const stats::SurvivalStep& step : group.curve->steps) {
        table.rows.push_back({cell(nameOf(group)), cell(step.time), cell(step.atRisk), cell(step.events),
            cell(step.survival), step.interval ? cell(step.interval->low) : Cell(),
            step.interval ? cell(step.interval->high) : Cell()});
    }
}

void addCounts(DataTable& table, const RestoreReview& restore, const RestoreGroup& group)
{
    const auto& curve = group.curve;
    Cells row{cell(nameOf(group)), cell(group.durations.size()), cell(group.mended), cell(group.open),
        curve ? cell(curve->median) : Cell(), curve ? cell(curve->medianLow) : Cell(),
        curve ? cell(curve->medianHigh) : Cell()};
    const bool hasTest = !group.severity && restore.test;
    row.push_back(hasTest ? cell(restore.test->chiSquare) : Cell());
    row.push_back(hasTest ? cell(restore.test->df) : Cell());
    row.push_back(hasTest ? cell(restore.test->p) : Cell());
    row.push_back(group.severity ? Cell() : cell(restore.carriedIn));
    row.push_back(group.severity ? Cell() : cell(restore.why));
    table.rows.push_back(std::move(row));
}

void addRestore(std::vector<DataTable>& tables, const RestoreReview& restore)
{
    DataTable curve{.id = "restore",
        .columns = {codeColumn("severity"), numberColumn("hours", 1, "h"), countColumn("atRisk"),
            countColumn("mended"), shareColumn("survival"), shareColumn("low"), shareColumn("high")}};
    DataTable summary{.id = "restore-summary",
        .columns = {codeColumn("severity"), countColumn("n"), countColumn("mended"), countColumn("open"),
            numberColumn("medianHours", 1, "h"), numberColumn("low", 1, "h"), numberColumn("high", 1, "h"),
            numberColumn("logRank", 2), countColumn("df"), numberColumn("p", 4), countColumn("carriedIn"),
            codeColumn("cannotSay")}};
    addCurve(curve, restore.all);
    addCounts(summary, restore, restore.all);
    for (const RestoreGroup& group : restore.bySeverity) {
        addCurve(curve, group);
        addCounts(summary, restore, group);
    }
    tables.push_back(std::move(curve));
    tables.push_back(std::move(summary));
}

}

void addGapTables(std::vector<DataTable>& tables, const MonthReview& review)
{
    addRestore(tables, review.restore);
    DataTable open{.id = "open-gaps",
        .columns
        = {codeColumn("item"), codeColumn("severity"), timeColumn("opened"), numberColumn("hours", 1, "h"),
            countColumn("before"), textColumn("owner"), flagColumn("overdue")}};
    for (const OpenGap& gap : review.openGaps.gaps)
        open.rows.push_back({cell(gap.item), cell(codeName(gap.severity)), cell(gap.opened), cell(gap.hours),
            cell(gap.before), cell(gap.owner), cell(gap.overdue)});
    DataTable there{.id = "availability",
        .columns = {codeColumn("item"), numberColumn("hours", 1, "h"), numberColumn("downHours", 1, "h"),
            shareColumn("share"), countColumn("failures"), numberColumn("hoursBetween", 1, "h"),
            numberColumn("longestDown", 1, "h"), flagColumn("downAtEnd")}};
    for (const Availability& one : review.availability)
        there.rows.push_back(
            {cell(review.items[one.item].id), cell(one.hours), cell(one.downHours), cell(one.share),
                cell(one.failures), cell(one.hoursBetween), cell(one.longestDown), cell(one.downAtEnd)});
    tables.push_back(std::move(open));
    tables.push_back(std::move(there));
}

}
