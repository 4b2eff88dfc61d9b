// SPDX-License-Identifier: MIT
#include "core/review/districttables.h"
#include "tests/core/review/handmadedistrict.h"

#include <algorithm>
#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

const DataTable& table(const std::vector<DataTable>& tables, std::string_view id)
{
    const auto found
        = std::find_if(tables.begin(), tables.end(), [&](const DataTable& one) { return one.id == id; });
    REQUIRE(found != tables.end());
    return *found;
}

ShelfStand gloves(std::int64_t usable)
{
    return {.item = {.id = "gloves", .name = "Gloves", .levels = {.par = 50, .minimum = 10}},
        .usable = usable,
        .perDay = {},
        .daysToDelivery = 10};
}

DistrictHistory pair()
{
    DistrictHistory history
        = test::handMadeDistrict({{"Alder", 80, 90, "primary"}, {"Beck", 78, 90, "community"}});
    history.shelves = {{.unit = history.units[0].id, .shelves = {gloves(90)}},
        {.unit = history.units[1].id, .shelves = {gloves(5)}}};
    return history;
}

}

TEST_CASE("transfers and balances stand in tables, a distance that is not known is an empty cell")
{
    DistrictHistory history = pair();
    auto tables = districtTables(reviewDistrict(history));
    REQUIRE(table(tables, "transfers").rows.size() == 1);
    const auto& row = table(tables, "transfers").rows[0];
    CHECK(row[0] == Cell(std::string("Gloves")));
    CHECK(row[1] == Cell(std::string("Alder")));
    CHECK(row[2] == Cell(std::string("Beck")));
    CHECK(row[3] == Cell(std::int64_t{40}));
    CHECK(row[4] == Cell());
    history.distances.set({.from = history.units[0].id, .to = history.units[1].id, .metres = 12'500});
    tables = districtTables(reviewDistrict(history));
    CHECK(table(tables, "transfers").rows[0][4] == Cell(12.5));
    const auto& balances = table(tables, "stock-balance").rows;
    REQUIRE(balances.size() == 2);
    CHECK(balances[0][5] == Cell(std::int64_t{40})); // spare
    CHECK(balances[1][4] == Cell(std::int64_t{45})); // lacks
    CHECK(balances[1][6] == Cell(std::int64_t{5})); // unmet
}

TEST_CASE("a finding names who could be helped, and there is none without shelves")
{
    DistrictHistory history = pair();
    const auto isMove = [](const DistrictFinding& one) { return one.code == DistrictFindingCode::CouldMove; };
    const auto findings = reviewDistrict(history).findings;
    const auto found = std::find_if(findings.begin(), findings.end(), isMove);
    REQUIRE(found != findings.end());
    CHECK(found->units == std::vector<std::size_t>{1});
    CHECK(found->count == 1);
    history.shelves.clear();
    const auto none = reviewDistrict(history);
    CHECK(std::none_of(none.findings.begin(), none.findings.end(), isMove));
    CHECK_FALSE(none.transfers);
    CHECK(table(districtTables(none), "transfers").rows.empty());
}

TEST_CASE("visits stand in a table with what they decided, and the last one may be a finding")
{
    DistrictHistory history = pair();
    history.units[1].visits = {{.at = fromMs(5), .sample = 18, .pass = 16, .looked = 18, .notMet = 1},
        {.at = fromMs(9), .sample = 18, .pass = 16, .looked = 18, .notMet = 5, .items = {"light"}}};
    const DistrictReview review = reviewDistrict(history);
    const auto tables = districtTables(review);
    const auto& rows = table(tables, "unit-visits").rows;
    REQUIRE(rows.size() == 2);
    CHECK(rows[0][6] == Cell(std::string("reached")));
    CHECK(rows[1][6] == Cell(std::string("not-reached")));
    CHECK(rows[1][5] == Cell(std::int64_t{13}));
    CHECK(std::any_of(review.findings.begin(), review.findings.end(), [](const DistrictFinding& one) {
        return one.code == DistrictFindingCode::NotReached && one.units == std::vector<std::size_t>{1};
    }));
}

TEST_CASE("one level alone keeps its units and their shelves together")
{
    DistrictHistory history = pair();
    CHECK(levelsOf(history) == std::vector<std::string>{"community", "primary"});
    keepLevel(history, "");
    CHECK(history.units.size() == 2);
    keepLevel(history, "community");
    REQUIRE(history.units.size() == 1);
    CHECK(history.units[0].name == "Beck");
    REQUIRE(history.shelves.size() == 1);
    CHECK(history.shelves[0].shelves[0].usable == 5);
    keepLevel(history, "primary");
    CHECK(history.units.empty());
    CHECK(reviewDistrict(history).findings.front().code == DistrictFindingCode::NothingDone);
}
