// SPDX-License-Identifier: MIT
#include "core/review/districttablerow.h"
#include "core/review/visitweights.h"

namespace cradlepost {

namespace {

DataTable reasonTable(const DistrictReview& review)
{
    DataTable table{.id = "visit-reasons",
        .columns = {textColumn("unit"), codeColumn("reason"), numberColumn("points", 1), codeColumn("items"),
            textColumn("names"), countColumn("count"), numberColumn("hours", 0, "h"), countColumn("days"),
            countColumn("x"), countColumn("n"), shareColumn("share"), shareColumn("low"), shareColumn("high"),
            countColumn("beforeX"), countColumn("beforeN")}};
    for (const VisitNeed& need : review.visits) {
        for (const VisitReason& reason : need.reasons) {
            Cells row{cell(review.units[need.unit].name), cell(codeName(reason.code)), cell(reason.points),
                cell(joined(reason.items, " ")), cell(joined(reason.names, "; ")), cell(reason.count),
                cell(reason.hours), cell(reason.days)};
            addShare(row, reason.share);
            row.insert(row.end(), {cell(reason.before.tally.x), cell(reason.before.tally.n)});
            table.rows.push_back(std::move(row));
        }
    }
    return table;
}

DataTable weightTable(const VisitWeights& weights)
{
    DataTable table{.id = "visit-weights", .columns = {codeColumn("weight"), numberColumn("value", 1)}};
    for (const WeightValue& one : weightsOf(weights))
        table.rows.push_back({cell(one.code), cell(one.value)});
    return table;
}

DataTable resultTable(const DistrictReview& review)
{
    DataTable table{.id = "unit-visits",
        .columns = {textColumn("unit"), timeColumn("visitedAt"), countColumn("sample"), countColumn("pass"),
            countColumn("looked"), countColumn("metOfLooked"), codeColumn("decision"), codeColumn("items")}};
    for (const DistrictUnit& unit : review.units) {
        for (const VisitResult& visit : unit.visits)
            table.rows.push_back(
                {cell(unit.name), cell(visit.at), cell(visit.sample), cell(visit.pass), cell(visit.looked),
                    cell(visit.met()), cell(codeName(visit.decision())), cell(joined(visit.items, " "))});
    }
    return table;
}

}

void addVisitTables(std::vector<DataTable>& tables, const DistrictReview& review)
{
    DataTable table{.id = "visits",
        .columns = {countColumn("place"), textColumn("unit"), numberColumn("points", 1), codeColumn("help")}};
    std::int64_t place = 0;
    for (const VisitNeed& need : review.visits)
        table.rows.push_back({cell(++place), cell(review.units[need.unit].name), cell(need.points),
            cell(codeName(need.help))});
    tables.push_back(std::move(table));
    tables.push_back(reasonTable(review));
    tables.push_back(weightTable(review.options.weights));
    tables.push_back(resultTable(review));
}

}
