// SPDX-License-Identifier: MIT
#include "core/review/districttablerow.h"

namespace cradlepost {

namespace {

DataTable transferTable(const DistrictReview& review)
{
    DataTable table{.id = "transfers",
        .columns = {textColumn("stockItem"), textColumn("fromUnit"), textColumn("toUnit"),
            countColumn("pieces"), numberColumn("distance", 1, "km")}};
    if (!review.transfers)
        return table;
    for (const Transfer& move : review.transfers->moves) {
        Cells row{cell(move.name), cell(review.units[move.from].name), cell(review.units[move.to].name),
            cell(move.pieces)};
        row.push_back(move.metres > 0 ? cell(static_cast<double>(move.metres) / 1000) : Cell());
        table.rows.push_back(std::move(row));
    }
    return table;
}

DataTable balanceTable(const DistrictReview& review)
{
    DataTable table{.id = "stock-balance",
        .columns = {textColumn("stockItem"), textColumn("unit"), countColumn("usable"),
            countColumn("ownCover"), countColumn("lacks"), countColumn("spare"), countColumn("unmet")}};
    if (!review.transfers)
        return table;
    for (const ItemBalance& one : review.transfers->balances)
        table.rows.push_back({cell(one.name), cell(review.units[one.unit].name), cell(one.usable),
            cell(one.cover), cell(one.lacks), cell(one.spare), cell(one.unmet)});
    return table;
}

}

void addStockTables(std::vector<DataTable>& tables, const DistrictReview& review)
{
    tables.push_back(transferTable(review));
    tables.push_back(balanceTable(review));
}

}
