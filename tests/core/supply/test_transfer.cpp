// SPDX-License-Identifier: MIT
#include "core/supply/transfer.h"

#include <algorithm>
#include <array>
#include <doctest/doctest.h>
#include <map>
#include <random>

using namespace cradlepost;

namespace {

ShelfStand shelf(std::int64_t usable, std::int64_t par, std::int64_t minimum = 0)
{
    return {.item = {.id = "oxytocin", .name = "Oxytocin", .levels = {.par = par, .minimum = minimum}},
        .usable = usable,
        .perDay = {},
        .daysToDelivery = 10};
}

UnitShelves unit(const std::string& id, const ShelfStand& stand) { return {.unit = id, .shelves = {stand}}; }

TransferPlan planned(const std::vector<UnitShelves>& units, const DistanceTable& distances = {})
{
    const auto plan = planTransfers(units, distances);
    REQUIRE(plan.has_value());
    return *plan;
}

}

TEST_CASE("Winston's Powerco: three plants with 35, 50, 40 and four cities with 45, 20, 30, 30 cost 1020")
{
    // W. L. Winston, Operations Research: Applications and Algorithms, ch. 7, Powerco (figures from memory).
    // Costs as kilometres; each plant keeps a par of 100 of its own, each city has nothing.
    const std::array<std::int64_t, 3> supply{35, 50, 40};
    const std::array<std::int64_t, 4> demand{45, 20, 30, 30};
    constexpr std::int64_t cost[3][4] = {{8, 6, 10, 9}, {9, 12, 13, 7}, {14, 9, 16, 5}};
    std::vector<UnitShelves> units;
    DistanceTable distances;
    for (std::size_t i = 0; i < supply.size(); ++i)
        units.push_back(unit("plant-" + std::to_string(i), shelf(100 + supply[i], 100, 20)));
    for (std::size_t j = 0; j < demand.size(); ++j) {
        units.push_back(unit("city-" + std::to_string(j), shelf(0, demand[j], demand[j])));
        for (std::size_t i = 0; i < supply.size(); ++i)
            distances.set({.from = units[i].unit, .to = units.back().unit, .metres = cost[i][j] * 1000});
    }
    const TransferPlan plan = planned(units, distances);
    CHECK(plan.byDistance);
    CHECK(plan.pieceMetres == 1'020'000);
    std::int64_t moved = 0;
    for (const Transfer& move : plan.moves)
        moved += move.pieces;
    CHECK(moved == 125);
    for (const ItemBalance& balance : plan.balances)
        CHECK(balance.unmet == 0);
}

TEST_CASE("a giver keeps its par, and what it uses in thirty days or until its delivery")
{
    ShelfStand giver = shelf(200, 60, 20);
    CHECK(ownCover(giver, {}) == 60);
    giver.perDay = 3.0;
    CHECK(ownCover(giver, {}) == 90);
    giver.daysToDelivery = 45;
    CHECK(ownCover(giver, {}) == 135);
    CHECK(ownCover(giver, {.coverDays = 100}) == 300);
    const TransferPlan plan = planned({unit("a", giver), unit("b", shelf(0, 500, 100))});
    REQUIRE(plan.moves.size() == 1);
    CHECK(plan.moves[0].pieces == 200 - 135);
    const auto taker = std::find_if(
        plan.balances.begin(), plan.balances.end(), [](const ItemBalance& one) { return one.unit == 1; });
    REQUIRE(taker != plan.balances.end());
    CHECK(taker->lacks == 500);
    CHECK(taker->unmet == 500 - 65);
}

TEST_CASE("a unit lacks from its minimum down, or when it will not last until the delivery")
{
    CHECK(shortage(shelf(21, 60, 20)) == 0);
    CHECK(shortage(shelf(20, 60, 20)) == 40);
    ShelfStand quick = shelf(50, 60, 20);
    quick.perDay = 8.0;
    CHECK(runsOut(quick));
    CHECK(shortage(quick) == 30); // 80 until the delivery, above par
    quick.perDay = 5.0;
    CHECK_FALSE(runsOut(quick));
    CHECK(shortage(quick) == 0);
    CHECK(runsOut(shelf(0, 60, 20)));
    CHECK(shortage(shelf(0, 0, 0)) == 0); // nothing is kept of it
}

TEST_CASE("the nearer giver gives first, and nothing goes where no way is known")
{
    DistanceTable distances;
    distances.set({.from = "far", .to = "short", .metres = 40'000});
    distances.set({.from = "near", .to = "short", .metres = 5'000});
    const std::vector<UnitShelves> units{unit("far", shelf(100, 50, 10)), unit("near", shelf(80, 50, 10)),
        unit("apart", shelf(900, 50, 10)), unit("short", shelf(10, 50, 10))};
    const TransferPlan plan = planned(units, distances);
    REQUIRE(plan.moves.size() == 2);
    CHECK(plan.moves[0].from == 0);
    CHECK(plan.moves[0].pieces == 10);
    CHECK(plan.moves[0].metres == 40'000);
    CHECK(plan.moves[1].from == 1);
    CHECK(plan.moves[1].pieces == 30);
    CHECK(plan.pieceMetres == 10 * 40'000 + 30 * 5'000);
}

TEST_CASE("without any distance any way counts the same, and the plan says so")
{
    const TransferPlan plan = planned({unit("a", shelf(90, 50, 10)), unit("b", shelf(5, 30, 10))});
    CHECK_FALSE(plan.byDistance);
    REQUIRE(plan.moves.size() == 1);
    CHECK(plan.moves[0].pieces == 25);
    CHECK(plan.moves[0].metres == 0);
    CHECK(plan.pieceMetres == 0);
}

TEST_CASE("what is no longer kept stays where it is, and other items are never mixed")
{
    ShelfStand retired = shelf(90, 50, 10);
    retired.item.retired = true;
    CHECK(planned({unit("a", retired), unit("b", shelf(5, 30, 10))}).moves.empty());
    ShelfStand other = shelf(90, 50, 10);
    other.item.id = "gloves";
    CHECK(planned({unit("a", other), unit("b", shelf(5, 30, 10))}).moves.empty());
}

TEST_CASE("over random districts no giver falls below its cover and nothing is made or lost")
{
    std::mt19937 random(20261103);
    const auto upTo = [&](unsigned most) { return static_cast<std::int64_t>(random() % (most + 1)); };
    int moved = 0;
    for (int trial = 0; trial < 300; ++trial) {
        std::vector<UnitShelves> units;
        DistanceTable distances;
        for (int i = 0; i < 8; ++i) {
            const std::int64_t par = 1 + upTo(99);
            ShelfStand stand = shelf(upTo(200), par, upTo(static_cast<unsigned>(par)));
            if (upTo(1) == 1)
                stand.perDay = static_cast<double>(upTo(80)) / 10;
            units.push_back(unit("u" + std::to_string(i), stand));
            for (int j = 0; j < i; ++j) {
                if (upTo(3) != 0)
                    distances.set({.from = units.back().unit,
                        .to = "u" + std::to_string(j),
                        .metres = 1 + upTo(90'000)});
            }
        }
        const TransferPlan plan = planned(units, distances);
        std::map<std::size_t, std::int64_t> given;
        std::map<std::size_t, std::int64_t> got;
        std::int64_t pieceMetres = 0;
        for (const Transfer& move : plan.moves) {
            given[move.from] += move.pieces;
            got[move.to] += move.pieces;
            pieceMetres += move.pieces * move.metres;
            CHECK(move.metres == distances.between(units[move.from].unit, units[move.to].unit));
            ++moved;
        }
        CHECK(pieceMetres == plan.pieceMetres);
        for (const ItemBalance& one : plan.balances) {
            CHECK(given[one.unit] <= one.spare);
            CHECK(one.usable - given[one.unit] >= std::min(one.usable, one.cover));
            CHECK(got[one.unit] == one.lacks - one.unmet);
            CHECK(one.unmet >= 0);
            CHECK((one.spare == 0 || one.lacks == 0));
        }
    }
    CHECK(moved > 100);
}
