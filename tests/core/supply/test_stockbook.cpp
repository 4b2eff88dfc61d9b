// SPDX-License-Identifier: MIT
#include "core/supply/stockbook.h"

#include "shelf.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using Kind = MovementKind;

namespace {

ItemBook folded(std::vector<StockMovement> movements)
{
    return foldStock(recordedAll(std::move(movements)), TimeZone::utc())["oxytocin"];
}

const std::string early = "2026-11-01 08:00";
const std::string late = "2026-11-24 08:00";

std::vector<StockMovement> threeLots()
{
    return {moved(Kind::Receipt, 5, early, "2027-03-31", "B"),
        moved(Kind::Receipt, 3, early, "2026-11-20", "A"), moved(Kind::Receipt, 4, early, "2026-12-31", "C")};
}

ItemBook afterThreeLots(StockMovement last)
{
    auto movements = threeLots();
    movements.push_back(std::move(last));
    return folded(movements);
}

}

TEST_CASE("what comes in stands in the book by lot, the first to expire first")
{
    const ItemBook book = folded(threeLots());
    CHECK(lotsOf(book) == "3 of A 2026-11-20, 4 of C 2026-12-31, 5 of B 2027-03-31");
    CHECK(book.pieces() == 12);
    CHECK(book.explained() == 12);
    CHECK(book.discrepancies.empty());
}

TEST_CASE("a lot is usable on its last day and not on the day after")
{
    const ItemBook book = folded(threeLots());
    CHECK(book.usableOn(day("2026-11-20")) == 12);
    CHECK(book.usableOn(day("2026-11-21")) == 9);
    CHECK(book.expiredOn(day("2026-11-21")) == 3);
    CHECK(book.usableOn(day("2027-04-01")) == 0);
}

TEST_CASE("a lot without a date is usable on any day and goes out last")
{
    const ItemBook book = folded({moved(Kind::Receipt, 2, early),
        moved(Kind::Receipt, 2, early, "2027-03-31"), moved(Kind::Issue, 3, late)});
    CHECK(lotsOf(book) == "1");
    CHECK(book.usableOn(day("2099-01-01")) == 1);
}

TEST_CASE("an issue takes what is in date, first to expire first, and leaves what has expired")
{
    CHECK(lotsOf(afterThreeLots(moved(Kind::Issue, 6, late))) == "3 of A 2026-11-20, 3 of B 2027-03-31");
    // On the last day of A it is still the first to go.
    CHECK(lotsOf(afterThreeLots(moved(Kind::Issue, 2, "2026-11-20 23:00")))
        == "1 of A 2026-11-20, 4 of C 2026-12-31, 5 of B 2027-03-31");
}

TEST_CASE("the day of a movement is the unit's own")
{
    // 19:00 UTC on the 20th is half past midnight on the 21st in India: A has expired there.
    const auto zone = TimeZone::named("Asia/Kolkata").value();
    auto movements = threeLots();
    movements.push_back(moved(Kind::Issue, 2, "2026-11-20 19:00"));
    CHECK(lotsOf(foldStock(recordedAll(movements), zone)["oxytocin"])
        == "3 of A 2026-11-20, 2 of C 2026-12-31, 5 of B 2027-03-31");
}

TEST_CASE("an issue beyond the book empties what may be used and keeps the shortfall")
{
    const ItemBook book = afterThreeLots(moved(Kind::Issue, 11, late));
    CHECK(lotsOf(book) == "3 of A 2026-11-20");
    REQUIRE(book.discrepancies.size() == 1);
    CHECK(book.discrepancies[0].kind == DiscrepancyKind::Shortfall);
    CHECK(book.discrepancies[0].difference == 2);
    CHECK(book.discrepancies[0].by == FactId{.station = "a", .seq = 4});
    CHECK(book.explained() == book.pieces());
}

TEST_CASE("a named lot goes out even past its day, and the book remembers that")
{
    const ItemBook given = afterThreeLots(moved(Kind::Issue, 1, late, {}, "A"));
    CHECK(lotsOf(given) == "2 of A 2026-11-20, 4 of C 2026-12-31, 5 of B 2027-03-31");
    CHECK(given.issuedExpired.size() == 1);
    CHECK(afterThreeLots(moved(Kind::Issue, 1, late, {}, "C")).issuedExpired.empty());
    CHECK(afterThreeLots(moved(Kind::Wastage, 1, late, {}, "A")).issuedExpired.empty());
    const ItemBook byDate = afterThreeLots(moved(Kind::Issue, 1, late, "2026-12-31"));
    CHECK(lotsOf(byDate) == "3 of A 2026-11-20, 3 of C 2026-12-31, 5 of B 2027-03-31");
}

TEST_CASE("a named lot gives no more than it holds")
{
    const ItemBook book = afterThreeLots(moved(Kind::Issue, 6, late, {}, "C"));
    CHECK(lotsOf(book) == "3 of A 2026-11-20, 5 of B 2027-03-31");
    CHECK(book.discrepancies.at(0).difference == 2);
}

TEST_CASE("removing what has expired leaves what is in date")
{
    CHECK(lotsOf(afterThreeLots(moved(Kind::ExpiredRemoved, 3, late)))
        == "4 of C 2026-12-31, 5 of B 2027-03-31");
    const ItemBook more = afterThreeLots(moved(Kind::ExpiredRemoved, 5, late));
    CHECK(more.pieces() == 9);
    CHECK(more.discrepancies.at(0).difference == 2);
}

TEST_CASE("a count of everything takes missing pieces first to expire first")
{
    const ItemBook book = afterThreeLots(countedAll(7, late));
    CHECK(lotsOf(book) == "2 of C 2026-12-31, 5 of B 2027-03-31");
    REQUIRE(book.discrepancies.size() == 1);
    CHECK(book.discrepancies[0].kind == DiscrepancyKind::Counted);
    CHECK(book.discrepancies[0].difference == -5);
    CHECK(book.discrepancies[0].reason == MovementReason::NotKnown);
}

TEST_CASE("pieces that turn up in a count of everything get no date that nobody read")
{
    const ItemBook book = afterThreeLots(countedAll(14, late));
    CHECK(lotsOf(book) == "3 of A 2026-11-20, 4 of C 2026-12-31, 5 of B 2027-03-31, 2");
    CHECK(afterThreeLots(countedAll(12, late)).discrepancies.empty());
}

TEST_CASE("a count of one date puts what turns up to the one lot of that date")
{
    StockMovement count = countedAll(6, late);
    count.expiry = day("2026-12-31");
    count.scope = CountScope::OneDate;
    CHECK(lotsOf(afterThreeLots(count)) == "3 of A 2026-11-20, 6 of C 2026-12-31, 5 of B 2027-03-31");
    count.expiry = day("2027-01-31");
    CHECK(lotsOf(afterThreeLots(count))
        == "3 of A 2026-11-20, 4 of C 2026-12-31, 6 2027-01-31, 5 of B 2027-03-31");
}

TEST_CASE("a count of one lot touches no other")
{
    StockMovement count = countedAll(1, late);
    count.expiry = day("2026-12-31");
    count.lot = "C";
    count.scope = CountScope::OneLot;
    CHECK(lotsOf(afterThreeLots(count)) == "3 of A 2026-11-20, 1 of C 2026-12-31, 5 of B 2027-03-31");
    // The lot without number and date is a lot like any other.
    CHECK(lotsOf(afterThreeLots([] {
        StockMovement bare = countedAll(2, late);
        bare.scope = CountScope::OneLot;
        return bare;
    }()))
        == "3 of A 2026-11-20, 4 of C 2026-12-31, 5 of B 2027-03-31, 2");
}

TEST_CASE("a movement that arrives late takes its place in time")
{
    // The count of the 10th comes before the issue of the 24th, whichever record arrives first.
    const StockMovement issue = moved(Kind::Issue, 2, late);
    const StockMovement count = countedAll(10, "2026-11-10 08:00");
    const StockMovement receipt = moved(Kind::Receipt, 12, early, "2027-03-31");
    const std::vector<Recorded<StockMovement>> facts{
        recorded(3, issue), recorded(2, count), recorded(1, receipt)};
    CHECK(lotsOf(foldStock(facts, TimeZone::utc())["oxytocin"]) == "8 2027-03-31");
    CHECK(foldStock({facts[2], facts[0], facts[1], facts[1]}, TimeZone::utc())
        == foldStock(facts, TimeZone::utc()));
}

TEST_CASE("the book of an earlier moment leaves out what came later")
{
    auto movements = threeLots();
    movements.push_back(moved(Kind::Issue, 6, late));
    const auto facts = recordedAll(movements);
    CHECK(foldStockUntil(facts, TimeZone::utc(), at("2026-11-24 07:59"))["oxytocin"].pieces() == 12);
    CHECK(foldStockUntil(facts, TimeZone::utc(), at(late))["oxytocin"].pieces() == 6);
    CHECK(foldStockUntil(facts, TimeZone::utc(), at("2026-10-31 08:00")).empty());
}

TEST_CASE("a person may not enter more than the book holds, and is told to count")
{
    const StockItem item{.id = "oxytocin", .name = "Oxytocin 10 IU", .expires = true};
    const StockBook book = foldStock(recordedAll(threeLots()), TimeZone::utc());
    const Date today = day("2026-11-24");
    CHECK(checkEntry(book, item, moved(Kind::Issue, 9, late), today).has_value());
    const auto refused = checkEntry(book, item, moved(Kind::Issue, 10, late), today);
    REQUIRE_FALSE(refused.has_value());
    CHECK(refused.error().message == "stock movement: the book holds 9 of 10");
    CHECK_FALSE(refused.error().hint.empty());
    CHECK_FALSE(checkEntry({}, item, moved(Kind::Issue, 1, late), today).has_value());
    CHECK(checkEntry({}, item, countedAll(3, late), today).has_value());
}

TEST_CASE("a person is asked for the date of what expires, and cannot fill up what is no longer kept")
{
    StockItem item{.id = "oxytocin", .name = "Oxytocin 10 IU", .expires = true};
    const Date today = day("2026-11-24");
    CHECK_FALSE(checkEntry({}, item, moved(Kind::Receipt, 5, late), today).has_value());
    CHECK(checkEntry({}, item, moved(Kind::Receipt, 5, late, "2027-03-31"), today).has_value());
    item.retired = true;
    CHECK_FALSE(checkEntry({}, item, moved(Kind::Receipt, 5, late, "2027-03-31"), today).has_value());
    item = {.id = "gauze", .name = "Gauze"};
    CHECK_FALSE(checkEntry({}, item, moved(Kind::Receipt, 5, late), today).has_value());
}
