// SPDX-License-Identifier: MIT
#include "core/supply/kits.h"

#include "core/round/judge.h"
#include "shelf.h"
#include "tests/core/stats/random.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using Kind = MovementKind;

namespace {

const Date today = day("2026-11-24");

KitPlan plan()
{
    return {.kit = "delivery-kits",
        .par = 4,
        .parts = {{.part = "sheet", .item = "sheet", .perKit = 1},
            {.part = "ties", .item = "ties", .perKit = 2}, {.part = "gauze", .item = "gauze", .perKit = 10}}};
}

void stock(StockBook& book, const std::string& item, std::int64_t pieces, const char* expiry = "")
{
    StockMovement in = moved(Kind::Receipt, pieces, "2026-11-01 08:00", expiry);
    in.item = item;
    apply(book, {.id = {}, .what = in}, day("2026-11-01"));
}

}

TEST_CASE("whole kits are what the scarcest part allows, and every such part is named")
{
    const std::vector<std::int64_t> pieces{5, 7, 39};
    CHECK(kitsFromPieces(plan(), pieces) == KitsPossible{.kits = 3, .limiting = {"ties", "gauze"}});
    const std::vector<std::int64_t> few{5, 7};
    CHECK(kitsFromPieces(plan(), few) == KitsPossible{.kits = 0, .limiting = {"gauze"}});
    CHECK(kitsFromPieces({.kit = "k", .par = 1, .parts = {}}, pieces) == KitsPossible{});
}

TEST_CASE("whole kits agree with how a round judges them")
{
    KitRule rule;
    rule.parts = {{.id = "sheet", .perKit = 1}, {.id = "ties", .perKit = 2}, {.id = "gauze", .perKit = 10}};
    stats::Dice dice(3);
    for (int run = 0; run < 500; ++run) {
        const std::vector<std::int64_t> pieces{dice.whole(0, 9), dice.whole(0, 18), dice.whole(0, 90)};
        KitCounted counted;
        for (const std::int64_t n : pieces)
            counted.parts.push_back(static_cast<int>(n));
        const WholeKits round = wholeKits(rule, counted);
        const KitsPossible mine = kitsFromPieces(plan(), pieces);
        REQUIRE(mine.kits == round.kits);
        REQUIRE(mine.limiting.at(0) == rule.parts[round.limitingPart].id);
    }
}

TEST_CASE("the book gives kits of what is in date only")
{
    StockBook book;
    stock(book, "sheet", 5);
    stock(book, "ties", 8, "2027-01-31");
    stock(book, "gauze", 30, "2026-11-23");
    stock(book, "gauze", 25, "2026-11-24");
    CHECK(kitsFromBook(plan(), book, today) == KitsPossible{.kits = 2, .limiting = {"gauze"}});
    CHECK(kitsFromBook(plan(), {}, today).kits == 0);
}

TEST_CASE("parts that share a stock item share its pieces")
{
    KitPlan shared{.kit = "k",
        .par = 2,
        .parts
        = {{.part = "tie", .item = "ties", .perKit = 1}, {.part = "spare-tie", .item = "ties", .perKit = 1}}};
    StockBook book;
    stock(book, "ties", 3);
    CHECK(kitsFromBook(shared, book, today).kits == 1);
    const Assembly assembly = assemblyToPar(shared, book, today);
    CHECK(assembly.assemble == 1);
    CHECK(assembly.missing == std::vector<PartMissing>{{.part = "spare-tie", .pieces = 1}});
}

TEST_CASE("kits are made up towards par, and what is missing for the rest is named")
{
    StockBook book;
    stock(book, "delivery-kits", 1, "2027-01-31");
    stock(book, "delivery-kits", 9, "2026-11-01");
    stock(book, "sheet", 5);
    stock(book, "ties", 4);
    stock(book, "gauze", 12);
    CHECK(assemblyToPar(plan(), book, today)
        == Assembly{.ready = 1,
            .assemble = 1,
            .stillShort = 2,
            .missing = {{.part = "ties", .pieces = 2}, {.part = "gauze", .pieces = 18}}});
}

TEST_CASE("at par nothing is made up and nothing is missing")
{
    StockBook book;
    stock(book, "delivery-kits", 6);
    CHECK(assemblyToPar(plan(), book, today)
        == Assembly{.ready = 6, .assemble = 0, .stillShort = 0, .missing = {}});
    stock(book, "sheet", 9);
    stock(book, "ties", 18);
    stock(book, "gauze", 90);
    book["delivery-kits"].lots.clear();
    CHECK(assemblyToPar(plan(), book, today).assemble == 4);
    CHECK(assemblyToPar(plan(), book, today).missing.empty());
}

TEST_CASE("made-up kits take their parts with them and expire with the first of them")
{
    StockBook book;
    stock(book, "sheet", 5);
    stock(book, "ties", 3, "2027-06-30");
    stock(book, "ties", 3, "2026-11-20");
    stock(book, "gauze", 12, "2027-02-28");
    stock(book, "gauze", 12, "2027-01-31");
    const auto movements = assembleKits(plan(), book, 1, at("2026-11-24 09:00"), today);
    REQUIRE(movements.has_value());
    std::int64_t id = 0;
    for (const StockMovement& movement : *movements) {
        CHECK(checkMovement(movement).has_value());
        apply(book, recorded(++id, movement), today);
    }
    CHECK(lotsOf(book["delivery-kits"]) == "1 2027-01-31");
    CHECK(lotsOf(book["ties"]) == "3 2026-11-20, 1 2027-06-30");
    CHECK(lotsOf(book["gauze"]) == "2 2027-01-31, 12 2027-02-28");
    CHECK(lotsOf(book["sheet"]) == "4");
    CHECK(book["gauze"].total(Kind::Issue) == 0); // not used yet
}

TEST_CASE("kits whose parts are not there cannot be made up")
{
    StockBook book;
    stock(book, "sheet", 5);
    CHECK_FALSE(assembleKits(plan(), book, 1, at("2026-11-24 09:00"), today).has_value());
    CHECK_FALSE(assembleKits(plan(), book, 0, at("2026-11-24 09:00"), today).has_value());
}

TEST_CASE("a plan comes from the checklist's kit, with a stock item for every part")
{
    KitRule rule;
    rule.par = 4;
    rule.parts = {{.id = "sheet", .perKit = 1}, {.id = "ties", .perKit = 2}};
    Item item{.id = "delivery-kits", .rule = rule};
    const auto made = kitPlan(item, {{"sheet", "plastic-sheet"}, {"ties", "cord-ties"}});
    REQUIRE(made.has_value());
    CHECK(*made
        == KitPlan{.kit = "delivery-kits",
            .par = 4,
            .parts = {{.part = "sheet", .item = "plastic-sheet", .perKit = 1},
                {.part = "ties", .item = "cord-ties", .perKit = 2}}});
    const auto missing = kitPlan(item, {{"sheet", "plastic-sheet"}});
    REQUIRE_FALSE(missing.has_value());
    CHECK(missing.error().code == ErrorCode::NotFound);
    item.rule = ConfirmRule{};
    CHECK_FALSE(kitPlan(item, {}).has_value());
}
