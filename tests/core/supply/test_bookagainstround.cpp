// SPDX-License-Identifier: MIT
#include "core/supply/bookagainstround.h"

#include "shelf.h"
#include "tests/core/stats/random.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using Kind = MovementKind;

namespace {

const Instant now = at("2026-11-24 08:00");

BookLot lot(std::int64_t pieces, const char* expiry = "", const char* number = "")
{
    return {.key = {.expiry = *expiry != '\0' ? std::optional(day(expiry)) : std::nullopt, .number = number},
        .pieces = pieces};
}

StockBook held(std::vector<BookLot> lots)
{
    StockBook book;
    for (const BookLot& one : lots) {
        StockMovement in = moved(Kind::Receipt, one.pieces, "2026-11-01 08:00", {}, one.key.number);
        in.expiry = one.key.expiry;
        apply(book, {.id = {}, .what = in}, day("2026-11-01"));
    }
    return book;
}

SeenCount seen(std::vector<BookLot> lots) { return {.item = "oxytocin", .at = now, .lots = std::move(lots)}; }

/** The book once all that was offered is recorded. */
StockBook corrected(StockBook book, const std::vector<BookDifference>& differences)
{
    std::int64_t id = 100;
    for (const BookDifference& one : differences) {
        REQUIRE(checkMovement(one.correction).has_value());
        apply(book, recorded(++id, one.correction), day("2026-11-24"));
    }
    return book;
}

}

TEST_CASE("a count that agrees with the book, or has no book, gives nothing")
{
    const StockBook book = held({lot(4, "2027-03-31", "A"), lot(2, "2026-12-31", "B")});
    CHECK(againstBook(seen({lot(6)}), book).empty());
    CHECK(againstBook(seen({lot(2, "2026-12-31"), lot(4, "2027-03-31")}), book).empty());
    CHECK(againstBook(seen({lot(2, "2026-12-31", "B"), lot(4, "2027-03-31", "A")}), book).empty());
    CHECK(againstBook(seen({lot(2, "", "B"), lot(4, "2027-03-31", "A")}), book).empty());
    CHECK(againstBook(seen({lot(6)}), {}).empty());
}

TEST_CASE("a count without dates is held against the whole item, with both numbers and a correction to offer")
{
    const auto out
        = againstBook(seen({lot(5)}), held({lot(4, "2027-03-31", "A"), lot(2, "2026-12-31", "B")}));
    REQUIRE(out.size() == 1);
    CHECK(out[0].seen == 5);
    CHECK(out[0].book == 6);
    CHECK_FALSE(out[0].lot.has_value());
    CHECK(out[0].correction.kind == Kind::CountCorrection);
    CHECK(out[0].correction.quantity == 5);
    CHECK(out[0].correction.at == now);
    CHECK(out[0].correction.scope == CountScope::Everything);
    CHECK(out[0].correction.reason == MovementReason::NotKnown);
}

TEST_CASE("nothing is put right by comparing")
{
    const StockBook book = held({lot(4, "2027-03-31", "A")});
    const StockBook before = book;
    CHECK_FALSE(againstBook(seen({lot(5)}), book).empty());
    CHECK(book == before);
}

TEST_CASE("a count by dates is held against the lots of each date")
{
    const StockBook book
        = held({lot(4, "2027-03-31", "A"), lot(3, "2027-03-31", "B"), lot(2, "2026-12-31", "C")});
    const auto out = againstBook(seen({lot(5, "2027-03-31"), lot(1, "2027-06-30")}), book);
    REQUIRE(out.size() == 3);
    CHECK(out[0].lot->expiry == day("2026-12-31"));
    CHECK(out[0].seen == 0);
    CHECK(out[0].book == 2);
    CHECK(out[1].book == 7);
    CHECK(out[2].book == 0);
    CHECK(lotsOf(corrected(book, out)["oxytocin"]) == "2 of A 2027-03-31, 3 of B 2027-03-31, 1 2027-06-30");
}

TEST_CASE("a count by lots leaves the lots alone that it agrees with")
{
    const StockBook book = held({lot(4, "2027-03-31", "A"), lot(3, "2027-03-31", "B"), lot(2)});
    const auto out = againstBook(seen({lot(4, "2027-03-31", "A"), lot(1, "", "B"), lot(5)}), book);
    REQUIRE(out.size() == 2);
    CHECK(out[0].lot->number == "B");
    CHECK(out[0].seen == 1);
    CHECK(out[0].book == 3);
    CHECK(lotsOf(corrected(book, out)["oxytocin"]) == "4 of A 2027-03-31, 1 of B 2027-03-31, 5");
}

TEST_CASE("recording what is offered makes book and round agree")
{
    stats::Dice dice(17);
    const std::vector<const char*> dates{"", "2026-12-31", "2027-03-31"};
    const std::vector<const char*> numbers{"", "A", "B"};
    const auto some = [&](bool dated, bool numbered) {
        std::vector<BookLot> lots;
        for (std::int64_t n = dice.whole(0, 4); n > 0; --n)
            lots.push_back(
                lot(dice.whole(1, 9), dated ? dates[static_cast<std::size_t>(dice.whole(0, 2))] : "",
                    numbered ? numbers[static_cast<std::size_t>(dice.whole(0, 2))] : ""));
        return lots;
    };
    for (int run = 0; run < 2000; ++run) {
        StockBook book = held(some(true, true));
        book["oxytocin"];
        const SeenCount count = seen(some(dice.chance(0.7), dice.chance(0.5)));
        const StockBook after = corrected(book, againstBook(count, book));
        REQUIRE(againstBook(count, after).empty());
        std::int64_t pieces = 0;
        for (const BookLot& one : count.lots)
            pieces += one.pieces;
        REQUIRE(after.at("oxytocin").pieces() == pieces);
    }
}

TEST_CASE("the parts of a kit are counts of their stock items")
{
    const KitPlan plan{.kit = "delivery-kits",
        .par = 4,
        .parts
        = {{.part = "sheet", .item = "sheet", .perKit = 1}, {.part = "tie", .item = "oxytocin", .perKit = 1},
            {.part = "spare", .item = "oxytocin", .perKit = 1}}};
    const std::vector<int> parts{3, 2, 4};
    const auto counts = seenInKit(plan, parts, now);
    REQUIRE(counts.size() == 2);
    CHECK(counts[0].item == "sheet");
    CHECK(counts[1].lots.at(0).pieces == 6);
    CHECK(againstBook(counts[1], held({lot(6, "2027-03-31")})).empty());
    CHECK(againstBook(counts[1], held({lot(7, "2027-03-31")})).size() == 1);
}
