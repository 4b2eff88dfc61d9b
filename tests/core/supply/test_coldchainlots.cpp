// SPDX-License-Identifier: MIT
#include "core/supply/coldchain.h"

#include "shelf.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using Kind = MovementKind;

namespace {

/** Too warm between the good readings of 08:00 and 18:00. */
Excursion warm()
{
    return {.kind = ExcursionKind::TooWarm,
        .first = at("2026-11-24 12:00"),
        .last = at("2026-11-24 14:00"),
        .notBefore = at("2026-11-24 08:00"),
        .notAfter = at("2026-11-24 18:00")};
}

std::vector<StockItem> items()
{
    return {{.id = "oxytocin", .name = "Oxytocin", .expires = true, .fridge = "fridge-1"},
        {.id = "hepb", .name = "Hepatitis B", .expires = true, .fridge = "fridge-1", .harmedByFrost = true},
        {.id = "gauze", .name = "Gauze"}};
}

StockMovement of(std::string item, StockMovement movement)
{
    movement.item = std::move(item);
    return movement;
}

std::string inside(std::vector<StockMovement> movements, const std::string& fridge = "fridge-1")
{
    std::string out;
    for (const LotInside& lot :
        lotsInside(recordedAll(std::move(movements)), items(), fridge, warm(), TimeZone::utc()))
        out += lot.item + " " + lot.lot.number + " " + std::to_string(lot.pieces)
            + (lot.harmedByFrost ? " frost" : "") + "; ";
    return out;
}

}

TEST_CASE("what was in the fridge when it began was inside, even if it went out soon after")
{
    CHECK(inside({moved(Kind::Receipt, 10, "2026-11-01 08:00", "2027-03-31", "A"),
              moved(Kind::Issue, 10, "2026-11-24 09:00")})
        == "oxytocin A 10; ");
    CHECK(inside({moved(Kind::Receipt, 10, "2026-11-01 08:00", "2027-03-31", "A"),
                     moved(Kind::Issue, 10, "2026-11-24 08:00")})
              .empty());
}

TEST_CASE("what came in before it was over was inside, and what came later was not")
{
    CHECK(inside({moved(Kind::Receipt, 4, "2026-11-01 08:00", "2027-03-31", "A"),
              moved(Kind::Receipt, 5, "2026-11-24 18:00", "2027-03-31", "A"),
              moved(Kind::Receipt, 6, "2026-11-24 18:01", "2027-06-30", "B")})
        == "oxytocin A 9; ");
}

TEST_CASE("what a count found meanwhile was inside as well")
{
    StockMovement count = countedAll(7, "2026-11-24 10:00");
    count.lot = "A";
    count.expiry = day("2027-03-31");
    count.scope = CountScope::OneLot;
    CHECK(
        inside({moved(Kind::Receipt, 4, "2026-11-01 08:00", "2027-03-31", "A"), count}) == "oxytocin A 7; ");
    count.quantity = 1;
    CHECK(
        inside({moved(Kind::Receipt, 4, "2026-11-01 08:00", "2027-03-31", "A"), count}) == "oxytocin A 4; ");
}

TEST_CASE("only what is kept in that fridge was inside, and what frost harms is marked")
{
    const std::vector<StockMovement> movements{
        of("hepb", moved(Kind::Receipt, 3, "2026-11-01 08:00", "2027-03-31", "H")),
        of("gauze", moved(Kind::Receipt, 50, "2026-11-01 08:00"))};
    CHECK(inside(movements) == "hepb H 3 frost; ");
    CHECK(inside(movements, "fridge-2").empty());
}

TEST_CASE("when nobody read the fridge before, it counts from the first reading outside")
{
    Excursion first = warm();
    first.notBefore = std::nullopt;
    const auto facts
        = recordedAll<StockMovement>({moved(Kind::Receipt, 10, "2026-11-01 08:00", "2027-03-31", "A"),
            moved(Kind::Issue, 4, "2026-11-24 09:00")});
    CHECK(lotsInside(facts, items(), "fridge-1", first, TimeZone::utc()).at(0).pieces == 6);
}
