// SPDX-License-Identifier: MIT
#include "core/supply/rundown.h"

#include "shelf.h"
#include "tests/core/stats/random.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

const Date today = day("2026-11-24");

ItemBook shelf(std::initializer_list<std::pair<const char*, std::int64_t>> lots)
{
    ItemBook book;
    for (const auto& [expiry, pieces] : lots)
        book.lots.push_back(
            {.key = {.expiry = *expiry != '\0' ? std::optional(day(expiry)) : std::nullopt, .number = {}},
                .pieces = pieces});
    return book;
}

struct Walked
{
    std::int64_t unused = 0;
    std::optional<Date> runsOut;
};

/** The same by walking day by day over a shelf of single lots, as a nurse would. */
Walked walk(ItemBook book, std::int64_t perDay, int days)
{
    Walked out;
    std::int64_t asked = 0;
    for (int i = 0; i < days; ++i) {
        const Date now = addDays(today, i);
        for (BookLot& lot : book.lots) {
            if (!lot.key.usableOn(now)) {
                out.unused += lot.pieces;
                lot.pieces = 0;
            }
        }
        std::int64_t wanted = perDay * (i + 1) / 1000 - asked;
        asked += wanted;
        for (BookLot& lot : book.lots) {
            const std::int64_t taken = std::min(wanted, lot.pieces);
            lot.pieces -= taken;
            wanted -= taken;
        }
        if (wanted > 0 && !out.runsOut)
            out.runsOut = now;
    }
    return out;
}

}

TEST_CASE("what expires is counted once, in the nearest window")
{
    // Days from today: -1, 0, 30, 31, 60, 61, 90, 91 and no date.
    const ItemBook book = shelf({{"2026-11-23", 1}, {"2026-11-24", 2}, {"2026-12-24", 4}, {"2026-12-25", 8},
        {"2027-01-23", 16}, {"2027-01-24", 32}, {"2027-02-22", 64}, {"2027-02-23", 128}, {"", 256}});
    CHECK(expiringFrom(book, today) == Expiring{.expired = 1, .within30 = 6, .within60 = 24, .within90 = 96});
    CHECK(expiringFrom({}, today) == Expiring{});
}

TEST_CASE("a lot that is not used up in time expires, and the rest runs out")
{
    // Computed: 2 a day; 20 pieces for 5 days until the 28th leave 10; then 9 pieces last 4 days and a half.
    const RunDown out = runDown(shelf({{"2026-11-28", 20}, {"2027-03-31", 9}}), today, num("2"));
    REQUIRE(out.lots.size() == 2);
    CHECK(out.lots[0].unused == 10);
    CHECK_FALSE(out.lots[0].usedUp.has_value());
    CHECK(out.lots[1].unused == 0);
    CHECK(out.lots[1].usedUp == day("2026-12-03"));
    CHECK(out.unused == 10);
    CHECK(out.runsOut == day("2026-12-03"));
}

TEST_CASE("a shelf that is used up at the end of a day runs out the day after")
{
    const RunDown out = runDown(shelf({{"2027-03-31", 10}}), today, num("2"));
    CHECK(out.lots.at(0).usedUp == day("2026-11-28"));
    CHECK(out.runsOut == day("2026-11-29"));
}

TEST_CASE("a rate of less than a piece a day is kept in full")
{
    // 0.4 a day: pieces go on days 3, 5, 8, 10, 13 from today on.
    const RunDown out = runDown(shelf({{"", 3}}), today, num("0.4"));
    CHECK(out.lots.at(0).usedUp == day("2026-12-01"));
    CHECK(out.runsOut == day("2026-12-03"));
}

TEST_CASE("without use nothing runs out, and what has a date expires")
{
    const RunDown out = runDown(shelf({{"2026-11-01", 3}, {"2027-03-31", 5}, {"", 7}}), today, num("0"));
    CHECK(out.unused == 8);
    CHECK_FALSE(out.runsOut.has_value());
    CHECK_FALSE(out.lots.at(2).usedUp.has_value());
    CHECK(out.lots.at(2).unused == 0);
}

TEST_CASE("an empty shelf runs out on the day of the next need")
{
    CHECK(runDown({}, today, num("2")).runsOut == today);
    CHECK(runDown({}, today, num("0.5")).runsOut == day("2026-11-25"));
    CHECK(runDown(shelf({{"2026-11-23", 5}}), today, num("1")).runsOut == today);
}

TEST_CASE("what would last a hundred years has no end")
{
    const RunDown out = runDown(shelf({{"", 1'000'000}}), today, num("0.001"));
    CHECK_FALSE(out.runsOut.has_value());
    CHECK_FALSE(out.lots.at(0).usedUp.has_value());
}

TEST_CASE("the run-down agrees with walking through the days")
{
    stats::Dice dice(31);
    for (int run = 0; run < 2000; ++run) {
        ItemBook book;
        Date expiry = addDays(today, -5);
        for (std::int64_t lots = dice.whole(0, 4); lots > 0; --lots) {
            expiry = addDays(expiry, static_cast<int>(dice.whole(1, 20)));
            book.lots.push_back({.key = {.expiry = expiry, .number = {}}, .pieces = dice.whole(1, 40)});
        }
        const std::int64_t perDay = dice.whole(1, 4000);
        const RunDown out = runDown(book, today, {perDay});
        const Walked walked = walk(book, perDay, 1200);
        REQUIRE(out.unused == walked.unused);
        REQUIRE(out.runsOut == walked.runsOut);
    }
}
