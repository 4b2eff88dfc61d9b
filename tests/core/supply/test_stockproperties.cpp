// SPDX-License-Identifier: MIT
#include "core/supply/stockbook.h"

#include "shelf.h"
#include "tests/core/stats/random.h"

#include <doctest/doctest.h>
#include <numeric>

using namespace cradlepost;
using stats::Dice;

namespace {

const Date firstDay = day("2026-11-01");

StockMovement randomMovement(Dice& dice)
{
    StockMovement out{.item = dice.chance(0.7) ? "oxytocin" : "gauze",
        .kind = static_cast<MovementKind>(dice.whole(0, 6)),
        .at = std::chrono::sys_days(firstDay) + std::chrono::hours(dice.whole(0, 24 * 60))};
    const bool count = out.kind == MovementKind::CountCorrection;
    out.quantity = dice.whole(count ? 0 : 1, 12);
    if (dice.chance(goesIn(out.kind) ? 0.8 : 0.3))
        out.expiry = addDays(firstDay, static_cast<int>(dice.whole(0, 8)) * 10);
    if (dice.chance(0.4))
        out.lot = std::string(1, static_cast<char>('A' + dice.whole(0, 2)));
    if (count || out.kind == MovementKind::Wastage)
        out.reason = static_cast<MovementReason>(dice.whole(1, 7));
    if (count)
        out.scope = !out.lot.empty() ? CountScope::OneLot
            : out.expiry             ? CountScope::OneDate
                                     : CountScope::Everything;
    return out;
}

std::vector<Recorded<StockMovement>> randomHistory(Dice& dice)
{
    std::vector<Recorded<StockMovement>> out;
    const std::int64_t length = dice.whole(1, 25);
    for (std::int64_t i = 1; i <= length; ++i)
        out.push_back(
            {.id = {.station = dice.chance(0.5) ? "a" : "b", .seq = i}, .what = randomMovement(dice)});
    return out;
}

std::vector<Recorded<StockMovement>> shuffled(std::vector<Recorded<StockMovement>> facts, Dice& dice)
{
    for (std::size_t i = facts.size(); i > 1; --i)
        std::swap(
            facts[i - 1], facts[static_cast<std::size_t>(dice.whole(0, static_cast<std::int64_t>(i) - 1))]);
    return facts;
}

std::vector<Recorded<StockMovement>> writtenAndRead(const std::vector<Recorded<StockMovement>>& facts)
{
    std::vector<Recorded<StockMovement>> out;
    for (const auto& fact : facts) {
        const auto body = parseJson(canonicalText(toBody(fact.what)));
        REQUIRE(body.has_value());
        auto movement = stockMovementFromBody(*body);
        REQUIRE_MESSAGE(movement.has_value(), (movement ? "" : movement.error().message));
        out.push_back({.id = fact.id, .what = std::move(*movement)});
    }
    return out;
}

/** Said by the movements alone, without the book: how many pieces of one item came and went. */
std::int64_t writtenSum(const std::vector<Recorded<StockMovement>>& facts, const std::string& item)
{
    std::int64_t sum = 0;
    for (const auto& [id, what] : facts) {
        if (what.item == item && what.kind != MovementKind::CountCorrection)
            sum += goesIn(what.kind) ? what.quantity : -what.quantity;
    }
    return sum;
}

std::int64_t unexplained(const ItemBook& book)
{
    return std::accumulate(book.discrepancies.begin(), book.discrepancies.end(), std::int64_t{0},
        [](std::int64_t sum, const Discrepancy& one) { return sum + one.difference; });
}

/** No piece is left of a usable lot that expires before one that an issue without a lot has touched. */
bool keepsFirstExpiry(const ItemBook& before, const ItemBook& after, Date today)
{
    bool earlierLeft = false;
    for (const BookLot& lot : before.lots) {
        const auto now = std::find_if(
            after.lots.begin(), after.lots.end(), [&](const BookLot& other) { return other.key == lot.key; });
        const std::int64_t left = now == after.lots.end() ? 0 : now->pieces;
        if (!lot.key.usableOn(today) && left != lot.pieces)
            return false;
        if (!lot.key.usableOn(today))
            continue;
        if (left < lot.pieces && earlierLeft)
            return false;
        earlierLeft = earlierLeft || left > 0;
    }
    return true;
}

}

TEST_CASE("no history of movements makes a book that is negative, out of order or unexplained")
{
    Dice dice(20261124);
    for (int run = 0; run < 2000; ++run) {
        const auto facts = randomHistory(dice);
        for (const auto& [item, book] : foldStock(facts, TimeZone::utc())) {
            for (const BookLot& lot : book.lots)
                REQUIRE(lot.pieces > 0);
            REQUIRE(std::is_sorted(book.lots.begin(), book.lots.end(),
                [](const BookLot& a, const BookLot& b) { return a.key < b.key; }));
            REQUIRE(book.explained() == book.pieces());
            REQUIRE(writtenSum(facts, item) + unexplained(book) == book.pieces());
        }
    }
}

TEST_CASE("every order of arrival gives the same book, and so do records written and read again")
{
    Dice dice(7);
    for (int run = 0; run < 2000; ++run) {
        const auto facts = randomHistory(dice);
        const StockBook book = foldStock(facts, TimeZone::utc());
        REQUIRE(foldStock(shuffled(facts, dice), TimeZone::utc()) == book);
        REQUIRE(foldStock(writtenAndRead(facts), TimeZone::utc()) == book);
    }
}

TEST_CASE("every issue without a lot takes the first to expire of what is in date")
{
    Dice dice(99);
    int issues = 0;
    for (int run = 0; run < 2000; ++run) {
        StockBook book;
        for (const auto& fact : inOrder(randomHistory(dice))) {
            const Date today = TimeZone::utc().toLocal(fact.what.at).date;
            const ItemBook before = book[fact.what.item];
            apply(book, fact, today);
            if (fact.what.kind != MovementKind::Issue || fact.what.expiry || !fact.what.lot.empty())
                continue;
            ++issues;
            REQUIRE(keepsFirstExpiry(before, book[fact.what.item], today));
            const std::int64_t taken = before.pieces() - book[fact.what.item].pieces();
            REQUIRE(taken == std::min(fact.what.quantity, before.usableOn(today)));
        }
    }
    CHECK(issues > 1000);
}

TEST_CASE("after a count the book holds what was counted")
{
    Dice dice(5);
    for (int run = 0; run < 2000; ++run) {
        StockBook book;
        for (const auto& fact : inOrder(randomHistory(dice))) {
            apply(book, fact, TimeZone::utc().toLocal(fact.what.at).date);
            if (fact.what.kind != MovementKind::CountCorrection)
                continue;
            std::int64_t there = 0;
            for (const BookLot& lot : book[fact.what.item].lots) {
                const bool date = lot.key.expiry == fact.what.expiry;
                const bool number = lot.key.number == fact.what.lot;
                const bool mine = fact.what.scope == CountScope::Everything
                    || (date && (fact.what.scope == CountScope::OneDate || number));
                there += mine ? lot.pieces : 0;
            }
            REQUIRE(there == fact.what.quantity);
        }
    }
}
