// SPDX-License-Identifier: MIT
#include "core/supply/stockdays.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace std::chrono;

namespace {

constexpr Date first = 2026y / 11 / 1;

Recorded<StockMovement> moved(int seq, MovementKind kind, int day, std::int64_t pieces)
{
    return {.id = {.station = "s", .seq = seq},
        .what
        = {.item = "towels", .kind = kind, .at = sys_days(first) + days(day) + hours(9), .quantity = pieces}};
}

}

TEST_CASE("days that end empty say nothing of the need, and days before the first movement are not there")
{
    const std::vector<Recorded<StockMovement>> movements{moved(1, MovementKind::Receipt, 2, 10),
        moved(2, MovementKind::Issue, 2, 4), moved(3, MovementKind::Issue, 4, 6),
        moved(4, MovementKind::Receipt, 6, 9), moved(5, MovementKind::Issue, 9, 1)};
    const ItemDays item = daysOfItem(movements, TimeZone::utc(), first, addDays(first, 7));
    REQUIRE(item.days.size() == 6); // the third to the eighth
    CHECK(item.days[0] == DayUse{.day = addDays(first, 2), .used = 4, .out = false});
    CHECK(item.days[2] == DayUse{.day = addDays(first, 4), .used = 6, .out = true});
    CHECK(item.days[3].out);
    CHECK_FALSE(item.days[4].out);
    CHECK(useWhileInStock(item.days) == std::vector<std::int64_t>{4, 0, 0, 0});
    CHECK(item.book.pieces() == 8); // the book goes on to the last movement
}

TEST_CASE("an item without movements has no days")
{
    CHECK(daysOfItem({}, TimeZone::utc(), first, addDays(first, 7)).days.empty());
}

TEST_CASE("use that is written up once a week counts by weeks, and daily use by days")
{
    CHECK(asWrittenUp({3, 1, 2, 2}) == PeriodUse{.days = 1, .used = {3, 1, 2, 2}});
    // Written up on days 2, 9, 16 and 23: 23 days are three weeks and two days.
    std::vector<std::int64_t> weekly(23, 0);
    weekly[1] = 5;
    weekly[8] = 7;
    weekly[15] = 8;
    weekly[22] = 6;
    CHECK(asWrittenUp(weekly) == PeriodUse{.days = 7, .used = {7, 8, 6}});
    CHECK(asWrittenUp({0, 0, 4}) == PeriodUse{.days = 1, .used = {0, 0, 4}});
    CHECK(asWrittenUp({}) == PeriodUse{.days = 1, .used = {}});
}
