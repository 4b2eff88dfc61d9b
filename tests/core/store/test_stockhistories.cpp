// SPDX-License-Identifier: MIT
// Random sequences of stock movements through the real store: what a person may enter, in the order of entry.
#include "tests/core/stats/random.h"
#include "ward.h"

#include <algorithm>

using namespace cradlepost;
using namespace cradlepost::test;
using stats::Dice;

namespace {

constexpr int sequences = 2000;
constexpr int longest = 12;

StockItem shelfOf(int run, Instant at)
{
    return {.id = "shelf-" + std::to_string(run),
        .name = "Shelf",
        .at = at,
        .levels = {.par = 20, .minimum = 8, .emergency = 2},
        .expires = true};
}

StockMovement anyMovement(const std::string& item, Instant at, Dice& dice)
{
    StockMovement out{.item = item, .kind = static_cast<MovementKind>(dice.whole(0, 6)), .at = at};
    const bool count = out.kind == MovementKind::CountCorrection;
    out.quantity = dice.whole(count ? 0 : 1, 12);
    if (goesIn(out.kind) || dice.chance(0.3))
        out.expiry = addDays(firstDay, static_cast<int>(dice.whole(0, 6)) * 20);
    if (dice.chance(0.3))
        out.lot = std::string(1, static_cast<char>('A' + dice.whole(0, 2)));
    if (count || out.kind == MovementKind::Wastage)
        out.reason = MovementReason::Lost;
    if (count)
        out.scope = !out.lot.empty() ? CountScope::OneLot
            : out.expiry             ? CountScope::OneDate
                                     : CountScope::Everything;
    return out;
}

std::int64_t held(const std::map<LotKey, std::int64_t>& lots, const StockMovement& what, Date day)
{
    std::int64_t pieces = 0;
    for (const auto& [key, there] : lots) {
        const bool named = what.expiry || !what.lot.empty();
        const bool fits
            = (what.lot.empty() || what.lot == key.number) && (!what.expiry || what.expiry == key.expiry);
        const bool past = what.kind == MovementKind::ExpiredRemoved;
        if (named ? fits : key.usableOn(day) != past)
            pieces += there;
    }
    return pieces;
}

/** The lots of a shelf kept the plain way, without the book: what a person with a pencil would do. */
struct Pencil
{
    std::map<LotKey, std::int64_t> lots;
    bool exact = true; ///< counts may leave open which lot is meant; from then on only the sum is kept

    void enter(const StockMovement& what, Date day)
    {
        if (what.kind == MovementKind::CountCorrection) {
            exact = false;
            return;
        }
        if (goesIn(what.kind)) {
            lots[{.expiry = what.expiry, .number = what.lot}] += what.quantity;
            return;
        }
        std::int64_t left = what.quantity;
        for (auto& [key, there] : lots) { // sorted by first expiry
            StockMovement one = what;
            const std::int64_t now = std::min(left, held({{key, there}}, one, day));
            there -= now;
            left -= now;
        }
        std::erase_if(lots, [](const auto& lot) { return lot.second == 0; });
    }
    [[nodiscard]] std::vector<BookLot> asBook() const
    {
        std::vector<BookLot> out;
        for (const auto& [key, pieces] : lots)
            out.push_back({.key = key, .pieces = pieces});
        return out;
    }
};

}

TEST_CASE("two thousand sequences of entries: never below nothing, first expired first out, the same after a "
          "rebuild")
{
    Ward ward;
    Dice dice(20261125);
    int kept = 0;
    int refused = 0;
    int byPencil = 0;
    for (int run = 0; run < sequences; ++run) {
        const StockItem item = shelfOf(run, ward.clock.now());
        must(ward.store->describeStockItem(ward.unit, item, "AB"));
        std::vector<StockMovement> wanted;
        StockBook expected;
        Pencil pencil;
        Instant at = ward.clock.now() - std::chrono::days(100);
        const std::int64_t length = dice.whole(1, longest);
        for (std::int64_t i = 0; i < length; ++i) {
            at += std::chrono::hours(dice.whole(1, 150));
            const StockMovement movement = anyMovement(item.id, at, dice);
            const Date day = TimeZone::named("Asia/Kolkata")->toLocal(at).date;
            if (!checkEntry(expected, item, movement, day)) {
                ++refused;
                // Refused beforehand means refused by the store, whole, with what can be kept beside it.
                if (run % 50 == 0) {
                    wanted.push_back(movement);
                    REQUIRE_FALSE(ward.store->moveStock(ward.unit, wanted, "AB").has_value());
                    wanted.pop_back();
                }
                continue;
            }
            apply(expected, {.id = {}, .what = movement}, day);
            pencil.enter(movement, day);
            wanted.push_back(movement);
        }
        must(ward.store->moveStock(ward.unit, wanted, "AB"));
        kept += static_cast<int>(wanted.size());
        if (wanted.empty())
            continue;
        const ItemBook& book = expected[item.id];
        if (pencil.exact) {
            ++byPencil;
            REQUIRE(book.lots == pencil.asBook());
        }
    }
    const StockBook before = must(ward.store->stockBook(ward.unit));
    for (const auto& [item, book] : before) {
        REQUIRE(book.explained() == book.pieces());
        for (const BookLot& lot : book.lots)
            REQUIRE(lot.pieces > 0);
        REQUIRE(std::none_of(book.discrepancies.begin(), book.discrepancies.end(),
            [](const Discrepancy& one) { return one.kind == DiscrepancyKind::Shortfall; }));
    }
    CHECK(kept > 5000);
    CHECK(refused > 1000);
    CHECK(byPencil > 500);
    must(ward.store->rebuild());
    CHECK(must(ward.store->stockBook(ward.unit)) == before);
    CHECK(ward.fault().empty());
}

TEST_CASE(
    "more going out on two stations than the book holds leaves nothing and says how many are unexplained")
{
    // Each station's entry was right by what it knew; together they took 12 of 10.
    const Instant at = std::chrono::sys_days(firstDay);
    const auto fact = [&](const char* station, MovementKind kind, std::int64_t pieces, int hour) {
        return Recorded<StockMovement>{.id = {.station = station, .seq = hour},
            .what
            = {.item = "towels", .kind = kind, .at = at + std::chrono::hours(hour), .quantity = pieces}};
    };
    const StockBook book
        = foldStock({fact("a", MovementKind::Receipt, 10, 1), fact("a", MovementKind::Issue, 6, 2),
                        fact("b", MovementKind::Issue, 6, 3)},
            TimeZone::utc());
    const ItemBook& towels = book.at("towels");
    CHECK(towels.pieces() == 0);
    REQUIRE(towels.discrepancies.size() == 1);
    CHECK(towels.discrepancies[0].kind == DiscrepancyKind::Shortfall);
    CHECK(towels.discrepancies[0].difference == 2);
}
