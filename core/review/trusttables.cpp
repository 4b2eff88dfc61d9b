// SPDX-License-Identifier: MIT
#include "core/review/tablerow.h"

namespace cradlepost {

namespace {

Cells agreementRow(
    const char* figure, const std::optional<stats::Agreement>& agreement, std::optional<CannotSay> why)
{
    Cells row = figureRow(figure, agreement ? std::optional(agreement->estimate) : std::nullopt, "", why);
    if (agreement && agreement->interval) {
        row[4] = cell(agreement->interval->low);
        row[5] = cell(agreement->interval->high);
    }
    return row;
}

std::optional<double> real(std::int64_t count) { return static_cast<double>(count); }

void addPace(DataTable& table, const TrustPace& pace)
{
    table.rows.push_back(figureRow("too-fast", shareOf({.x = pace.tooFast, .n = pace.timed}), pace.why));
    table.rows.push_back(
        figureRow("below-floor", shareOf({.x = pace.belowFloor, .n = pace.timed}), pace.why));
    table.rows.push_back(figureRow("median-seconds", pace.medianSeconds, "s", pace.why));
    table.rows.push_back(figureRow("median-seconds-per-item", pace.medianPerItem, "s", pace.why));
}

void addRepeats(DataTable& table, const TrustRepeats& repeats)
{
    const auto& chance = repeats.chance;
    table.rows.push_back(
        figureRow("repeating", shareOf({.x = repeats.repeating, .n = repeats.compared}), repeats.why));
    table.rows.push_back(
        figureRow("equal-pairs", chance ? real(chance->seen) : std::nullopt, "pairs", repeats.why));
    table.rows.push_back(figureRow("equal-pairs-expected",
        chance ? std::optional(chance->expected) : std::nullopt, "pairs", repeats.why));
    table.rows.push_back(figureRow(
        "equal-pairs-chance", chance ? std::optional(chance->chanceOfSeen) : std::nullopt, "", repeats.why));
}

DataTable figureTable(const TrustReview& trust)
{
    DataTable table{.id = "trust", .columns = figureColumns()};
    table.rows = {figureRow("complete", trust.complete), figureRow("in-time", trust.inTime),
        figureRow("looked-at", Share{.tally = trust.itemsLookedAt.tally, .interval = {}}),
        figureRow("amended", real(trust.amended), "rounds"),
        figureRow("amended-late", real(trust.amendedLate), "rounds"),
        figureRow("recorded-late", real(trust.recordedLate), "rounds"),
        figureRow("paper", real(trust.paper), "rounds")};
    addPace(table, trust.pace);
    addRepeats(table, trust.repeats);
    const TrustAgreement& agreement = trust.agreement;
    table.rows.push_back(figureRow("spot-checks", real(agreement.checks), "rounds"));
    table.rows.push_back(
        figureRow("agreed", Share{.tally = agreement.agreed, .interval = {}}, agreement.why));
    table.rows.push_back(agreementRow("kappa", agreement.kappa, agreement.why));
    table.rows.push_back(agreementRow("ac1", agreement.ac1, agreement.why));
    table.rows.push_back(agreementRow("adjusted-kappa",
        agreement.adjusted ? std::optional(agreement.adjusted->agreement) : std::nullopt, agreement.why));
    return table;
}

DataTable readingTable(const MonthReview& review)
{
    DataTable table{.id = "trust-readings",
        .columns = {codeColumn("item"), numberColumn("step", 1), countColumn("onFives"), countColumn("n"),
            shareColumn("share"), shareColumn("low"), shareColumn("high"), flagColumn("rounded"),
            codeColumn("cannotSay"), numberColumn("chiSquare", 2), numberColumn("p", 4), numberColumn("v", 2),
            countColumn("different"), countColumn("longestRun"), flagColumn("neverVaries")}};
    for (const TrustReading& one : review.trust.readings) {
        Cells row{cell(review.items[one.item].id), cell(one.step.toDouble())};
        addShare(row, one.onFives);
        row.insert(row.end(),
            {cell(one.rounded), cell(one.whyFives), one.digits ? cell(one.digits->chiSquare) : Cell(),
                one.digits ? cell(one.digits->p) : Cell(), one.digits ? cell(one.digits->v) : Cell(),
                cell(one.different), cell(one.longestRun), cell(one.neverVaries)});
        table.rows.push_back(std::move(row));
    }
    return table;
}

DataTable agreementTable(const MonthReview& review)
{
    DataTable table{.id = "trust-agreement",
        .columns = {codeColumn("item"), countColumn("both"), countColumn("agreed"),
            countColumn("roundMetCheckGap"), countColumn("roundGapCheckMet")}};
    for (const ItemAgreement& one : review.trust.agreement.items)
        table.rows.push_back({cell(review.items[one.item].id), cell(one.both), cell(one.agreed),
            cell(one.roundMetCheckGap), cell(one.roundGapCheckMet)});
    return table;
}

}

void addTrustTables(std::vector<DataTable>& tables, const MonthReview& review)
{
    tables.push_back(figureTable(review.trust));
    tables.push_back(readingTable(review));
    tables.push_back(agreementTable(review));
}

}
